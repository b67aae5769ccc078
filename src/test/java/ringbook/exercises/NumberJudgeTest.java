package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.shots.Scene;
import ringbook.units.Unit;

/** Ways of writing a number, and what is said of it. The demo pot is 36 cm tall. */
final class NumberJudgeTest {

  /** Everything beyond the hyperfocal distance of 0.4 m is sharp; the pot stands farther off. */
  private static final Scene ENDLESS = Scenes.with(Scenes.pot(), "aim.blurLimit", "20");

  /** Rounded to the denominator: 36 cm are 14.17 in, so 14 1/4 and 14 1/8 but not 14 1/2. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "14 1/4 in, right",
    "14 1/8 in, right",
    "57/4 in, right",
    "14 1/2 in, rounded too early",
    "14 3/4 in, rounded too early",
    "14 in, right",
    "1 ft 2 in, right",
    "1' 2\", right",
    "1'2\", right",
    "1 ft 3 in, wrong",
    "1 ft 2.1 in, rounded too early",
    "1 ft 2.17 in, right",
    "1 ft 2 1/4 in, right",
    "1 ft 2 1/2 in, rounded too early",
    "1 ft, wrong",
    "14 in about 36 cm, not readable",
  })
  void a_fraction_is_as_exact_as_its_denominator_and_feet_and_inches_as_their_inches(
      String answer, String label) {
    assertThat(judge(Scenes.pot(), "subject.height", answer).label()).isEqualTo(label);
  }

  /** 36 for 36.4 will do, 4 will not; powers of ten tell nothing about rounding. */
  @Test
  void a_rounded_number_needs_two_digits() {
    Scene taller = Scenes.with(Scenes.pot(), "subject.height", "36.4");
    assertThat(judge(taller, "subject.height", "36 cm")).isEqualTo(new Verdict.Right());
    assertThat(judge(taller, "subject.height", "3.6e1 cm").label()).isEqualTo("rounded too early");
    assertThat(judge(taller, "subject.height", "4 dm").label()).isEqualTo("not readable");
    assertThat(judge(taller, "subject.height", "364 000 µm")).isEqualTo(new Verdict.Right());
    assertThat(judge(taller, "subject.height", "360'000 µm").label())
        .isEqualTo("rounded too early");
  }

  @ParameterizedTest
  @ValueSource(strings = {"∞", "∞ cm", "Infinity", "infinite", "no limit.", "to infinity"})
  void endless_may_be_written_in_words(String answer) {
    assertThat(judge(ENDLESS, "sharp.farLimit", answer)).isEqualTo(new Verdict.Right());
    assertThat(judge(Scenes.pot(), "sharp.farLimit", answer))
        .isEqualTo(new Verdict.Off(OptionalDouble.empty()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"300 cm", "3 m", "-1 m", "7"})
  void no_number_is_endless(String answer) {
    assertThat(judge(ENDLESS, "sharp.farLimit", answer))
        .isEqualTo(new Verdict.Off(OptionalDouble.empty()));
  }

  /** A comma before three digits: whichever reading is right counts. */
  @Test
  void of_two_readings_the_learner_gets_the_better_one() {
    Scene tall = Scenes.with(Scenes.pot(), "subject.height", "150");
    Scene tiny = Scenes.with(Scenes.pot(), "subject.height", "0.15");
    assertThat(judge(tall, "subject.height", "1,500 mm")).isEqualTo(new Verdict.Right());
    assertThat(judge(tiny, "subject.height", "1,500 mm")).isEqualTo(new Verdict.Right());
    assertThat(judge(Scenes.pot(), "subject.height", "1,500 mm").label()).isEqualTo("not readable");
  }

  /** Nobody photographs three digits of a part: the comma parts thousands. */
  @Test
  void thousands_of_photographs_may_have_their_comma() {
    Verdict far = judge(Scenes.pot(), "ring.photos", "29,500"); // of 30
    assertThat(far).isEqualTo(new Verdict.Off(OptionalDouble.of(29500 / 30.0)));
    assertThat(judge(Scenes.pot(), "ring.photos", "29.500").label())
        .isEqualTo("not a whole number");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "30, right",
    "30 photographs, right",
    "29.5, not a whole number",
    "29 1/2, not a whole number",
    "29.5 photos, not a whole number",
    "a few, not readable",
    "12 cm, wrong kind of unit",
    "31, one too many",
    "29, one too few",
    "32, wrong",
    "-30, wrong",
  })
  void photographs_are_counted(String answer, String label) {
    assertThat(judge(Scenes.pot(), "ring.photos", answer).label()).isEqualTo(label);
  }

  @Test
  void says_how_many_times_an_answer_is_off_where_that_tells_something() {
    assertThat(judge(Scenes.pot(), "ring.photos", "60"))
        .isEqualTo(new Verdict.Off(OptionalDouble.of(2)));
    assertThat(judge(Scenes.pot(), "ring.photos", "0"))
        .isEqualTo(new Verdict.Off(OptionalDouble.empty()));
    assertThat(judge(Scenes.pot(), "ring.photos", "-60"))
        .isEqualTo(new Verdict.Off(OptionalDouble.empty()));
    assertThat(judge(Scenes.pot(), "subject.height", "72 cm"))
        .isEqualTo(new Verdict.Off(OptionalDouble.of(2)));
    // No station of the pot's ring is blocked: nothing is a multiple of none.
    assertThat(judge(Scenes.pot(), "room.stationsLost", "5"))
        .isEqualTo(new Verdict.Off(OptionalDouble.empty()));
  }

