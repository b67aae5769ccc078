package ringbook.output.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.output.Templates;
import ringbook.output.book.PagePress;
import ringbook.output.pack.InkBounds.Glyph;

/** What can be said of the look of every sheet, on both papers, for long names too. */
final class SheetLookTest {

  /** Smaller type is hard to read at arm's length: common practice, no source. */
  private static final double SMALLEST = 7.5;

  /** 0.3 mm: paper is not folded better. */
  private static final Offset<Double> NEAR = Offset.offset(0.85);

  /** 3 mm from a fold: common practice, no source. */
  private static final double FREE = 8.5;

  private static final Pattern DRAWING =
      Pattern.compile("data-mm=\"([0-9.]+)\"><svg[^>]*viewBox=\"0 0 ([0-9.]+) .*?</svg>", 32);
  private static final Pattern SIZE = Pattern.compile("font-size=\"([0-9.]+)\"");

  /** Looks at a page of a sheet. */
  @FunctionalInterface
  private interface Look {
    void at(String sheet, PDDocument pdf, int page) throws IOException;
  }

  private static void each(Look look) throws IOException {
    for (Map.Entry<String, byte[]> sheet : MadePack.files().entrySet()) {
      if (!sheet.getKey().startsWith("again")) {
        try (PDDocument pdf = Loader.loadPDF(sheet.getValue())) {
          for (int page = 0; page < pdf.getNumberOfPages(); page++) {
            look.at(sheet.getKey(), pdf, page);
          }
        }
      }
    }
  }

  private static String text(PDDocument pdf, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    return stripper.getText(pdf).replaceAll("[\\s\u00a0]+", " ").strip();
  }

  @Test
  void no_letter_is_too_small_to_read() throws IOException {
    each(
        (sheet, pdf, page) ->
            assertThat(InkBounds.of(pdf.getPage(page)).glyphs())
                .as(sheet + " " + page)
                .allSatisfy(glyph -> assertThat(glyph.size()).isGreaterThan(SMALLEST)));
  }

  /** The words of drawings are outlines in the file: their size is that of the drawing's text. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void nor_in_the_drawings_of_the_shot_table(Paper paper) throws IOException {
    PackMatter matter = MadePack.matter();
    Map<String, Object> model = model(paper);
    model.put("table", ShotTable.model(matter, matter.plan().orElseThrow()));
    Matcher drawing = DRAWING.matcher(new Templates().fill("pack/shot-table", model));
    List<Double> points = new ArrayList<>();
    while (drawing.find()) {
      double unit = Double.parseDouble(drawing.group(1)) / Double.parseDouble(drawing.group(2));
      Matcher size = SIZE.matcher(drawing.group());
      while (size.find()) {
        points.add(Double.parseDouble(size.group(1)) * unit * 72 / 25.4);
      }
    }
    assertThat(points).hasSizeGreaterThan(50).allSatisfy(p -> assertThat(p).isGreaterThan(8));
  }

  @Test
  void no_letter_lies_on_another() throws IOException {
    each(
        (sheet, pdf, page) ->
            assertThat(overprints(InkBounds.of(pdf.getPage(page)).glyphs()))
                .as(sheet + " " + page)
                .isEmpty());
  }

  private static List<String> overprints(List<Glyph> glyphs) {
    List<String> found = new ArrayList<>();
    Map<Integer, List<Glyph>> rows = new HashMap<>();
    for (Glyph glyph : glyphs) {
      int row = (int) (glyph.box().getCenterY() / 12);
      for (int near = row - 1; near <= row + 1; near++) {
        for (Glyph other : rows.getOrDefault(near, List.of())) {
          Rectangle2D both = glyph.box().createIntersection(other.box());
          boolean apart = both.getWidth() <= 0 || both.getHeight() <= 0;
          if (!apart && area(both) > Math.min(area(glyph.box()), area(other.box())) / 4) {
            found.add(other.text() + " " + glyph.text() + " at " + both.getX());
          }
        }
      }
      rows.computeIfAbsent(row, none -> new ArrayList<>()).add(glyph);
    }
    return found;
  }

  private static double area(Rectangle2D box) {
    return box.getWidth() * box.getHeight();
  }

  @Test
  void every_page_says_what_it_belongs_to_and_none_is_empty_but_a_back() throws IOException {
    each(
        (sheet, pdf, page) -> {
          String text = text(pdf, page);
          if (text.isEmpty()) {
            assertThat(page).as(sheet).isOdd().isEqualTo(pdf.getNumberOfPages() - 1);
          } else if (!sheet.contains("field-card")) {
            String title = MadePack.course().info().title();
            assertThat(text).as(sheet).contains(title + " · ", page + 1 + " / ");
            boolean parts = sheet.contains("answer-key") || sheet.contains("learners/");
            boolean back = parts && page % 2 == 1; // before the front on which a part begins
            assertThat(back || text.length() > 120).as(sheet + " " + page).isTrue();
          }
        });
  }

  @Test
  void every_page_of_a_learner_has_the_name() throws IOException {
    List<String> found = new ArrayList<>();
    each(
        (sheet, pdf, page) -> {
          if (sheet.contains("learners/") && !text(pdf, page).isEmpty()) {
            String name =
                MadePack.LEARNERS.stream().filter(text(pdf, page)::contains).findAny().get();
            found.add(name);
            assertThat(pdf.getDocumentInformation().getTitle()).contains(name);
          }
        });
    assertThat(found).hasSizeGreaterThan(6).contains(MadePack.LEARNERS.toArray(String[]::new));
  }

  /** A card as full as it can be, with as many lines as fit and more. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void the_field_card_holds_what_was_placed_on_it(Paper paper) throws IOException {
    Map<String, Object> card = FieldCard.model(MadePack.course(), MadePack.matter());
    List<String> lines = new ArrayList<>();
    for (int i = 10; i < 60; i++) {
      lines.add(
          "Word"
              + i
              + " <strong>"
              + i
              + " mm</strong> <span class=\"value\">ŵ</span>"
              + " and more to say of it".repeat(i % 4));
    }
    List<Object> runs = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      runs.add(((List<?>) card.get("runs")).get(i % 2));
    }
    card.put("runs", runs);
    FieldCard.place(card, lines, runs.size());
    int placed = strings(card.get("lines")).size() + strings(card.get("further")).size();
    assertThat(placed).isBetween(12, 40);
    Map<String, Object> model = model(paper);
    model.put("card", card);
    model.put("n", new PackNumbers(MadePack.matter().reckoning()));
    String xhtml = new Templates().fill("pack/field-card", model);
    byte[] bytes = PagePress.open().sheet(xhtml, MadePack.course().info(), c -> c, pdf -> {});
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
      InkBounds ink = InkBounds.of(pdf.getPage(0));
      assertThat(overprints(ink.glyphs())).isEmpty();
      assertThat(ink.least(pdf.getPage(0))).isGreaterThan(8 * 72 / 25.4 - 0.3);
      assertThat(ink.glyphs()) // values within a line are no larger than the line
          .filteredOn(glyph -> glyph.text().equals("ŵ"))
          .hasSize(placed)
          .allSatisfy(glyph -> assertThat(glyph.size()).isLessThan(8.5));
      for (int i = 0; i < placed; i++) {
        assertThat(text(pdf, 0)).contains("Word" + (10 + i));
      }
    }
  }

  /** Folded along its marks a card is a quarter of the sheet, and no word lies in a fold. */
  @Test
  void the_field_card_folds_in_the_middle() throws IOException {
    for (String paper : List.of("a4-colour", "letter-grey")) {
      try (PDDocument pdf = Loader.loadPDF(card(paper))) {
        PDPage page = pdf.getPage(0);
        double across = page.getMediaBox().getWidth() / 2;
        double up = page.getMediaBox().getHeight() / 2;
        InkBounds ink = InkBounds.of(page);
        List<Rectangle2D> level = ink.dashes().stream().filter(d -> d.getHeight() < 2).toList();
        List<Rectangle2D> upright = ink.dashes().stream().filter(d -> d.getWidth() < 2).toList();
        assertThat(level).isNotEmpty();
        assertThat(upright).isNotEmpty();
        assertThat(level).allSatisfy(d -> assertThat(d.getCenterY()).isCloseTo(up, NEAR));
        assertThat(upright).allSatisfy(d -> assertThat(d.getCenterX()).isCloseTo(across, NEAR));
        for (Glyph glyph : ink.glyphs()) {
          if (glyph.size() > 8.2) { // the words at the folds are smaller
            assertThat(Math.abs(glyph.box().getCenterX() - across)).isGreaterThan(FREE);
            assertThat(Math.abs(glyph.box().getCenterY() - up)).isGreaterThan(FREE);
          }
        }
      }
    }
  }

