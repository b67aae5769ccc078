package ringbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import ringbook.course.compose.CourseSources;
import ringbook.problems.Problems;

/** A worksheet after it was filled in with letters of many languages. */
final class FilledFormTest {

  private static final List<String> WORDS =
      List.of("Łukasz Żółć", "Çağla Şengül", "Ελένη", "Дарья", "Zoë: “42.5 cm”, 12° − 3");

  @TempDir private static Path folder;
  private static Path sheet;

  @BeforeAll
  static void make() throws IOException {
    VeraGreenfieldFoundryProvider.initialise();
    Problems problems = new Problems();
    CourseSources sources =
        CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow();
    sheet =
        DistanceSheets.write(sources, folder).resolve("worksheets").resolve(DistanceSheets.NAME);
  }

  private interface Filling {
    void fill(PDAcroForm form) throws IOException;
  }

  private static byte[] changed(Filling filling) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(sheet.toFile())) {
      filling.fill(pdf.getDocumentCatalog().getAcroForm(null));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      pdf.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static void fill(PDAcroForm form) throws IOException {
    int next = 0;
    for (String field : names(form)) {
      form.getField(field).setValue(WORDS.get(next++ % WORDS.size()));
    }
    assertThat(next).isGreaterThanOrEqualTo(WORDS.size());
  }

  private static List<String> names(PDAcroForm form) {
    return form.getFields().stream()
        .map(f -> f.getFullyQualifiedName())
        .filter(name -> !Set.of("@course", "@numbers").contains(name))
        .toList();
  }

  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFUA_1", "PDFA_2_A"})
  void still_conforms_when_it_is_filled(PDFAFlavour standard) throws IOException, VeraPDFException {
    Set<String> faults = new TreeSet<>();
    byte[] filled = changed(FilledFormTest::fill);
    try (var parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(filled), standard);
        var validator = Foundries.defaultInstance().createValidator(standard, false)) {
      for (TestAssertion assertion : validator.validate(parser).getTestAssertions()) {
        if (assertion.getStatus() == TestAssertion.Status.FAILED) {
          faults.add(assertion.getRuleId().getClause() + " " + assertion.getMessage());
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  /** Poppler shows what PDFBox wrote, flattened or not, and what it must set itself. */
  @Test
  void another_reader_shows_every_letter() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/pdftotext")), "needs poppler-utils");
    byte[] flat =
        changed(
            form -> {
              fill(form);
              form.flatten();
            });
    byte[] unset =
        changed(
            form -> {
              int next = 0;
              for (String name : names(form)) {
                var field = form.getField(name).getCOSObject();
                field.setItem(COSName.V, new COSString(WORDS.get(next++ % WORDS.size())));
                field.removeItem(COSName.AP);
              }
              form.setNeedAppearances(true);
            });
    for (byte[] pdf : List.of(changed(FilledFormTest::fill), flat, unset)) {
      Path file = folder.resolve("filled.pdf");
      Files.write(file, pdf);
      Process reader =
          new ProcessBuilder("/usr/bin/pdftotext", "-enc", "UTF-8", file.toString(), "-").start();
      String text = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(reader.waitFor()).isZero();
      assertThat(text).contains(WORDS);
    }
  }
}
