package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.ledger.Working;

/** The demo pot is 36 cm tall, the ring lies 15° up, the frame is filled to 75 %. */
final class MarkerTest {

  private static final Exercise CHOICE =
      Asked.choice(Scenes.pot(), "12 photographs", "+24 photographs", "*None* at all.");

  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvFileSource(resources = "verdicts.csv", numLinesToSkip = 1)
  void finds_what_a_learner_did(String quantity, String answer, String label, String credit) {
    Exercise exercise = Asked.number(Scenes.pot(), quantity);
    String text = answer == null ? "" : answer;
    Mark mark = Marker.mark(exercise, new Answer("Nora", "asked", text));
    assertThat(mark.verdict().label()).isEqualTo(label);
    assertThat(mark.credit().text()).isEqualTo(credit);
    assertThat(mark.feedback().happened()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "b",
        "B",
        " b) ",
        "(b)",
        "b.",
        "Option B",
        "24 photographs",
        "24\u00a0Photographs.",
        "b) 24 photographs"
      })
  void takes_letter_or_text_of_the_right_option(String answer) {
    assertThat(Marker.verdict(CHOICE, answer)).isEqualTo(new Verdict.Right());
  }

  @ParameterizedTest
  @ValueSource(strings = {"c", "None at all", "*none* AT ALL."})
  void tells_the_reason_of_a_wrong_option(String answer) {
    Mark mark = Marker.mark(CHOICE, new Answer("Nora", "asked", answer));
    assertThat(mark.verdict()).isEqualTo(new Verdict.OtherOption(2));
    assertThat(mark.feedback().happened()).isEqualTo("Not c. Reason for *None* at all..");
  }

  @ParameterizedTest
  @ValueSource(strings = {"d", "24", "b and c", "ß", "12 photographs or 24 photographs"})
  void says_that_an_answer_is_no_option(String answer) {
    assertThat(Marker.verdict(CHOICE, answer)).isEqualTo(new Verdict.NoSuchOption(3));
  }

  @Test
  void a_stated_tolerance_widens_what_is_right() {
    Exercise strict = Asked.number(Scenes.pot(), "subject.height");
    Exercise wide = Asked.number(Scenes.pot(), "subject.height", OptionalDouble.of(0.03));
    assertThat(Marker.verdict(strict, "37 cm")).isEqualTo(new Verdict.RoundedEarly());
    assertThat(Marker.verdict(wide, "37 cm")).isEqualTo(new Verdict.Right());
  }

  @Test
  void a_number_properly_rounded_to_two_digits_is_right() {
    Exercise exercise =
        Asked.number(Scenes.with(Scenes.pot(), "subject.height", "36.4"), "subject.height");
    assertThat(Marker.verdict(exercise, "36 cm")).isEqualTo(new Verdict.Right());
    assertThat(Marker.verdict(exercise, "0.36 m")).isEqualTo(new Verdict.Right());
    assertThat(Marker.verdict(exercise, "37 cm")).isEqualTo(new Verdict.RoundedEarly());
    assertThat(Marker.verdict(exercise, "36.0 cm")).isEqualTo(new Verdict.RoundedEarly());
    assertThat(Marker.verdict(exercise, "0.4 m")).isNotEqualTo(new Verdict.Right());
  }

  @Test
  void feedback_says_what_happened_how_it_is_worked_out_and_what_to_do_next() {
    Mark mark =
        Marker.mark(
            Asked.number(Scenes.pot(), "subject.height"), new Answer("Nora", "asked", "3.6 m"));
    assertThat(mark.feedback())
        .isEqualTo(
            new Feedback(
                "The digits are right, but '3.6 m' is 10 times too large.",
                List.of("height of the object:", "h_o = 36\u00a0cm"),
                "Turn all lengths into one unit before you put them in: 1 m = 100 cm = 1000 mm."));
  }