  private static byte[] card(String paper) throws IOException {
    return MadePack.files().get("pack/" + paper + "/field-card.pdf");
  }

  private static Map<String, Object> model(Paper paper) throws IOException {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("paper", paper);
    model.put("inks", Inks.GREY);
    model.put("info", MadePack.course().info());
    model.put("foot", "foot");
    return model;
  }

  private static List<String> strings(Object list) {
    return ((List<?>) list).stream().map(String.class::cast).toList();
  }

  @Test
  void lines_of_the_lessons_fill_the_room_and_no_more() {
    List<String> lines =
        List.of("one", "<strong>two</strong>", "three ".repeat(40).strip(), "four");
    assertThat(FieldCard.fitting(lines, 0)).isEmpty();
    assertThat(FieldCard.fitting(lines, 9.2)).containsExactlyElementsOf(lines.subList(0, 2));
    assertThat(FieldCard.fitting(lines, 200)).isEqualTo(lines);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 8, 9, 30, 36, 37, 95, 96, 97, 400})
  void every_station_has_its_row_once_and_in_order(int stations) {
    List<Integer> numbers = IntStream.rangeClosed(1, stations).boxed().toList();
    List<List<List<Integer>>> pages = ShotTable.pages(numbers);
    assertThat(pages.stream().flatMap(List::stream).flatMap(List::stream)).isEqualTo(numbers);
    assertThat(pages).allSatisfy(page -> assertThat(page.size()).isBetween(1, 2));
    assertThat(pages.get(0).get(0)).hasSizeLessThanOrEqualTo(18);
  }

  /** WCAG 2.1, 1.4.3 for words and 1.4.11 for lines, on white. */
  @ParameterizedTest
  @EnumSource(Inks.class)
  void inks_stand_out_from_the_paper(Inks inks) {
    assertThat(List.of(inks.getInk(), inks.getSoft(), inks.getAccent()))
        .allSatisfy(ink -> assertThat(contrast(ink)).isGreaterThan(4.5));
    assertThat(contrast(Inks.GREY.getRule())).isGreaterThan(3);
  }

  private static double contrast(String colour) {
    double luminance = 0;
    double[] share = {0.2126, 0.7152, 0.0722};
    for (int i = 0; i < 3; i++) {
      double part = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      luminance +=
          share[i] * (part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
    }
    return 1.05 / (luminance + 0.05);
  }
}
