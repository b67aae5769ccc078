package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import ringbook.output.IndexOrder;

/** What is done to the filled template before it is set. */
class PrintDocumentTest {

  @Test
  void a_heading_is_never_two_levels_below_the_one_before() throws IOException {
    Element root = print("<h1>a</h1><h3>b</h3><h4>c</h4><h2>d</h2><h4>e</h4>");
    assertThat(names(root, List.of("h1", "h2", "h3", "h4")))
        .containsExactly("h1", "h2", "h3", "h2", "h3");
  }

  @Test
  void a_paragraph_that_leads_up_to_a_working_stays_with_it() throws IOException {
    Element root =
        print("<p>alone</p><p>First this one:</p>\n<table/><p>Then</p><div class=\"working\"/>");
    assertThat(Elements.named(root, "p"))
        .extracting(p -> p.getAttribute("class"))
        .containsExactly("", "leads", "leads");
  }

  @Test
  void the_inputs_of_a_working_run_in_one_line() throws IOException {
    Element root = print("<ul class=\"inputs\"><li>f: 6 mm</li>\n<li>h: 2 m</li></ul>");
    assertThat(Elements.text(Elements.named(root, "p").get(0))).isEqualTo("with f: 6 mm; h: 2 m");
    assertThat(Elements.named(root, "ul")).isEmpty();
  }

  @Test
  void an_input_keeps_its_colon_with_its_name() throws IOException {
    Element root =
        print(
            "<ul class=\"inputs\"><li>N <a href=\"#n\" id=\"n\">f-number</a>: f/9.2</li>"
                + "<li>h <a href=\"#n\">height</a>: 2 m</li></ul>");
    assertThat(Elements.text(root)).contains("with N f-number: f/9.2; h height: 2 m");
    assertThat(Elements.named(root, "a")).extracting(Elements::text).endsWith("height:");
  }

  @Test
  void the_index_files_a_name_without_its_article() {
    assertThat(IndexOrder.filed("An f-number holds")).isEqualTo("f-number holds");
    assertThat(IndexOrder.filed("the raised view")).isEqualTo("raised view");
    assertThat(IndexOrder.filed("angle of view")).isEqualTo("angle of view");
  }

  @Test
  void a_sign_behind_a_value_stays_on_its_line() throws IOException {
    Element root =
        print("<p>at most <data>15°</data>. How <data>4.8 mm</data>), <data>2</data> x</p>");
    assertThat(Elements.named(root, "data"))
        .extracting(Elements::text)
        .containsExactly("15°.", "4.8 mm),", "2");
    assertThat(Elements.text(root)).contains("at most 15°. How 4.8 mm), 2 x");
  }

  /** The page maker breaks before a stroke, as in addresses of the web. */
  @Test
  void a_fraction_of_an_inch_is_not_broken() throws IOException {
    Element root =
        print(
            "<p>34 cm (13\u00a01/2\u00a0in); 3\u00a0ft\u00a010\u00a03/4\u00a0in and"
                + " <data>1/4\u00a0in</data>, 1/2\u00a0inning, 1/100\u00a0s, 1/20</p><p>29 3/4 in"
                + " high</p>");
    assertThat(Elements.named(root, "data"))
        .extracting(Elements::text)
        .containsExactly("(13 1/2 in);", "10 3/4 in", "1/4 in,", "29 3/4 in");
    assertThat(Elements.text(root))
        .contains("34 cm (13 1/2 in); 3 ft 10 3/4 in and 1/4 in, 1/2 inning");
  }

  @Test
  void a_sign_behind_a_word_is_one_text_with_the_word() throws IOException {
    Element root =
        print(
            "<p>the <a class=\"term\">keeper</a>’s, an <a class=\"term\">f-number</a>, low</p>"
                + "<ul class=\"inputs\"><li><a>far face</a>: <data>2 mm</data></li></ul>");
    assertThat(Elements.named(root, "a"))
        .extracting(a -> a.getLastChild().getTextContent())
        .containsExactly("keeper’s,", "f-number,", "far face:");
  }

  @Test
  void a_sign_behind_a_link_to_a_page_is_kept_for_behind_the_page() throws IOException {
    Element root =
        print(
            "<section id=\"lesson-ring\"><p>as <a href=\"course:ring\">one ring</a>), or"
                + " <a href=\"course:ring\">there</a> too</p></section>");
    assertThat(Elements.named(root, "a"))
        .extracting(a -> a.getAttribute("class") + " " + a.getAttribute("data-signs"))
        .containsExactly("see ", "at-page ),", "see ", "at-page ");
    assertThat(Elements.text(root)).isEqualTo("as one ring or there too");
  }

  @Test
  void a_negative_number_has_a_minus_sign_and_a_command_keeps_its_hyphen() throws IOException {
    Element root =
        print(
            "<p>from <data>-17°</data> or (-5°) to 2026-11-02: <code>arc -3</code> f-number.</p>");
    assertThat(Elements.text(root)).isEqualTo("from −17° or (−5°) to 2026-11-02: arc -3 f-number.");
  }

