package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Odd but honest ways of writing a measure, and near misses that must not pass for one. */
final class WrittenNumbersTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "11''|LENGTH|11|INCH",
        "5' 11''|LENGTH|71|INCH",
        "5 ft 11|LENGTH|71|INCH",
        "0' 9\"|LENGTH|9|INCH",
        "42  cm|LENGTH|42|CENTIMETRE",
        ".5 m|LENGTH|0.5|METRE",
        ",5 m|LENGTH|0.5|METRE",
        "5. m|LENGTH|5|METRE",
        "0,500 m|LENGTH|0.5|METRE",
        "1234,567 m|LENGTH|1234.567|METRE",
        "123,456.7 mm|LENGTH|123456.7|MILLIMETRE",
        "123.456,7 mm|LENGTH|123456.7|MILLIMETRE",
        "12 345 678 mm|LENGTH|12345678|MILLIMETRE",
        "123 456 mm|LENGTH|123456|MILLIMETRE",
        "16 125/1000 in|LENGTH|16.125|INCH",
        "-16 1/2 in|LENGTH|-16.5|INCH",
        "1e3 mm|LENGTH|1000|MILLIMETRE",
        "1E+3 mm|LENGTH|1000|MILLIMETRE",
        "2EV|STOPS|2|STOP",
        "2 EV|STOPS|2|STOP",
        "1|SHARE|1|PART",
        "-1|SHARE|-1|PART",
        "F / 8|F_NUMBER|8|F_STOP",
        "f/0.95|F_NUMBER|0.95|F_STOP",
        "f/9|F_NUMBER|9|F_STOP",
        "800 lumens|LUMINOUS_FLUX|800|LUMEN",
      })
  void reads_what_people_also_write(String text, Dimension dimension, double number, Unit unit) {
    assertThat(MeasureReader.read(text, dimension, NumberStyle.EITHER))
        .isEqualTo(new MeasureReading.Read(new Measure(number, unit)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "125|TIME|125 has no unit",
        "1.01|SHARE|1.01 has no unit",
        "16 1/0 in|LENGTH|'16 1/0 in' divides by zero",
        "1 2000 mm|LENGTH|'2000 mm' is not a unit known here",
        "1234 567 mm|LENGTH|'567 mm' is not a unit known here",
        "1 20 mm|LENGTH|'20 mm' is not a unit known here",
        "1,23,456 mm|LENGTH|'1,23,456 mm' has its points or commas in unusual places",
        "1,234,56 mm|LENGTH|'1,234,56 mm' has its points or commas in unusual places",
        "1,2345,678 mm|LENGTH|'1,2345,678 mm' has its points or commas in unusual places",
        "1.234.5,6 mm|LENGTH|'1.234.5,6 mm' has its points or commas in unusual places",
        "1.5,234 mm|LENGTH|'1.5,234 mm' has its points or commas in unusual places",
        "5 ft 11 cm|LENGTH|'ft 11 cm' is not a unit known here",
        "5 m 11 in|LENGTH|'m 11 in' is not a unit known here",
        "5 ft x|LENGTH|'ft x' is not a unit known here",
        "2e mm|LENGTH|'e mm' is not a unit known here",
        "2e- mm|LENGTH|'e- mm' is not a unit known here",
        "f/|F_NUMBER|'f/' does not begin with a number",
        "f|F_NUMBER|'f' does not begin with a number",
        "f/8 cm|F_NUMBER|'cm' is not a unit known here",
        "- cm|LENGTH|'- cm' does not begin with a number",
      })
  void does_not_take_for_a_measure_what_is_none(String text, Dimension dimension, String message) {
    assertThat(MeasureReader.read(text, dimension, NumberStyle.EITHER).message())
        .isEqualTo(message);
  }

  @Test
  void groups_of_three_start_after_the_sign() {
    assertThat(Numbers.grouped("123456")).isEqualTo("123\u202f456");
    assertThat(Numbers.grouped("-123456")).isEqualTo("-123\u202f456");
    assertThat(Numbers.grouped("-1250")).isEqualTo("-1250");
    assertThat(Numbers.grouped("12345.678")).isEqualTo("12\u202f345.678");
  }

  /** 360° over 15° comes out a hair above 24 in binary; 24.01 is more than a hair. */
  @Test
  void whole_numbers_forgive_a_hair_and_no_more() {
    assertThat(Whole.up(24 + 1e-10)).isEqualTo(24);
    assertThat(Whole.up(24.01)).isEqualTo(25);
    assertThat(Whole.up(1e12 + 0.25)).isEqualTo(1e12);
    assertThat(Whole.up(-0.5)).isZero();
    assertThat(Whole.down(24 - 1e-10)).isEqualTo(24);
    assertThat(Whole.down(23.99)).isEqualTo(23);
    assertThat(Whole.down(-0.5)).isEqualTo(-1);
    assertThat(Whole.atMost(60 + 1e-9, 60)).isTrue();
    assertThat(Whole.atMost(60.001, 60)).isFalse();
    assertThat(Whole.atMost(-60, -60.001)).isFalse();
    assertThat(Whole.atMost(5, Double.POSITIVE_INFINITY)).isTrue();
    assertThat(Whole.atMost(Double.POSITIVE_INFINITY, 5)).isFalse();
    assertThat(Whole.atMost(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)).isTrue();
  }

  @Test
  void a_limit_itself_is_allowed_or_not_as_the_message_says() {
    assertThat(Require.positive("width", "m", 0.1)).isEqualTo(0.1);
    assertThat(Require.notNegative("depth", "m", 0)).isZero();
    assertThat(Require.notNegative("depth", "m", 2.5)).isEqualTo(2.5);
    assertThat(Require.finite("rise", -3)).isEqualTo(-3);
    assertThat(Require.within("share", 0.2, 1, 0.2)).isEqualTo(0.2);
    assertThat(Require.within("share", 0.2, 1, 1)).isEqualTo(1);
    assertThat(Require.atLeast("count", 3, 3)).isEqualTo(3);
    refused(
        () -> Require.positive("width", "m", 0), "width must be a finite number above 0 m, got 0");
    refused(
        () -> Require.positive("width", "", Double.POSITIVE_INFINITY),
        "width must be a finite number above 0, got ∞");
    refused(
        () -> Require.notNegative("depth", "m", -0.1),
        "depth must be a finite number of at least 0 m, got -0.1");
    refused(
        () -> Require.notNegative("depth", "m", Double.POSITIVE_INFINITY),
        "depth must be a finite number of at least 0 m, got ∞");
    refused(
        () -> Require.finite("rise", Double.NEGATIVE_INFINITY),
        "rise must be a finite number, got -∞");
    refused(() -> Require.within("share", 0.2, 1, 0.1), "share must lie from 0.2 to 1, got 0.1");
    refused(() -> Require.within("share", 0.2, 1, 1.1), "share must lie from 0.2 to 1, got 1.1");
    refused(() -> Require.atLeast("count", 3, 2), "count must be at least 3, got 2");
  }

  private static void refused(Runnable call, String message) {
    assertThatIllegalArgumentException().isThrownBy(call::run).withMessage(message);
  }

  @Test
  void letters_change_their_case_from_a_to_z() {
    assertThat(Words.upper("azm-1")).isEqualTo("AZM-1");
    assertThat(Words.lower("AZM-1")).isEqualTo("azm-1");
  }
}
