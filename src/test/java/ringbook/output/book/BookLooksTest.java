package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.output.Templates;
import ringbook.problems.Problems;

/** The pages of the course's own book, as the eye sees them. */
class BookLooksTest {

  private static final int DOTS_PER_INCH = 24;

  /** Height of a page and where its text begins and ends, in millimetres, as in book.css. */
  private static final double PAGE_MM = 297;

  private static final double TOP_MM = 30;
  private static final double BOTTOM_MM = 267;

  /** Darker than the ground of any box; of 255. */
  private static final int INK = 200;

  private static final double MOST_EMPTY = 0.55;

  /** A sign and no word: {@code .jpg} is a word. */
  private static final Pattern LOST_SIGN = Pattern.compile("(?:[.,;:?!)\\]]|’\\p{L}*)(?: .*)?");

  @TempDir private static Path folder;
  private static ComposedCourse course;
  private static PressedBook book;

  @BeforeAll
  static void press() throws IOException {
    Problems problems = new Problems();
    course =
        CourseSources.read(Path.of("lessons/course.yaml"), problems)
            .flatMap(read -> read.compose(problems))
            .orElseThrow();
    book = PressedBook.of(course, folder);
  }

  @AfterAll
  static void close() throws IOException {
    book.pdf().close();
  }

  /** The first pages of the lessons, and the page behind the last. */
  private static List<Integer> starts() {
    List<Integer> starts = new ArrayList<>();
    int page = 1;
    for (int lesson = 1; lesson <= 16; lesson++) {
      page = book.pageOf("Lesson " + lesson + " of 16", page);
      starts.add(page);
    }
    starts.add(book.pageOf("Try each exercise on paper first", page));
    return starts;
  }

  @Test
  void no_page_of_a_lesson_but_its_last_is_half_empty() throws IOException {
    PDFRenderer renderer = new PDFRenderer(book.pdf());
    List<Integer> starts = starts();
    List<String> empty = new ArrayList<>();
    for (int page = starts.get(0); page < starts.get(16); page++) {
      double left = empty(renderer.renderImageWithDPI(page - 1, DOTS_PER_INCH, ImageType.GRAY));
      if (left > MOST_EMPTY && !starts.contains(page + 1)) {
        empty.add("page " + page + ": " + Math.round(100 * left) + " %");
      }
    }
    assertThat(empty).isEmpty();
  }

