package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import ringbook.output.Templates;

/** How lessons are arranged on pages. A line of text takes 22.6 of the page's 671.8 points. */
class PageFlowTest {

  private static final String DRAWING =
      "<div class=\"figure\" id=\"drawn\"><div class=\"drawing\"><svg viewBox=\"0 0 800"
          + " 450\"/></div><p class=\"caption\">Drawn</p></div>";

  private static final String NUMBERS =
      "<div class=\"readings short\"><p class=\"readings-head\">In numbers</p><table><tbody>"
          + "<tr><td>width</td><td>6 mm</td></tr>".repeat(12)
          + "</tbody></table></div>";

  private static final String SUMMARY =
      "<section class=\"summary\"><h2>In short</h2><ul>"
          + "<li>Go all round.</li>".repeat(6)
          + "</ul></section>";

  private static String lines(String word, int count) {
    StringBuilder lines = new StringBuilder();
    IntStream.rangeClosed(1, count).forEach(i -> lines.append("<p>" + word + i + "</p>"));
    return lines.toString();
  }

  private static String exercises(int count, int lines) {
    return ("<div class=\"exercise\"><h3 class=\"exercise-head\">Exercise</h3>"
            + "<div>"
            + lines("q", lines)
            + "</div></div>")
        .repeat(count);
  }

  private static String plate(String inner) {
    return "<div class=\"plate\">" + inner + "</div>";
  }

  /** The lesson after it is arranged. */
  private static Element arranged(String lesson) throws IOException {
    Document print =
        PrintDocument.of(
            "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><style>"
                + Templates.style("book/book")
                + "</style></head><body><section class=\"chapter lesson\" id=\"lesson-a\">"
                + lesson
                + "</section><section id=\"solutions\"/></body></html>");
    PageFlow.arrange(print, BookFonts.liberation(), new FormulaDrawer());
    List<Element> parts =
        Elements.children(Elements.named(print.getDocumentElement(), "body").get(0));
    assertThat(parts)
        .extracting(part -> part.getAttribute("id"))
        .containsExactly("lesson-a", "solutions");
    assertThat(Elements.text(Elements.named(print.getDocumentElement(), "style").get(0)))
        .doesNotContain("20000mm");
    return parts.get(0);
  }

  private static List<String> words(Element lesson) {
    return Elements.children(lesson).stream()
        .map(child -> Elements.hasClass(child, "plate") ? "plate" : Elements.text(child))
        .toList();
  }

  @Test
  void a_figure_with_room_stays_where_it_is() throws IOException {
    List<String> words = words(arranged(lines("a", 10) + plate(DRAWING) + lines("B", 12)));
    assertThat(words.indexOf("plate")).isEqualTo(10);
  }

  @Test
  void text_goes_before_a_figure_that_has_no_room() throws IOException {
    List<String> words = words(arranged(lines("a", 20) + plate(DRAWING) + lines("B", 12)));
    assertThat(words.indexOf("plate")).isEqualTo(words.indexOf("B10") + 1);
    assertThat(words).hasSize(33);
  }

  @Test
  void a_figure_stands_in_no_sentence() throws IOException {
    String sentence = lines("B", 9) + "<p>These are</p><p>so many.</p>" + lines("D", 3);
    List<String> words = words(arranged(lines("a", 20) + plate(DRAWING) + sentence));
    assertThat(words.indexOf("plate")).isEqualTo(words.indexOf("B9") + 1);
  }

  @Test
  void no_text_goes_past_the_next_heading() throws IOException {
    List<String> words =
        words(
            arranged(
                lines("a", 20) + plate(DRAWING) + lines("B", 2) + "<h2>c</h2>" + lines("d", 9)));
    assertThat(words.subList(19, 24)).containsExactly("a20", "B1", "B2", "plate", "c");
  }

  @Test
  void below_a_heading_text_goes_first_and_keeps_the_heading() throws IOException {
    List<String> words =
        words(arranged(lines("a", 18) + "<h2>c</h2>" + plate(DRAWING) + lines("B", 12)));
    assertThat(words.subList(17, 20)).containsExactly("a18", "c", "B1");
    assertThat(words.indexOf("plate")).isEqualTo(words.indexOf("B10") + 1);
  }

  @Test
  void numbers_go_overleaf_and_name_the_page_of_their_figure() throws IOException {
    Element lesson =
        arranged(lines("a", 16) + plate(DRAWING + NUMBERS) + "<h2>c</h2>" + lines("d", 9));
    Element plate = Elements.children(lesson).get(16);
    assertThat(plate.getAttribute("class")).isEqualTo("plate parted");
    assertThat(Elements.text(plate)).contains("In numbers. Figure on page");
  }

  @Test
  void numbers_stay_with_a_figure_that_has_room_for_both() throws IOException {
    Element lesson = arranged(lines("a", 6) + plate(DRAWING + NUMBERS) + lines("d", 9));
    assertThat(Elements.children(lesson).get(6).getAttribute("class")).isEqualTo("plate");
    assertThat(Elements.text(lesson)).doesNotContain("Figure on page");
  }

  @Test
  void a_summary_joins_the_exercises_before_it_if_they_can_stand_closer() throws IOException {
    Element lesson = arranged(exercises(4, 4) + SUMMARY);
    assertThat(Elements.children(lesson))
        .hasSize(5)
        .allSatisfy(child -> assertThat(child.getAttribute("class")).endsWith("dense"));
  }

  @Test
  void else_a_short_exercise_goes_along_to_the_last_page() throws IOException {
    Element lesson = arranged(exercises(3, 6) + exercises(1, 4) + SUMMARY);
    Element last = Elements.children(lesson).get(3);
    assertThat(last.getAttribute("class")).isEqualTo("kept");
    assertThat(Elements.children(last)).hasSize(2);
  }

  @Test
  void else_it_stands_at_the_foot_of_an_earlier_page() throws IOException {
    Element lesson = arranged(exercises(1, 17) + exercises(1, 26) + SUMMARY);
    assertThat(Elements.children(lesson))
        .extracting(child -> child.getAttribute("class").split(" ", -1)[0])
        .containsExactly("exercise", "summary", "exercise");
  }

  @Test
  void a_link_knows_how_many_digits_its_page_will_have() throws IOException {
    Element lesson =
        arranged(
            "<p>see <a href=\"course:a\">here</a></p>"
                + lines("a", 300)
                + "<p id=\"far\">See <a href=\"course:a#far\">there</a></p>");
    assertThat(Elements.named(lesson, "a"))
        .filteredOn(link -> Elements.hasClass(link, "at-page"))
        .extracting(link -> link.getAttribute("class"))
        .containsExactly("at-page digits-1", "at-page digits-2");
  }
}
