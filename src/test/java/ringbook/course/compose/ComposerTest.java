package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class ComposerTest {

  @Test
  void a_value_knows_its_key_and_its_exact_number() {
    assertThat(Lessons.markup("Stand ${subject.height} away."))
        .isEqualTo(
            """
            <p>Stand <data class="quantity" data-key="subject.height" value="0.36">36\u00a0cm</data> away.</p>
            """);
  }

  @Test
  void a_value_of_a_changed_scene_knows_the_change() {
    assertThat(Lessons.markup("${given(\"subject.height = 0.5 m\").subject.height}"))
        .contains("data-given=\"subject.height = 0.5 m\" value=\"0.5\">50\u00a0cm</data>");
  }

  @Test
  void a_condition_keeps_its_text_or_leaves_it_out() {
    String body =
        "```when subject.height > 30\ntall\n```\n```unless subject.height > 30\nlow\n```\n";
    assertThat(Lessons.markup(body)).isEqualTo("<p>tall</p>\n");
  }
}
