package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;

/** How far an answer may be off; bounds that no course comes near are tried here. */
final class ToleranceTest {

  private static Tolerance around(double truth, double slack) {
    return new Tolerance(truth, Spread.of(truth), slack, 2 * slack, 2);
  }

  /** Binary fractions add less than a billionth; a printed digit adds far more. */
  @ParameterizedTest(name = "{0} or {1} off: {2} is {3}")
  @CsvSource({
    "10, 0.5, 10.5, true",
    "10, 0.5, 9.5, true",
    "10, 0.5, 10.500000005, true",
    "10, 0.5, 9.499999995, true",
    "10, 0.5, 10.50000002, false",
    "10, 0.5, 9.49999998, false",
    "1, 3, 4.000000003, true",
    "1, 3, 4.000000005, false",
    "-10, 0.5, -10.5, true",
    "-10, 0.5, -10.6, false",
    "0, 0, 0, true",
    "0, 0, 1e-300, false",
  })
  void takes_what_is_no_farther_off_than_allowed(
      double truth, double slack, double answer, boolean taken) {
    assertThat(around(truth, slack).takes(answer)).isEqualTo(taken);
  }

  /** A quarter of the value at most, and what rounding may add to it. */
  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({"12.4, false", "13.4, false", "13.6, true", "6.6, false", "6.4, true"})
  void is_beyond_what_any_rounding_makes_right(double answer, boolean beyond) {
    assertThat(around(10, 0.5).isBeyond(answer, 1)).isEqualTo(beyond);
  }

  /** A stated tolerance of a tenth: near is a fifth. The pot is 36 cm tall. */
  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    "39.6 cm, right",
    "32.4 cm, right",
    "39.7 cm, rounded too early",
    "43.1 cm, rounded too early",
    "28.9 cm, rounded too early",
    "43.3 cm, wrong",
    "28.7 cm, wrong",
  })
  void near_is_twice_the_tolerance_stated(String answer, String label) {
    Exercise exercise = Asked.number(Scenes.pot(), "subject.height", OptionalDouble.of(0.1));
    assertThat(Marker.verdict(exercise, answer).label()).isEqualTo(label);
  }

  @Test
  void all_of_a_spread_is_as_good_as_true() {
    Tolerance spread = new Tolerance(10, new Spread(9, 11.4), 0.5, 1, 2);
    assertThat(spread.takes(8.5)).isTrue();
    assertThat(spread.takes(8.4)).isFalse();
    assertThat(spread.takes(10.2)).isTrue();
    assertThat(spread.takes(11.9)).isTrue();
    assertThat(spread.takes(12)).isFalse();
    assertThat(spread.counts(8)).isFalse();
    assertThat(spread.counts(9)).isTrue();
    assertThat(spread.counts(11)).isTrue();
    assertThat(spread.counts(12)).isFalse();
  }
}
