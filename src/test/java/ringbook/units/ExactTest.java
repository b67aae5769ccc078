package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The steps without error, compared with the exact arithmetic of the Java platform. */
final class ExactTest {

  /** The rounding of a product of two doubles is a double itself (Dekker 1971; from memory). */
  @Test
  void what_rounding_adds_to_a_product_is_found_exactly() {
    SplittableRandom random = new SplittableRandom(3);
    int rounded = 0;
    for (int i = 0; i < 5000; i++) {
      double a = Math.scalb(random.nextDouble(-2, 2), random.nextInt(-60, 60));
      double b = Math.scalb(random.nextDouble(-2, 2), random.nextInt(-60, 60));
      double product = a * b;
      BigDecimal excess =
          new BigDecimal(product).subtract(new BigDecimal(a).multiply(new BigDecimal(b)));
      assertThat(Exact.excess(a, b, product))
          .as("%s times %s", a, b)
          .isEqualTo(excess.doubleValue());
      rounded += excess.signum() == 0 ? 0 : 1;
    }
    assertThat(rounded).isGreaterThan(4000);
  }

  @Test
  void powers_of_two_scale_without_rounding() {
    for (int exponent = -1022; exponent <= 1023; exponent++) {
      assertThat(Exact.powerOfTwo(exponent)).isEqualTo(Math.scalb(1.0, exponent));
    }
    for (int exponent = -1000; exponent <= 1000; exponent++) {
      assertThat(Exact.scaled(1.7, exponent)).isEqualTo(Math.scalb(1.7, exponent));
    }
  }

  @Test
  void takes_doubles_apart() {
    double x = -Math.PI;
    assertThat(Exact.high(x)).isEqualTo((int) (Double.doubleToRawLongBits(x) >> 32));
    assertThat(Exact.size(x)).isEqualTo(Exact.high(Math.PI));
    assertThat(Exact.head(x)).isEqualTo(Exact.ofHigh(Exact.high(x))).isNotEqualTo(x);
    assertThat(Exact.withHigh(Exact.high(x), x)).isEqualTo(x);
    assertThat(Exact.withHigh(Exact.high(1), x) - 1).isBetween(0.0, 0x1p-20);
  }
}