  @Test
  void a_number_stays_with_its_unit_and_with_the_word_it_numbers() throws IOException {
    Element root =
        print("<p>From lesson 3, page\n44: 36 by 24 mm, 9 s, 60 % of 4 men. <code>3 mm</code></p>");
    assertThat(Elements.named(root, "p").get(0).getTextContent())
        .isEqualTo(
            "From lesson~3, page~44: 36 by 24~mm, 9~s, 60~% of 4 men. 3 mm".replace('~', '\u00a0'));
  }

  @Test
  void the_pages_of_a_quantity_stand_with_their_commas() throws IOException {
    Element root =
        print(
            "<section class=\"lesson\" id=\"lesson-a\"><data"
                + " data-key=\"k\">1</data></section><section class=\"lesson\""
                + " id=\"lesson-b\"><data data-key=\"k\">1</data></section><p id=\"q\"><span"
                + " data-uses=\"k\"></span></p><p><span data-index=\"k\"><a class=\"page main\""
                + " href=\"#q\"></a></span></p>");
    assertThat(Elements.named(root, "a"))
        .extracting(a -> a.getAttribute("href") + a.getAttribute("data-signs"))
        .containsExactly(
            "#use-lesson-a-k,", "#use-lesson-b-k.", "#q,", "#use-lesson-a-k,", "#use-lesson-b-k");
    assertThat(Elements.text(root)).endsWith("Used on pages ");
  }

  @Test
  void a_drawing_says_its_words_to_the_page_maker() throws IOException {
    Element root =
        print(
            "<svg viewBox=\"0 0 1 1\"><title>A ring</title><desc>Of 24.</desc></svg>"
                + "<svg viewBox=\"0 0 1 1\" aria-label=\"u equals 2\"/>");
    assertThat(Elements.named(root, "svg"))
        .extracting(svg -> svg.getAttribute("alt"))
        .containsExactly("A ring. Of 24.", "u equals 2");
  }

  @Test
  void a_formula_too_wide_for_the_column_shrinks_as_a_whole() throws IOException {
    Element root =
        print(
            "<svg class=\"math\" style=\"width:62.000em;height:3.000em;vertical-align:-1.000em\"/>"
                + "<svg class=\"math\" style=\"width:9.000em;height:3.000em\"/>");
    assertThat(Elements.named(root, "svg"))
        .extracting(svg -> svg.getAttribute("style"))
        .containsExactly(
            "width:31.000em;height:1.500em;vertical-align:-0.500em",
            "width:9.000em;height:3.000em");
  }

  @Test
  void a_figure_fits_its_column_and_leaves_room_for_text() throws IOException {
    Element root =
        print(
            "<div class=\"drawing\"><svg viewBox=\"0 0 800 400\"/></div>"
                + "<div class=\"drawing\"><svg viewBox=\"0 0 500 500\"/></div>"
                + "<div class=\"drawing\"><svg viewBox=\"0 0 100 50\"/></div>"
                + "<div class=\"drawing\"><svg viewBox=\"0 0 500 600\"/></div>");
    assertThat(Elements.named(root, "svg"))
        .extracting(svg -> svg.getAttribute("style"))
        .containsExactly(
            "width:134.00mm;height:67.00mm",
            "width:105.00mm;height:105.00mm",
            "width:27.00mm;height:13.50mm",
            "width:105.00mm;height:126.00mm");
  }

  @Test
  void links_into_the_course_become_links_into_the_book() throws IOException {
    Element root =
        print(
            "<section id=\"lesson-ring\"><p id=\"ring--turn\"/><p id=\"exercise-owl\"/></section>"
                + "<p id=\"quantities\"/><p id=\"quantity-ring.photos\"/>"
                + "<a href=\"course:ring\"/><a href=\"course:ring#ring--turn\"/>"
                + "<a href=\"course:ring#owl\"/><a href=\"course:quantities\"/>"
                + "<a href=\"course:quantities#ring.photos\"/><a href=\"https://example.org\"/>");
    assertThat(Elements.named(root, "a"))
        .filteredOn(a -> !Elements.hasClass(a, "at-page"))
        .extracting(a -> a.getAttribute("href") + " " + a.getAttribute("class"))
        .containsExactly(
            "#lesson-ring see",
            "#ring--turn see",
            "#exercise-owl see",
            "#quantities see",
            "#quantity-ring.photos see",
            "https://example.org outside");
  }

  @Test
  void a_fragment_that_is_not_well_formed_is_a_programmers_fault() {
    assertThatThrownBy(() -> print("<p>a<br></p>"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("not well-formed")
        .hasMessageContaining("<p>a<br></p>");
  }

  private static Element print(String body) throws IOException {
    return PrintDocument.of(
            "<html xmlns=\"http://www.w3.org/1999/xhtml\"><head/><body>" + body + "</body></html>")
        .getDocumentElement();
  }

  private static List<String> names(Element root, List<String> wanted) {
    return Elements.all(root).stream().map(Element::getNodeName).filter(wanted::contains).toList();
  }
}