  /** How much of the height of the text column lies below the last ink. */
  private static double empty(BufferedImage image) {
    Raster dots = image.getRaster();
    int top = (int) (image.getHeight() * TOP_MM / PAGE_MM);
    int bottom = (int) (image.getHeight() * BOTTOM_MM / PAGE_MM);
    for (int y = bottom; y > top; y--) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (dots.getSample(x, y, 0) < INK) {
          return (double) (bottom - y) / (bottom - top);
        }
      }
    }
    return 1;
  }

  @Test
  void no_line_begins_with_a_sign_that_belongs_to_the_line_before() {
    List<String> lost = new ArrayList<>();
    for (int page = starts().get(0); page <= book.pages().size(); page++) {
      for (String line : book.page(page).split("\\R", -1)) {
        if (LOST_SIGN.matcher(line.strip()).matches()) {
          lost.add("page " + page + ": " + line.strip());
        }
      }
    }
    assertThat(lost).isEmpty();
  }

  @Test
  void the_number_of_a_page_stands_on_the_line_of_its_word() {
    for (int page = starts().get(0); page < starts().get(16); page++) {
      assertThat(book.page(page).lines().map(String::strip))
          .as("page %d", page)
          .noneMatch(line -> line.endsWith("olution on page"));
    }
  }

  private static final Pattern ENDS_WITH_NUMBERED =
      Pattern.compile(".*\\b(?:[Pp]ages?|[Ll]essons?|Figure|Exercise|Table|Question)");

  /** Two lines of text. */
  private static final double LEAST_BELOW_HEADING = 45;

  /** Lines of one paragraph stand nearer to each other, in points. */
  private static final double ONE_PITCH = 18;

  /** Of drawings, in points: common practice, no source. */
  private static final double SMALLEST_TYPE = 7;

  private static final Pattern DRAWN_WIDTH = Pattern.compile("width:([0-9.]+)mm");

  /** Letters that lean may stand out by a hair. */
  private static final double HAIR = 1;

  @Test
  void no_line_runs_out_of_the_text_block() throws IOException {
    List<String> out = new ArrayList<>();
    for (int page = 2; page <= book.pages().size(); page++) {
      double left = PageLines.left(page);
      for (TextPosition letter : book.letters(page)) {
        double end = letter.getXDirAdj() + letter.getWidthDirAdj();
        boolean along = letter.getXDirAdj() > left - HAIR && end < left + PageLines.WIDTH + HAIR;
        if (!along && !letter.getUnicode().isBlank()) {
          out.add("page " + page + ": " + letter + " at " + letter.getXDirAdj());
        }
      }
      for (PageLines.Line line : PageLines.of(book, page)) {
        if (line.down() > PageLines.BOTTOM) {
          out.add("page " + page + ": " + line.text());
        }
      }
    }
    assertThat(out).isEmpty();
  }

  @Test
  void a_heading_or_the_head_of_a_table_has_its_text_below_it_on_the_page() throws IOException {
    List<String> alone = new ArrayList<>();
    int headings = 0;
    for (int page = 2; page <= book.pages().size(); page++) {
      List<PageLines.Line> lines = PageLines.of(book, page);
      for (int i = 0; i < lines.size(); i++) {
        // The row of the course's own numbers is in strong type too.
        boolean ownRow = i > 0 && lines.get(i - 1).isTableRow();
        boolean heading = lines.get(i).isHeading() || (lines.get(i).isTableHead() && !ownRow);
        headings += heading ? 1 : 0;
        double room = PageLines.BOTTOM - lines.get(i).down();
        if (heading && i >= lines.size() - 2 && room < LEAST_BELOW_HEADING) {
          alone.add("page " + page + ": " + lines.get(i).text());
        }
      }
    }
    assertThat(headings).isGreaterThan(500);
    assertThat(alone).isEmpty();
  }

  @Test
  void no_line_of_a_paragraph_stands_alone_on_its_page() throws IOException {
    List<String> alone = new ArrayList<>();
    for (int page = starts().get(0); page < book.pages().size(); page++) {
      List<PageLines.Line> here = PageLines.of(book, page);
      List<PageLines.Line> next = PageLines.of(book, page + 1);
      if (here.isEmpty() || next.isEmpty()) {
        continue;
      }
      PageLines.Line last = here.get(here.size() - 1);
      PageLines.Line first = next.get(0);
      boolean goesOn = last.isBody() && first.isBody() && !last.text().matches(".*[.:?!)”]");
      if (goesOn && next.size() > 1 && next.get(1).down() - first.down() > ONE_PITCH) {
        alone.add("page " + (page + 1) + ", first line: " + first.text());
      }
      if (goesOn && here.size() > 1 && last.down() - here.get(here.size() - 2).down() > ONE_PITCH) {
        alone.add("page " + page + ", last line: " + last.text());
      }
    }
    assertThat(alone).isEmpty();
  }

  @Test
  void no_table_has_its_last_row_alone_overleaf() throws IOException {
    List<String> alone = new ArrayList<>();
    int goOn = 0;
    for (int page = starts().get(0); page < book.pages().size(); page++) {
      List<PageLines.Line> next = PageLines.of(book, page + 1);
      List<PageLines.Line> here = PageLines.of(book, page);
      int heads = (int) next.stream().takeWhile(PageLines.Line::isTableHead).count();
      boolean repeated =
          heads > 0 && here.stream().anyMatch(line -> line.text().equals(next.get(0).text()));
      if (repeated) {
        goOn++;
        int rows = 0;
        for (int i = heads; i < next.size() && near(next.get(i - 1), next.get(i)); i++) {
          rows++;
        }
        if (rows < 2) {
          alone.add("page " + (page + 1));
        }
      }
    }
    assertThat(goOn).isPositive();
    assertThat(alone).isEmpty();
  }

  private static boolean near(PageLines.Line above, PageLines.Line below) {
    return below.down() - above.down() < 2 * ONE_PITCH;
  }

  @Test
  void no_number_of_a_page_is_torn_from_its_word() throws IOException {
    List<String> torn = new ArrayList<>();
    for (int page = starts().get(0); page <= book.pages().size(); page++) {
      List<PageLines.Line> lines = PageLines.of(book, page);
      for (int i = 1; i < lines.size(); i++) {
        String before = lines.get(i - 1).text();
        if (!lines.get(i - 1).isTableHead()
            && ENDS_WITH_NUMBERED.matcher(before).matches()
            && Character.isDigit(lines.get(i).text().charAt(0))
            && lines.get(i).size() == lines.get(i - 1).size()) {
          torn.add("page " + page + ": " + before + " / " + lines.get(i).text());
        }
      }
    }
    assertThat(torn).isEmpty();
  }

  /** The drawings of the course as the book prints them: smallest type, in points. */
  @Test
  void no_word_of_a_drawing_is_too_small_to_read() throws IOException {
    Map<String, Object> model = Map.of("book", BookPages.of(course), "css", "");
    Element root = PrintDocument.of(new Templates().fill("book/book", model)).getDocumentElement();
    List<Double> points = new ArrayList<>();
    for (Element svg : Elements.named(root, "svg")) {
      Matcher width = DRAWN_WIDTH.matcher(svg.getAttribute("style"));
      if (!Elements.hasClass((Element) svg.getParentNode(), "drawing") || !width.lookingAt()) {
        continue;
      }
      double across =
          Double.parseDouble(svg.getAttribute("viewBox").strip().split("[\\s,]+", -1)[2]);
      double unit = Double.parseDouble(width.group(1)) / across * 72 / 25.4;
      for (Element word : Elements.all(svg)) {
        if (word.hasAttribute("font-size")) {
          points.add(Double.parseDouble(word.getAttribute("font-size")) * unit);
        }
      }
    }
    assertThat(points)
        .hasSizeGreaterThan(500)
        .allSatisfy(size -> assertThat(size).isGreaterThanOrEqualTo(SMALLEST_TYPE));
  }
}