  @Test
  void the_working_goes_back_to_what_the_question_tells() {
    Exercise exercise = Asked.number(Scenes.pot(), "distance.far");
    assertThat(exercise.workings())
        .extracting(Working::key)
        .contains("distance.standoff")
        .doesNotContain("subject.width", "kit.focalLength")
        .endsWith("distance.far");
    Exercise told = Asked.asking(exercise, "The lens is ${distance.standoff} away. How far …?");
    assertThat(told.workings()).extracting(Working::key).doesNotContain("distance.standoff");
    Exercise other = Asked.asking(exercise, "${distance.standoffs} is another quantity.");
    assertThat(other.workings()).extracting(Working::key).contains("distance.standoff");
  }

  @Test
  void what_counts_no_times_is_not_worked_out() {
    // One pose: the photographs of the second are multiplied by 1 - 1.
    assertThat(Asked.number(Scenes.pot(), "job.photos").workings())
        .extracting(Working::key)
        .contains("rings.photos")
        .doesNotContain("pose.photos", "pose.rings")
        .endsWith("job.photos");
  }

  @Test
  void a_slip_the_author_foresaw_is_told() {
    // The pot is 36 cm tall and 30 cm across: its half height is 18 cm.
    Exercise exercise =
        Asked.withSlips(
            Scenes.pot(), "subject.height", "subject.width", "subject.height / 2", "360deg / 0");
    Mark mark = Marker.mark(exercise, new Answer("Nora", "asked", "300 mm"));
    assertThat(mark.verdict()).isEqualTo(new Verdict.SlipMade(0));
    assertThat(mark.feedback().happened()).isEqualTo("You took subject.width.");
    assertThat(mark.credit()).isEqualTo(Credit.QUARTER);
    assertThat(Marker.verdict(exercise, "18 cm")).isEqualTo(new Verdict.SlipMade(1));
    assertThat(Marker.verdict(exercise, "36 cm")).isEqualTo(new Verdict.Right());
    assertThat(Marker.verdict(exercise, "24 cm").label()).isEqualTo("wrong");
  }

  @Test
  void a_slip_that_leads_to_the_right_answer_is_passed_over() {
    Exercise exercise = Asked.withSlips(Scenes.pot(), "subject.height", "subject.height * 1");
    assertThat(Marker.verdict(exercise, "36 cm")).isEqualTo(new Verdict.Right());
  }

  @Test
  void a_slip_in_a_count_is_exact() {
    // 360° / 12° = 30; a learner who adds one for the last photograph gets 31.
    Exercise exercise = Asked.withSlips(Scenes.pot(), "ring.photos", "ring.photos + 1");
    assertThat(Marker.verdict(exercise, "31")).isEqualTo(new Verdict.SlipMade(0));
    assertThat(Marker.verdict(exercise, "32").label()).isEqualTo("wrong");
    assertThat(Marker.verdict(exercise, "29")).isEqualTo(new Verdict.OneOff(false));
  }

  @Test
  void control_characters_of_an_answer_never_reach_the_terminal() {
    Mark mark =
        Marker.mark(
            Asked.number(Scenes.pot(), "subject.height"),
            new Answer("Nora", "asked", "\u001b[31mred\u0007" + "x".repeat(500)));
    assertThat(mark.feedback().happened())
        .startsWith("This cannot be read: '\ufffd[31mred\ufffdxxx")
        .hasSizeLessThan(200);
  }

  @Test
  void an_exercise_that_cannot_be_answered_is_refused() {
    assertThatThrownBy(() -> Asked.choice(Scenes.pot(), "+one", "+two"))
        .hasMessage("exactly one option must be right");
    assertThatThrownBy(() -> Asked.number(Scenes.pot(), "subject.height", OptionalDouble.of(0.5)))
        .hasMessage("tolerance out of range: 0.5");
    assertThatThrownBy(() -> Asked.number(Scenes.pot(), "ring.nothing"))
        .hasMessage("no quantity is called 'ring.nothing'");
  }

  @Test
  void an_answer_to_another_exercise_is_a_mistake_of_the_program() {
    Answer answer = new Answer("Nora", "other", "36 cm");
    Exercise exercise = Asked.number(Scenes.pot(), "subject.height");
    assertThatThrownBy(() -> Marker.mark(exercise, answer))
        .hasMessage("an answer to 'other' does not answer 'asked'");
  }
}
