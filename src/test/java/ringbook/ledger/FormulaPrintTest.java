package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;

/** How formulas, workings and numbers read; the texts are written by hand. */
final class FormulaPrintTest {

  private static String letter(String key) {
    return key.substring(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "a.x >= 2; x ≥ 2",
        "a.x <= 2; x ≤ 2",
        "a.x > 2; x > 2",
        "sqrt(a.x); √(x)",
        "pi * a.x; π · x",
        "-a.x; −x",
        "a.x ^ a.y; x^y",
        "a.x + 5mm; x + 5\u00a0mm",
        "if(a.x < a.y, max(a.x, 7), inf); (max(x, 7) if x < y, otherwise ∞)",
        "both(a.x < 1, a.y > 2); all of (x < 1, y > 2)"
      })
  void plain_text(String notation, String text) {
    assertThat(Formula.of(notation).text(FormulaPrintTest::letter)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "45deg - a.x; 45° − (−17°)",
        "45deg + a.x; 45° + (−17°)",
        "a.x + 45deg; −17° + 45°",
        "2 * a.x; 2 · (−17°)",
        "max(a.x, -a.x); max(−17°, −(−17°))"
      })
  void no_sign_stands_behind_another(String notation, String text) {
    assertThat(Formula.of(notation).text(key -> "−17°")).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "a.x ^ 2 / (a.y * a.x); x squared over the whole of y times x,",
        "a.x ^ 3; x to the power 3",
        "a.x - 1 + a.y; x minus 1 plus y",
        "ceil(360deg / a.x); 360° over x, rounded up",
        "a.x <= a.y; x is at most y",
        "min(a.x, pi); the smaller of x and pi"
      })
  void read_out(String notation, String speech) {
    assertThat(Formula.of(notation).speech(FormulaPrintTest::letter)).isEqualTo(speech);
  }

  @Test
  void finds_its_inputs_wherever_they_stand() {
    assertThat(Formula.of("-a.x + if(a.y <= b.z, max(c.w, 1), 2)").keys())
        .containsExactly("a.x", "a.y", "b.z", "c.w");
    assertThat(Formula.of(" a.x ").notation()).isEqualTo(" a.x ");
  }

  @Test
  void blanks_do_not_matter() {
    assertThat(Formula.of("  1 +  2  ").value(key -> 0)).isEqualTo(3);
    assertThat(Formula.of("( 1 )  <  2 ").value(key -> 0)).isEqualTo(1);
    assertThat(Formula.of("max( 1 , 4 )").value(key -> 0)).isEqualTo(4);
  }

  @Test
  void tells_a_broken_number_and_an_unknown_unit() {
    assertThatThrownBy(() -> Formula.of("1.2.3")).hasMessageContaining("'1.2.3' is no number");
    assertThatThrownBy(() -> Formula.of("3kg"))
        .hasMessageContaining("no unit is written 'kg' here");
    assertThatThrownBy(() -> Formula.of("max(1)"))
        .hasMessageContaining("does not take 1 arguments");
  }

  @Test
  void a_working_says_formula_numbers_and_result_in_words_too() {
    Working working = Working.of(Reckoning.of(Scenes.pot()), "ring.photos");
    assertThat(working.formula().orElseThrow().text()).isEqualTo("n = ⌈360° / α⌉");
    assertThat(working.formula().orElseThrow().speech())
        .isEqualTo(
            "photographs in the ring equals 360° over turn from photograph to photograph, rounded"
                + " up");
    assertThat(working.numbers().orElseThrow().text()).isEqualTo("n = ⌈360° / 12°⌉");
    assertThat(working.numbers().orElseThrow().speech())
        .isEqualTo("photographs in the ring equals 360° over 12°, rounded up");
    assertThat(working.result().text()).isEqualTo("n = 30");
    assertThat(working.result().speech()).isEqualTo("photographs in the ring is 30");
    assertThat(working.inputs())
        .containsExactly(
            new Working.Input("aim.step", "α", "turn from photograph to photograph", "12°"));
  }

  @Test
  void a_refused_working_gives_the_reason_and_no_numbers() {
    Working working = Working.of(Reckoning.of(Scenes.pot()), "hole.wallSeen");
    assertThat(working.numbers()).isEmpty();
    assertThat(working.result().text()).isEqualTo("nothing is said about the diameter of the hole");
  }

  @Test
  void numbers_stand_with_their_units() {
    Reckoning pot = Reckoning.of(Scenes.pot());
    assertThat(pot.text("sharp.fNumber")).isEqualTo("f/1.8");
    assertThat(pot.text("aim.step")).isEqualTo("12°");
    assertThat(pot.text("ring.photos")).isEqualTo("30");
    assertThat(pot.text("subject.height")).isEqualTo("36\u00a0cm");
    assertThat(pot.text("ring.reachable")).isEqualTo("yes");
  }

  @Test
  void rounding_shows_what_its_slack_allows() {
    assertThat(Rounding.decimals(1).text(2.25)).isEqualTo("2.3");
    assertThat(Rounding.significant(3).text(1234)).isEqualTo("1234");
    assertThat(Rounding.significant(3).text(Double.POSITIVE_INFINITY)).isEqualTo("∞");
    assertThat(Rounding.significant(3).text(Double.NEGATIVE_INFINITY)).isEqualTo("−∞");
    assertThat(Rounding.decimals(2).slack(5)).isCloseTo(0.005, within(1e-12));
    assertThat(Rounding.significant(3).slack(41.23)).isCloseTo(0.05, within(1e-12));
    assertThat(Rounding.significant(3).slack(0.01234)).isCloseTo(0.00005, within(1e-12));
    assertThat(Rounding.significant(3).slack(1234)).isCloseTo(0.5, within(1e-12));
  }
}
