package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compared with BigDecimal; the shortest text is searched for digit by digit. */
final class NumbersTest {

  private static BigDecimal shortest(double value) {
    BigDecimal exact = new BigDecimal(value);
    for (int digits = 1; digits < 17; digits++) {
      BigDecimal tried = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
      if (tried.doubleValue() == value) {
        return tried;
      }
    }
    return exact.round(new MathContext(17, RoundingMode.HALF_UP));
  }

  private static double seeded(SplittableRandom random) {
    double size = Math.pow(10, random.nextDouble(-9, 15)) * (random.nextBoolean() ? 1 : -1);
    return switch (random.nextInt(3)) {
      case 0 -> size;
      case 1 -> Math.rint(size * 1000) / 1000 + 0.0005;
      default -> Math.rint(size * 8) / 8;
    };
  }

  @Test
  void fixed_rounds_the_shortest_text_half_away_from_zero() {
    for (long seed = 1; seed <= 4; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < 10_000; i++) {
        double value = seeded(random);
        int decimals = random.nextInt(9);
        BigDecimal expected = shortest(value).setScale(decimals, RoundingMode.HALF_UP);
        String text =
            expected.signum() == 0 ? expected.abs().toPlainString() : expected.toPlainString();
        assertThat(Numbers.fixed(value, decimals))
            .as("%s with %d, seed %d", value, decimals, seed)
            .isEqualTo(text);
      }
    }
  }

  @Test
  void significant_rounds_the_shortest_text() {
    for (long seed = 1; seed <= 4; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < 5_000; i++) {
        double value = seeded(random);
        int digits = 1 + random.nextInt(17);
        BigDecimal expected = shortest(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        String text = expected.signum() == 0 ? "0" : expected.stripTrailingZeros().toPlainString();
        assertThat(Numbers.significant(value, digits))
            .as("%s to %d, seed %d", value, digits, seed)
            .isEqualTo(text);
        assertThat(Decimal.parse(Numbers.shortest(value)))
            .as("seed %d", seed)
            .hasValue(value + 0.0);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.125, 2, 0.13",
    "4.35, 1, 4.4",
    "1.005, 2, 1.01",
    "-0.125, 2, -0.13",
    "2.5, 0, 3",
    "-0.4, 0, 0",
    "0, 3, 0.000",
    "2.5, 2, 2.50",
    "999.9996, 3, 1000.000",
    "1e15, 2, 1000000000000000.00",
    "123456789012345.67, 1, 123456789012345.7",
    "1e21, 0, 1000000000000000000000",
    "1e-7, 9, 0.000000100",
    "0.05, 1, 0.1",
    "0.5, 0, 1",
    "0.04, 1, 0.0",
  })
  void prints_as_people_round(double value, int decimals, String text) {
    assertThat(Numbers.fixed(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "123456, 3, 123000",
    "0.0123456, 3, 0.0123",
    "9.996, 3, 10",
    "0, 3, 0",
    "-0.0, 3, 0",
    "1e-7, 2, 0.0000001",
    "-2.50, 3, -2.5",
    "99.96, 3, 100",
  })
  void prints_significant_digits(double value, int digits, String text) {
    assertThat(Numbers.significant(value, digits)).isEqualTo(text);
  }

  @Test
  void has_words_for_what_is_no_ordinary_number() {
    assertThat(Numbers.fixed(Double.POSITIVE_INFINITY, 2)).isEqualTo("∞");
    assertThat(Numbers.significant(Double.NEGATIVE_INFINITY, 2)).isEqualTo("-∞");
    assertThat(Numbers.fixed(Double.NaN, 2)).isEqualTo("not a number");
    assertThat(Numbers.trimmed("∞")).isEqualTo("∞");
    assertThatThrownBy(() -> Numbers.fixed(1, -1))
        .hasMessage("decimals must be at least 0, got -1");
  }

  @Test
  void trims_zeros_only_behind_the_point() {
    assertThat(Numbers.trimmed("2.500")).isEqualTo("2.5");
    assertThat(Numbers.trimmed("2.000")).isEqualTo("2");
    assertThat(Numbers.trimmed("200")).isEqualTo("200");
  }

  @Test
  void groups_thousands_from_five_digits_on() {
    assertThat(Numbers.grouped("1250")).isEqualTo("1250");
    assertThat(Numbers.grouped("12500")).isEqualTo("12\u202f500");
    assertThat(Numbers.grouped("-1234567.8901")).isEqualTo("-1\u202f234\u202f567.8901");
    assertThat(Numbers.grouped("∞")).isEqualTo("∞");
  }
}
