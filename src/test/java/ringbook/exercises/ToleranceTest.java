package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.ledger.Ledger;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Dimension;
import ringbook.units.Lengths;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;

/** How far an answer may be off; bounds that no course comes near are tried here. */
final class ToleranceTest {

  private static final Ledger INCHES = Reckoning.of(Scenes.pot()).told(Lengths.IMPERIAL).ledger();

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

  /** Read back, whatever an answer key in inches prints is right, and so is its neighbour. */
  @ParameterizedTest
  @ValueSource(strings = {"distance.standoff", "hole.wallSeen", "distance.middle"})
  void what_is_printed_in_inches_is_right(String key) {
    Quantity quantity = INCHES.get(key);
    for (double si = 0.0003; si < 30; si *= 1.0007) {
      String text = quantity.answerText(si);
      assertThat(accepts(quantity, si, text)).as("%s for %s m", text, si).isTrue();
    }
  }

  /** 86.7 cm are 34.13 in and 95.3 cm are 37.52 in (an inch is 25.4 mm: ISO 31-1). */
  @ParameterizedTest(name = "{0} cm, {1}: {2}")
  @CsvSource({
    "86.7, 34.1 in, true",
    "86.7, 34.2 in, true",
    "86.7, 34.3 in, false",
    "95.3, 3 ft 1.5 in, true",
    "95.3, 3 ft 1.6 in, true",
    "95.3, 3 ft 1.3 in, false",
    "95.3, 3 ft 1 1/2 in, true",
    "95.3, 3 ft 2 in, true",
    "95.3, 3 ft 1 in, false",
    "95.3, 3 ft, false",
    "95.3, 95.2 cm, true",
    "95.3, 94.9 cm, false",
  })
  void one_step_of_the_printed_digit_is_right(double centimetres, String text, boolean right) {
    assertThat(accepts(INCHES.get("distance.standoff"), centimetres / 100, text)).isEqualTo(right);
  }

  private static boolean accepts(Quantity quantity, double si, String text) {
    MeasureReading.Read read =
        (MeasureReading.Read) MeasureReader.read(text, Dimension.LENGTH, NumberStyle.POINT);
    double perUnit = quantity.unit().fromSi(read.measure().unit().toSi(1));
    LastDigit last = LastDigit.of(text, read.measure().number());
    return Tolerance.of(quantity, si, OptionalDouble.empty())
        .accepts(
            quantity.unit().fromSi(read.measure().si()),
            new LastDigit(last.digits(), last.half() * perUnit));
  }
}
