package ringbook.course.typeset;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedQuantity;
import ringbook.course.compose.CourseSources;
import ringbook.problems.Problems;

/** Elements as in MathML 3, chapter 3 (presentation markup). */
class MathMlTest {

  private static String inside(String tex) {
    return MathMl.of(tex, "x", false).orElseThrow().replaceAll("^<math[^>]*>|</math>$", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "f | <mi>f</mi>",
        "12.5 | <mn>12.5</mn>",
        "-\\alpha | <mrow><mo>−</mo><mi>α</mi></mrow>",
        "\\frac{a}{2} | <mfrac><mi>a</mi><mn>2</mn></mfrac>",
        "\\sqrt{x} | <msqrt><mi>x</mi></msqrt>",
        "a_b^2 | <msubsup><mi>a</mi><mi>b</mi><mn>2</mn></msubsup>",
        "a^2 | <msup><mi>a</mi><mn>2</mn></msup>",
        "u_{\\mathrm{min}} | <msub><mi>u</mi><mi>min</mi></msub>",
        "D_\\mathrm{f} | <msub><mi>D</mi><mi mathvariant=\"normal\">f</mi></msub>",
        "15^\\circ | <mrow><mn>15</mn><mtext>°</mtext></mrow>",
        "a < b | <mrow><mi>a</mi><mo>&lt;</mo><mi>b</mi></mrow>",
      })
  void writes(String tex, String mathml) {
    assertThat(inside(tex)).isEqualTo(mathml);
  }

  @Test
  void brackets_stay_signs_that_every_reader_knows() {
    assertThat(inside("\\left(x\\right)"))
        .isEqualTo("<mrow><mo fence=\"true\">(</mo><mi>x</mi><mo fence=\"true\">)</mo></mrow>");
  }

  @Test
  void the_spoken_line_stands_with_it() {
    assertThat(MathMl.of("x", "x is \"a\" & <b>", true).orElseThrow())
        .contains("displaystyle=\"true\" alttext=\"x is &quot;a&quot; &amp; &lt;b&gt;\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\\unheard x", "\\frac{a}", "a^", "\\left(x", "\\begin{cases}a"})
  void what_it_does_not_know_it_leaves_to_the_drawing(String tex) {
    assertThat(MathMl.of(tex, "x", false)).isEmpty();
  }

  /** Every formula of the ledger, held to the formula typeset by the other way and to its parts. */
  @Test
  void no_part_of_a_formula_of_the_ledger_is_lost() throws IOException {
    Problems problems = new Problems();
    ComposedCourse course =
        CourseSources.read(Path.of("lessons/course.yaml"), problems)
            .flatMap(read -> read.compose(problems))
            .orElseThrow();
    Pattern source = Pattern.compile("aria-label=\"([^\"]*)\".* data-tex=\"([^\"]*)\"");
    int seen = 0;
    for (ComposedQuantity quantity : course.quantities()) {
      for (String xhtml : Set.of(quantity.symbolXhtml(), quantity.formulaXhtml() + " ")) {
        for (MatchResult found : source.matcher(xhtml).results().toList()) {
          holds(plain(found.group(2)), plain(found.group(1)), quantity.key());
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(600);
  }

  private static void holds(String tex, String speech, String key) {
    String written = MathMl.of(tex, speech, true).orElseThrow(() -> new AssertionError(tex));
    String inside = written.replaceAll("^<math[^>]*>", "");
    assertThat(count(inside, "<mfrac>")).as(key).isEqualTo(count(tex, "\\\\frac"));
    assertThat(count(inside, "<msqrt>")).as(key).isEqualTo(count(tex, "\\\\sqrt"));
    assertThat(count(inside, "fence=\"true\""))
        .as(key)
        .isEqualTo(2 * count(tex, "\\\\left(?![a-z])") + count(tex, "\\\\begin"));
    assertThat(numbers(inside))
        .as(key)
        .isEqualTo(
            TexTokens.of(tex.replaceAll("\\\\mathrm\\{[^}]*\\}", "")).stream()
                .filter(token -> Character.isDigit(token.charAt(0)))
                .toList());
    // What is read out over, of a root, or of an angle is a fraction, a root, a function there.
    if (speech.contains("the square root of")) {
      assertThat(inside).as(key).contains("<msqrt>");
    }
    if (speech.contains("the sine of")) {
      assertThat(inside).as(key).contains("<mi>sin</mi>");
    }
  }

  private static List<String> numbers(String mathml) {
    return Pattern.compile("<mn>([^<]*)</mn>")
        .matcher(mathml)
        .results()
        .map(number -> number.group(1))
        .toList();
  }

  private static int count(String text, String pattern) {
    return (int) Pattern.compile(pattern).matcher(text).results().count();
  }

  private static String plain(String text) {
    return text.replace("&quot;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }
}
