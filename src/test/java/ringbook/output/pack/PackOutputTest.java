package ringbook.output.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** The sheets of the demo on both papers, one in colour, one in grey. */
final class PackOutputTest {

  private static final double POINTS_A_MM = 72 / 25.4;

  /** Smaller margins are cut off by many printers: common practice, no source. */
  private static final double MARGIN = 8 * POINTS_A_MM;

  private static Map<String, byte[]> files;

  @BeforeAll
  static void make() throws IOException {
    VeraGreenfieldFoundryProvider.initialise();
    files = MadePack.files();
  }

  private static Map<String, byte[]> sheets() {
    Map<String, byte[]> sheets = new TreeMap<>(files);
    sheets.keySet().removeIf(name -> name.startsWith("again"));
    return sheets;
  }

  @Test
  void the_same_matter_gives_the_same_bytes() {
    assertThat(files.keySet().stream().filter(name -> name.startsWith("again")))
        .hasSizeGreaterThan(5)
        .allSatisfy(name -> assertThat(files.get(name)).isEqualTo(files.get(name.substring(6))));
  }

  /** PDF/UA-1, and PDF/A-2 at its highest level: what is kept can be seen and read out later. */
  @Test
  void each_sheet_and_form_is_accessible_by_iso_14289_1_and_keeps_by_iso_19005_2()
      throws IOException, VeraPDFException {
    for (Map.Entry<String, byte[]> sheet : sheets().entrySet()) {
      for (PDFAFlavour standard : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
        assertThat(faults(sheet.getValue(), standard))
            .as(sheet.getKey() + " " + standard)
            .isEmpty();
      }
    }
  }

  private static Set<String> faults(byte[] pdf, PDFAFlavour standard)
      throws IOException, VeraPDFException {
    Set<String> faults = new TreeSet<>();
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(standard, false)) {
      for (TestAssertion assertion : validator.validate(parser).getTestAssertions()) {
        if (assertion.getStatus() == TestAssertion.Status.FAILED) {
          faults.add(assertion.getRuleId().getClause() + " " + assertion.getMessage());
        }
      }
    }
    return faults;
  }

  @Test
  void nothing_lies_in_the_margins_and_every_file_ends_on_a_back() throws IOException {
    for (Map.Entry<String, byte[]> sheet : sheets().entrySet()) {
      boolean a4 = sheet.getKey().contains("a4-");
      try (PDDocument pdf = Loader.loadPDF(sheet.getValue())) {
        assertThat(pdf.getNumberOfPages()).as(sheet.getKey()).isEven();
        for (PDPage page : pdf.getPages()) {
          // ISO 216 A4; US Letter by ANSI/ASME Y14.1.
          assertThat((double) page.getMediaBox().getWidth())
              .isCloseTo(a4 ? 595.28 : 612, org.assertj.core.api.Assertions.within(0.05));
          assertThat((double) page.getMediaBox().getHeight())
              .isCloseTo(a4 ? 841.89 : 792, org.assertj.core.api.Assertions.within(0.05));
          InkBounds bounds = InkBounds.of(page);
          assertThat(bounds.least(page)).as(sheet.getKey()).isGreaterThan(MARGIN - 0.3);
        }
      }
    }
  }

  @Test
  void grey_sheets_hold_no_colour() throws IOException {
    List<String> grey = new ArrayList<>();
    for (Map.Entry<String, byte[]> sheet : sheets().entrySet()) {
      if (sheet.getKey().contains("grey")) {
        try (PDDocument pdf = Loader.loadPDF(sheet.getValue())) {
          for (PDPage page : pdf.getPages()) {
            assertThat(InkBounds.of(page).colours()).as(sheet.getKey()).isEmpty();
          }
        }
        grey.add(sheet.getKey());
      }
    }
    assertThat(grey).isNotEmpty();
  }

  @Test
  void the_sheets_state_the_numbers_of_the_ledger() throws IOException {
    assertThat(text("field-card")).contains("40.5 cm", "Ring A", "12°", "f/1.8");
    assertThat(text("shot-table")).contains("Ring A: 30 photographs", "4:48", "workbench");
    assertThat(text("worksheets/04-right-distance")).contains("The stone owl", "distance-owl");
    assertThat(text("learners/Ida"))
        .contains("Ida", "The stone owl")
        .doesNotContain("Your name", "Name: _");
    assertThat(text("answer-key")).contains("Answer: 42.5 cm", "Zoë");
    assertThat(text("result-slip")).contains("Ida", "Zoë");
    assertThat(text("consent-and-record")).contains("local law", "keeper");
  }

  private static String text(String sheet) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(files.get("pack/a4-colour/" + sheet + ".pdf"))) {
      return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0]+", " ");
    }
  }
}
