package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import ringbook.output.MadeUpCourse;

final class FragmentsTest {

  private final PlacedStyles styles = new PlacedStyles();
  private final Fragments fragments = new Fragments(MadeUpCourse.small().quantities(), styles);

  @Test
  void links_inside_the_course_lead_to_pages() {
    assertThat(fragments.rewritten("<a class=\"x\" href=\"course:one-ring\">a</a>"))
        .isEqualTo("<a class=\"x\" href=\"one-ring.html\">a</a>");
    assertThat(fragments.rewritten("<a href=\"course:quantities#ring.photos\">a</a>"))
        .isEqualTo("<a href=\"quantities.html#ring.photos\">a</a>");
  }

  @Test
  void other_links_and_words_in_text_stay() {
    String same =
        "<p title=\"1 > 0\"><a href=\"#a\">href=\"course:x\"</a> style=\"y\" 2 &lt; 3</p>";
    assertThat(fragments.rewritten(same)).isEqualTo(same);
  }

  @Test
  void a_value_says_its_name_unless_it_says_something_already() {
    assertThat(fragments.rewritten("<data class=\"quantity\" data-key=\"ring.photos\">8</data>"))
        .startsWith("<data title=\"photographs in a ring\" class=\"quantity\"");
    String titled = "<data title=\"mine\" data-key=\"ring.photos\">8</data>";
    assertThat(fragments.rewritten(titled)).isEqualTo(titled);
    String unknown = "<data data-key=\"ring.none\">8</data>";
    assertThat(fragments.rewritten(unknown)).isEqualTo(unknown);
  }

  @Test
  void styles_become_classes_each_once() {
    String one = fragments.rewritten("<svg class=\"math\" style=\"width:1em\"><path/></svg>");
    String two = fragments.rewritten("<b style=\"width:1em\">x</b>");
    assertThat(one).isEqualTo("<svg class=\"placed-1 math\"><path/></svg>");
    assertThat(two).isEqualTo("<b class=\"placed-1\">x</b>");
    assertThat(styles.sheet()).endsWith("\n.placed-1 { width:1em }\n");
  }

  @Test
  void long_fragments_do_not_stall_it() {
    String open = "<a ".repeat(20_000) + "\"".repeat(20_001);
    Assertions.assertTimeoutPreemptively(
        Duration.ofSeconds(3), () -> assertThat(fragments.rewritten(open)).isEqualTo(open));
  }
}
