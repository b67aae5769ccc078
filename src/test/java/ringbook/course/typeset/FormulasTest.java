package ringbook.course.typeset;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

final class FormulasTest {

  private static final String HYPERFOCAL = "H=\\frac{f^{2}}{N\\,c}+f";

  @Test
  void a_formula_is_one_labelled_drawing_in_the_colour_of_the_text() throws Exception {
    Element svg = svg(HYPERFOCAL, "H is \"f\" < & more");
    assertThat(svg.getAttribute("role")).isEqualTo("img");
    assertThat(svg.getAttribute("aria-label")).isEqualTo("H is \"f\" < & more");
    assertThat(svg.getElementsByTagName("path").getLength()).isEqualTo(1);
    Element path = (Element) svg.getElementsByTagName("path").item(0);
    assertThat(path.getAttribute("fill")).isEqualTo("currentColor");
    assertThat(svg.hasAttribute("id")).isFalse();
  }

  @Test
  void the_same_formula_gives_the_same_bytes() {
    assertThat(Formulas.display(HYPERFOCAL, "h")).isEqualTo(Formulas.display(HYPERFOCAL, "h"));
  }

  @Test
  void a_letter_without_descender_stands_on_the_baseline() throws Exception {
    // Its box in the typesetter's metrics ends at the baseline, so nothing hangs below it.
    assertThat(svg("H", "H").getAttribute("style")).contains("vertical-align:0.000em");
  }

  @Test
  void a_fraction_hangs_below_the_line() throws Exception {
    assertThat(svg("\\frac{a}{b}", "x").getAttribute("style")).contains("vertical-align:-0.");
  }

  @Test
  void a_digit_is_half_an_em_wide() throws Exception {
    // Advance width of a digit of Computer Modern Roman at 10 points: 0.5 em (cmr10 metrics).
    List<String> box = List.of(svg("8", "8").getAttribute("viewBox").split(" ", -1));
    assertThat(box.get(2)).isEqualTo("500");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"\\frac{a}{", "a}", "{", "}{", "\\nosuchcommand{a}", "\\left(a", "", "  "})
  void what_cannot_be_typeset_is_refused(String tex) {
    assertThat(Formulas.inline(tex, "x")).isEmpty();
  }

  @Test
  void braces_that_are_printed_need_no_partner() {
    assertThat(Formulas.inline("\\{ a", "set")).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "\\frac{a}{b}; a over b",
        "\\sqrt{x^2}; the square root of x squared",
        "u_{\\mathrm{w}}=2\\cdot f; u w equals 2 times f",
        "30^{\\circ}; 30 degrees",
        "a^{n}-\\varphi; a to the power n minus varphi"
      })
  void a_formula_can_be_read_out(String tex, String words) {
    assertThat(Spoken.of(tex)).isEqualTo(words);
  }

  private static Element svg(String tex, String speech) throws Exception {
    String text = Formulas.inline(tex, speech).orElseThrow();
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text)))
        .getDocumentElement();
  }
}
