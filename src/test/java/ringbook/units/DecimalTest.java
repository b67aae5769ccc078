package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Compared with the platform's own correctly rounded reader. */
final class DecimalTest {

  private static void assertReads(String text) {
    assertThat(Decimal.parse(text)).as(text).hasValue(Double.parseDouble(text) + 0.0);
  }

  @Test
  void reads_seeded_texts_as_the_nearest_double() {
    for (long seed = 1; seed <= 4; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < 5000; i++) {
        StringBuilder text = new StringBuilder(random.nextInt(3) == 0 ? "-" : "");
        int length = 1 + random.nextInt(25);
        int point = random.nextInt(length + 1);
        for (int k = 0; k < length; k++) {
          text.append(k == point ? "." : "").append((char) ('0' + random.nextInt(10)));
        }
        assertReads(text.toString());
        assertReads(text + "e" + random.nextInt(-340, 280));
      }
    }
  }

  @Test
  void reads_what_lies_exactly_between_two_doubles() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 2000; i++) {
      double low = Math.scalb(random.nextDouble(1, 2), random.nextInt(-80, 80));
      BigDecimal middle =
          new BigDecimal(low).add(new BigDecimal(Math.nextUp(low))).divide(BigDecimal.valueOf(2));
      assertReads(middle.toPlainString());
      BigDecimal above = middle.add(BigDecimal.ONE.movePointLeft(middle.scale() + 1));
      assertReads(above.setScale(middle.scale() + 1, RoundingMode.UNNECESSARY).toPlainString());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "-0",
        "0.000",
        ".5",
        "5.",
        "+3",
        "1e-7",
        "1.5E+3",
        "4.9e-324",
        "2.4e-324",
        "2.5e-324",
        "2.2250738585072011e-308",
        "1.7976931348623157e308",
        "9007199254740993",
        "9007199254740992",
        "9007199254740991.5",
        "0.1",
        "123456789012345678901234567890",
        "1e-400",
        "0e999",
        "1e22",
        "1e23",
        "1e0002",
        "123456789012345e-22"
      })
  void reads_the_awkward_ones(String text) {
    assertReads(text);
  }

  @Test
  void reads_400_characters_and_no_more() {
    String longest = "0." + "3".repeat(398);
    assertReads(longest);
    assertThat(Decimal.parse(longest + "3")).isEmpty();
  }

  @Test
  void takes_the_true_minus_sign() {
    assertThat(Decimal.parse("\u22123.5")).hasValue(-3.5);
    assertThat(Decimal.parse("2e\u22123")).hasValue(0.002);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        ".",
        "+.",
        "1.2.3",
        ".5.5",
        "..5",
        "1e00002",
        "1,5",
        " 1",
        "1 ",
        "abc",
        "1e",
        "1e+",
        "e5",
        "1e1.5",
        "0x10",
        "NaN",
        "Infinity",
        "1f",
        "1d",
        "--1",
        "1e99999",
        "1e400",
        "1.8e308",
        "١"
      })
  void refuses_what_is_no_decimal_number(String text) {
    assertThat(Decimal.parse(text)).isEmpty();
  }
}
