package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.course.ComposedLesson.FigureBlock;
import ringbook.course.ComposedLesson.Markup;

/** Content no page was made for: it is set all the same, or refused with a clear text. */
class BookTroubleTest {

  /** A4 and the text column of the style sheet, in points. */
  private static final double MM = 72 / 25.4;

  @TempDir private Path folder;

  @Test
  void refuses_a_letter_its_fonts_lack() {
    assertRefused("<p>Tick it off: ✓ done.</p>")
        .hasMessage(
            "book: the book's fonts have no letter '✓' (CHECK MARK) in 'Tick it off: ✓ done.':"
                + " write it with another sign or in words");
  }

  @Test
  void refuses_a_link_that_leads_nowhere() {
    assertRefused("<p><a href=\"course:two-rings\">later</a></p>")
        .hasMessage("book: the link 'later' to 'course:two-rings' leads nowhere in the book");
  }

  @Test
  void passes_on_what_the_page_maker_warns_of() {
    assertRefused("<p style=\"box-shadow: 2px 2px red\">text</p>")
        .hasMessageStartingWith("book: the page maker warns: ")
        .hasMessageContaining("box-shadow");
  }

  @Test
  void a_very_long_word_stays_in_the_text_column() throws IOException {
    String word = "overlong".repeat(60);
    assertInside(
        "<p>"
            + word
            + "</p><pre>"
            + word
            + "</pre><ul><li>"
            + word
            + "</li></ul>"
            + "<table><tbody><tr><td>short</td><td>"
            + word
            + "</td></tr></tbody></table>");
  }

  @Test
  void the_sample_has_no_line_beyond_the_text_column() throws IOException {
    assertInside("<p>The end.</p>");
  }

  @Test
  void a_figure_with_many_numbers_has_them_at_the_back() throws IOException {
    FigureBlock figure = new FigureBlock(SampleCourse.plan("figure-many", 4, 120));
    PressedBook book = PressedBook.of(SampleCourse.with(List.of(figure)), folder);
    int back = book.pageOf("Figure 4 in numbers", 3);
    assertThat(back).isGreaterThan(book.pageOf("Try each exercise on paper first", 3));
    assertThat(book.page(book.pageOf("Figure 4 The ring", 3)))
        .contains("Its numbers are on page " + back);
    assertThat(book.text()).contains("120 357° 40.5 cm");
    book.pdf().close();
  }

  @Test
  void a_table_over_pages_repeats_its_head() throws IOException {
    String rows =
        IntStream.rangeClosed(1, 200)
            .mapToObj(i -> "<tr><td>row " + i + "</td><td>" + i * i + "</td></tr>")
            .collect(Collectors.joining());
    String table =
        "<table><thead><tr><th scope=\"col\">count</th><th scope=\"col\">square</th></tr></thead>"
            + "<tbody>"
            + rows
            + "</tbody></table>";
    PressedBook book = PressedBook.of(SampleCourse.with(List.of(new Markup(table))), folder);
    int first = book.pageOf("row 1 ", 3);
    int last = book.pageOf("row 200 ", 3);
    assertThat(last).isGreaterThan(first + 2);
    for (int page = first; page <= last; page++) {
      assertThat(book.page(page)).contains("count square");
    }
    for (int row = 1; row <= 200; row++) {
      assertThat(book.text()).contains("row " + row + " " + row * row + "\n");
    }
    book.pdf().close();
  }

  private void assertInside(String xhtml) throws IOException {
    PressedBook book = PressedBook.of(SampleCourse.with(List.of(new Markup(xhtml))), folder);
    for (int page = 1; page <= book.pages().size(); page++) {
      double inner = (page % 2 == 1 ? 34 : 42) * MM;
      double outer = (210 - (page % 2 == 1 ? 42 : 34)) * MM;
      for (TextPosition letter : book.letters(page)) {
        assertThat((double) letter.getX()).as("page %d", page).isGreaterThan(inner - 1);
        assertThat((double) letter.getX() + letter.getWidth())
            .as("page %d", page)
            .isLessThan(outer + 1);
      }
    }
    book.pdf().close();
  }

  private org.assertj.core.api.AbstractThrowableAssert<?, ? extends Throwable> assertRefused(
      String xhtml) {
    return assertThatThrownBy(
            () -> new BookOutput().write(SampleCourse.with(List.of(new Markup(xhtml))), folder))
        .isInstanceOf(BookException.class);
  }
}