  /** 0.27 % of the glint passes: 0.27 lacks its sign, 0.0027 stands for itself. */
  @Test
  void a_share_may_lack_its_per_cent_sign() {
    assertThat(judge(Scenes.pot(), "light.glint", "0.27"))
        .isEqualTo(new Verdict.UnitMissing(Optional.of(Unit.PERCENT)));
    assertThat(judge(Scenes.pot(), "light.glint", "0.0027")).isEqualTo(new Verdict.Right());
    assertThat(judge(Scenes.pot(), "light.glint", "0.27 %")).isEqualTo(new Verdict.Right());
    assertThat(judge(Scenes.pot(), "light.glint", "0.6").label()).isEqualTo("wrong");
  }

  @Test
  void a_bare_number_is_given_the_unit_that_makes_it_right() {
    assertThat(judge(Scenes.pot(), "subject.height", "36"))
        .isEqualTo(new Verdict.UnitMissing(Optional.of(Unit.CENTIMETRE)));
    assertThat(judge(Scenes.pot(), "subject.height", "360"))
        .isEqualTo(new Verdict.UnitMissing(Optional.of(Unit.MILLIMETRE)));
    assertThat(judge(Scenes.pot(), "subject.height", "14.17"))
        .isEqualTo(new Verdict.UnitMissing(Optional.of(Unit.INCH)));
    assertThat(judge(Scenes.pot(), "subject.height", "51"))
        .isEqualTo(new Verdict.UnitMissing(Optional.empty()));
  }

  /** What is said first, word for word; the pot is 36 cm tall, the ring has 30 photographs. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "subject.height | 36 cm | Right: 36\u00a0cm.",
        "subject.height | 100 m | '100 m' is far too large.",
        "subject.height | 0.1 mm | '0.1 mm' is far too small.",
        "subject.height | 45 cm | '45 cm' is too large.",
        "subject.height | 30 cm | '30 cm' is too small.",
        "subject.height | 72 cm | '72 cm' is about 2 times the right answer.",
        "subject.height | 12 cm | '12 cm' is too small: the right answer is about 3 times as"
            + " large.",
        "subject.height | -36 cm | The size is right, but plus and minus are the wrong way round.",
        "subject.height | 360 cm | The digits are right, but '360 cm' is 10 times too large.",
        "subject.height | 36 mm | The digits are right, but '36 mm' is 10 times too small.",
        "subject.height | 36 in | The number would be right in centimetres, but you wrote inches.",
        "subject.height | 36.7 cm | '36.7 cm' is very near: the way is right, but something was"
            + " rounded too early.",
        "subject.height | 36 | The number is right, but its unit is missing: you mean centimetres.",
        "subject.height | 51 | '51' has no unit, and the number is not right in any unit.",
        "subject.height | 36° | The question asks for a length; '36°' is an angle.",
        "subject.height | '' | Nothing was handed in for this one.",
        "light.glint | 0.27 | The number is right, but its unit is missing: you mean per cent.",
        "ring.photos | 31 | Nearly: '31' is one too many.",
        "ring.photos | 29 | Nearly: '29' is one too few.",
        "ring.photos | 29.5 | Only whole things can be counted; '29.5' is not a whole number.",
        "ring.photos | 44 | '44' is too large.",
        "ring.photos | 45 | '45' is about 1.5 times the right answer.",
        "ring.photos | 21 | '21' is too small.",
        "ring.photos | 20 | '20' is too small: the right answer is about 1.5 times as large.",
        "ring.photos | 3000 | '3000' is about 100 times the right answer.",
        "ring.photos | 3001 | '3001' is far too large.",
        "ring.photos | 0 | '0' is not the answer.",
      })
  void says_kindly_what_happened(String quantity, String answer, String happened) {
    Exercise exercise = Asked.number(Scenes.pot(), quantity);
    Mark mark = Marker.mark(exercise, new Answer("Nora", "asked", answer));
    assertThat(mark.feedback().happened()).isEqualTo(happened);
  }

  @Test
  void names_the_options_there_are() {
    Exercise two = Asked.choice(Scenes.pot(), "+yes", "no");
    Exercise three = Asked.choice(Scenes.pot(), "+yes", "no", "perhaps");
    assertThat(Marker.mark(two, new Answer("Nora", "asked", "x")).feedback().happened())
        .isEqualTo("'x' is none of the options a and b.");
    assertThat(Marker.mark(three, new Answer("Nora", "asked", "x")).feedback().happened())
        .isEqualTo("'x' is none of the options a to c.");
    assertThat(Marker.mark(two, new Answer("Nora", "asked", "a")).feedback().happened())
        .isEqualTo("Right. Reason for +yes.");
  }

  private static Verdict judge(Scene scene, String quantity, String answer) {
    return Marker.verdict(Asked.number(scene, quantity), answer);
  }
}
