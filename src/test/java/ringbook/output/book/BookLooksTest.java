package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.course.compose.CourseSources;
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
  private static PressedBook book;

  @BeforeAll
  static void press() throws IOException {
    Problems problems = new Problems();
    book =
        PressedBook.of(
            CourseSources.read(Path.of("lessons/course.yaml"), problems)
                .flatMap(read -> read.compose(problems))
                .orElseThrow(),
            folder);
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
    List<Integer> starts = starts();
    List<String> lost = new ArrayList<>();
    for (int page = starts.get(0); page < starts.get(16); page++) {
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
}
