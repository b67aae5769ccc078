package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.course.typeset.Formulas;

/** The formulas of a page share their letters and look as before. */
final class SharedLettersTest {

  private static String page(String... formulas) {
    StringBuilder page = new StringBuilder("<body>");
    for (String tex : formulas) {
      page.append("<p>").append(Formulas.inline(tex, "a > b").orElseThrow()).append("</p>");
    }
    return page.append("</body>").toString();
  }

  private static List<String> found(String pattern, String text) {
    return Pattern.compile(pattern).matcher(text).results().map(m -> m.group(1)).toList();
  }

  /** Puts the outlines back where their places say. */
  private static String unshared(String page) {
    Map<String, String> letters = new HashMap<>();
    Matcher letter = Pattern.compile("<path id=\"([^\"]*)\"[^>]* d=\"M0 0([^\"]*)\"").matcher(page);
    while (letter.find()) {
      letters.put(letter.group(1), letter.group(2));
    }
    return Pattern.compile("<use href=\"#([^\"]*)\" x=\"([^\"]*)\" y=\"([^\"]*)\"/>")
        .matcher(page)
        .replaceAll(
            use ->
                "M"
                    + use.group(2)
                    + (use.group(3).startsWith("-") ? "" : " ")
                    + use.group(3)
                    + letters.get(use.group(1)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "c = \\frac{d}{2 \\sin \\frac{\\theta}{2}}",
        "\\sqrt{x^2 + 10.5}",
        "0.58\\,\\mathrm{m}",
        "\\left(\\lceil n \\rceil\\right)"
      })
  void every_letter_stands_where_it_stood(String tex) {
    String page = page(tex);
    assertThat(found("( d=\"M[^\"]*)", page)).hasSize(1);
    String shared = SharedLetters.in(page);
    assertThat(unshared(shared).replaceAll("(?s)<svg class=\"letters\".*?</svg>\\n", ""))
        .isEqualToIgnoringNewLines(page.replaceAll("<path fill=\"[^\"]*\" d=\"([^\"]*)\"/>", "$1"));
  }

  @Test
  void a_letter_is_drawn_once_wherever_it_stands() {
    String shared = SharedLetters.in(page("12.5 + 12.5", "5 + x", "5"));
    assertThat(found("(<path )", shared)).hasSize("125.+x".length());
    assertThat(found("(<use )", shared)).hasSize("12.5+12.55+x5".length());
    assertThat(found("<path id=\"([^\"]*)", shared)).doesNotHaveDuplicates();
    assertThat(found("<use href=\"#([^\"]*)", shared))
        .isSubsetOf(found("<path id=\"([^\"]*)", shared));
  }

  @Test
  void other_drawings_and_pages_without_formulas_stay() {
    String figure =
        "<body><svg class=\"fig\"><path fill=\"currentColor\" d=\"M0 0h1\"/></svg></body>";
    assertThat(SharedLetters.in(figure)).isEqualTo(figure);
  }
}
