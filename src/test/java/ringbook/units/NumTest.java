package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.dfp.Dfp;
import org.apache.commons.math3.dfp.DfpField;
import org.apache.commons.math3.dfp.DfpMath;
import org.junit.jupiter.api.Test;

/**
 * Compared with StrictMath, which the Java platform binds to the results of fdlibm, and with
 * 40-digit arithmetic of commons-math3 where StrictMath has no such function.
 */
final class NumTest {

  private static final int TRIALS = 20_000;

  private static void compare(
      String name, double ulps, DoubleUnaryOperator arguments, DoubleUnaryOperator[] pair) {
    for (long seed = 1; seed <= 5; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < TRIALS; i++) {
        double x = arguments.applyAsDouble(random.nextDouble());
        assertClose(
            name + " of " + x + ", seed " + seed,
            ulps,
            pair[0].applyAsDouble(x),
            pair[1].applyAsDouble(x));
      }
    }
  }

  private static void assertClose(String what, double ulps, double ours, double theirs) {
    if (Double.compare(ours, theirs) != 0
        && !(Math.abs(ours - theirs) <= ulps * Math.ulp(theirs))) {
      assertThat(ours).as(what).isEqualTo(theirs);
    }
  }

  private static DoubleUnaryOperator[] pair(DoubleUnaryOperator ours, DoubleUnaryOperator theirs) {
    return new DoubleUnaryOperator[] {ours, theirs};
  }

  private static DoubleUnaryOperator evenly(double low, double high) {
    return u -> low + u * (high - low);
  }

  /** Both signs, evenly in the logarithm. */
  private static DoubleUnaryOperator sizes(double lowPower, double highPower) {
    return u ->
        (u < 0.5 ? -1 : 1) * Math.pow(10, lowPower + Math.abs(2 * u - 1) * (highPower - lowPower));
  }

  @Test
  void circular_functions_agree_with_strict_math() {
    for (DoubleUnaryOperator range :
        new DoubleUnaryOperator[] {evenly(-7, 7), evenly(-1e6, 1e6), sizes(-300, 6)}) {
      compare("sin", 1, range, pair(Num::sin, StrictMath::sin));
      compare("cos", 1, range, pair(Num::cos, StrictMath::cos));
      compare("tan", 1, range, pair(Num::tan, StrictMath::tan));
    }
  }

  @Test
  void circular_functions_hold_next_to_right_angles() {
    for (int n = -636_000; n <= 636_000; n += 997) {
      double x = n * (Math.PI / 2);
      for (double near : new double[] {Math.nextDown(x), x, Math.nextUp(x)}) {
        assertClose("sin of " + near, 1, Num.sin(near), StrictMath.sin(near));
        assertClose("cos of " + near, 1, Num.cos(near), StrictMath.cos(near));
        assertClose("tan of " + near, 1, Num.tan(near), StrictMath.tan(near));
      }
    }
  }

  @Test
  void refuses_angles_too_large_to_reduce() {
    assertThatThrownBy(() -> Num.sin(1.1e6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an angle must lie within 1000000 rad of zero, got 1100000");
    assertThatThrownBy(() -> Num.cos(Double.NEGATIVE_INFINITY)).hasMessageEndingWith("got -∞");
    assertThatThrownBy(() -> Num.tan(Double.POSITIVE_INFINITY)).hasMessageEndingWith("got ∞");
    assertThat(Num.sin(Double.NaN)).isNaN();
    assertThat(Num.tan(Double.NaN)).isNaN();
  }

  @Test
  void inverse_circular_functions_agree_with_strict_math() {
    for (DoubleUnaryOperator range :
        new DoubleUnaryOperator[] {evenly(-1, 1), sizes(-300, 0), u -> 1 - u * u * 1e-9}) {
      compare("asin", 1, range, pair(Num::asin, StrictMath::asin));
      compare("acos", 1, range, pair(Num::acos, StrictMath::acos));
    }
    compare("atan", 1, evenly(-4, 4), pair(Num::atan, StrictMath::atan));
    compare("atan", 1, sizes(-300, 300), pair(Num::atan, StrictMath::atan));
    for (double x : SPECIAL) {
      assertClose("asin of " + x, 1, Num.asin(x), StrictMath.asin(x));
      assertClose("acos of " + x, 1, Num.acos(x), StrictMath.acos(x));
      assertClose("atan of " + x, 1, Num.atan(x), StrictMath.atan(x));
    }
  }

  private static final double[] SPECIAL = {
    0,
    -0.0,
    1,
    -1,
    0.5,
    -0.5,
    2,
    -2,
    3,
    -3,
    1024,
    0.1,
    1e-310,
    -1e-310,
    4.9e-324,
    1e300,
    -1e300,
    Double.MAX_VALUE,
    Double.MIN_NORMAL,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.NaN,
  };

  private static void compareTwo(
      String name, double ulps, DoubleUnaryOperator[] ranges, DoubleBinaryOperator[] pair) {
    for (long seed = 1; seed <= 5; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < TRIALS; i++) {
        double a = ranges[0].applyAsDouble(random.nextDouble());
        double b = ranges[1].applyAsDouble(random.nextDouble());
        assertClose(
            name + " of " + a + " and " + b + ", seed " + seed,
            ulps,
            pair[0].applyAsDouble(a, b),
            pair[1].applyAsDouble(a, b));
      }
    }
    for (double a : SPECIAL) {
      for (double b : SPECIAL) {
        assertClose(
            name + " of " + a + " and " + b,
            ulps,
            pair[0].applyAsDouble(a, b),
            pair[1].applyAsDouble(a, b));
      }
    }
  }

  private static DoubleUnaryOperator[] both(DoubleUnaryOperator first, DoubleUnaryOperator second) {
    return new DoubleUnaryOperator[] {first, second};
  }

  @Test
  void functions_of_two_numbers_agree_with_strict_math() {
    DoubleBinaryOperator[] atan2 = {Num::atan2, StrictMath::atan2};
    compareTwo("atan2", 1, both(evenly(-3, 3), evenly(-3, 3)), atan2);
    compareTwo("atan2", 1, both(sizes(-200, 200), sizes(-200, 200)), atan2);
    DoubleBinaryOperator[] hypot = {Num::hypot, StrictMath::hypot};
    compareTwo("hypot", 1, both(evenly(-3, 3), evenly(-3, 3)), hypot);
    compareTwo("hypot", 1, both(sizes(-320, 307), sizes(-320, 307)), hypot);
    DoubleBinaryOperator[] pow = {Num::pow, StrictMath::pow};
    compareTwo("pow", 2, both(evenly(0, 20), evenly(-20, 20)), pow);
    compareTwo(
        "pow", 2, both(u -> Math.abs(sizes(-300, 300).applyAsDouble(u)), evenly(-4, 4)), pow);
    compareTwo("pow", 2, both(u -> 1 + 1e-9 * (u - 0.5), sizes(0, 12)), pow);
    compareTwo("pow", 2, both(evenly(-20, 0), u -> Math.rint(u * 40 - 20)), pow);
  }

  @Test
  void exponential_logarithm_and_cube_root_agree_with_strict_math() {
    compare("exp", 1, evenly(-746, 710), pair(Num::exp, StrictMath::exp));
    compare("exp", 1, sizes(-20, 1), pair(Num::exp, StrictMath::exp));
    compare("log", 1, evenly(0, 4), pair(Num::log, StrictMath::log));
    compare("log", 1, u -> 1 + (u - 0.5) * 1e-5, pair(Num::log, StrictMath::log));
    compare("log", 1, sizes(-320, 308), pair(Num::log, StrictMath::log));
    compare("cbrt", 1, evenly(-30, 30), pair(Num::cbrt, StrictMath::cbrt));
    compare("cbrt", 1, sizes(-320, 308), pair(Num::cbrt, StrictMath::cbrt));
    for (double x : SPECIAL) {
      assertClose("exp of " + x, 1, Num.exp(x), StrictMath.exp(x));
      assertClose("log of " + x, 1, Num.log(x), StrictMath.log(x));
      assertClose("cbrt of " + x, 1, Num.cbrt(x), StrictMath.cbrt(x));
    }
  }

  @Test
  void logarithm_to_base_two_is_exact_for_powers_of_two() {
    for (int k = -1074; k <= 1023; k++) {
      assertThat(Num.log2(Math.scalb(1.0, k))).isEqualTo(k);
    }
    assertThat(Num.log2(0)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(Num.log2(-1)).isNaN();
    assertThat(Num.log2(Double.POSITIVE_INFINITY)).isInfinite();
  }

  @Test
  void logarithm_to_base_two_agrees_with_forty_digits() {
    DfpField field = new DfpField(40);
    Dfp two = DfpMath.log(field.newDfp(2));
    for (long seed = 1; seed <= 3; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < 300; i++) {
        double x =
            i % 2 == 0
                ? random.nextDouble(0.5, 2)
                : Math.abs(sizes(-300, 300).applyAsDouble(random.nextDouble()));
        Dfp exact = DfpMath.log(field.newDfp(x)).divide(two);
        double error = Math.abs(exact.subtract(field.newDfp(Num.log2(x))).toDouble());
        assertThat(error / Math.ulp(exact.toDouble()))
            .as("log2 of %s, seed %d", x, seed)
            .isLessThan(1);
      }
    }
  }

  @Test
  void whole_powers_of_small_whole_numbers_are_exact() {
    for (int base = 2; base <= 20; base++) {
      double exact = 1;
      for (int exponent = 0; exact * base < 0x1p53; exponent++) {
        assertThat(Num.pow(base, exponent)).as("%d^%d", base, exponent).isEqualTo(exact);
        exact *= base;
      }
      assertThat(Num.cbrt((double) base * base * base)).isEqualTo(base);
    }
    for (int k = -1074; k <= 1023; k++) {
      assertThat(Num.pow(2, k)).isEqualTo(Math.scalb(1.0, k));
    }
  }

  @Test
  void f_number_series_is_a_chain_of_roots_of_two() {
    for (int k = -10; k <= 16; k++) {
      double exact = Math.scalb(k % 2 == 0 ? 1 : Math.sqrt(2), Math.floorDiv(k, 2));
      assertClose("2^(" + k + "/2)", 1, Num.pow(2, k / 2.0), exact);
    }
  }

  @Test
  void rounds_halves_away_from_zero_or_to_even() {
    double[][] cases = { // value, round, rint
      {0.5, 1, 0},
      {1.5, 2, 2},
      {2.5, 3, 2},
      {-0.5, -1, 0},
      {-2.5, -3, -2},
      {0.49999999999999994, 0, 0},
      {2251799813685247.5, 2251799813685248.0, 2251799813685248.0},
      {1e300, 1e300, 1e300},
      {-1.2, -1, -1},
    };
    for (double[] c : cases) {
      assertThat(Num.round(c[0]) == c[1]).as("round of %s", c[0]).isTrue();
      assertThat(Num.rint(c[0]) == c[2]).as("rint of %s", c[0]).isTrue();
    }
    compare("rint", 0, evenly(-9, 9), pair(Num::rint, Math::rint));
    assertThat(Num.round(Double.NaN)).isNaN();
    assertThat(Num.rint(Double.NEGATIVE_INFINITY)).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void a_half_turn_is_pi() {
    assertThat(Num.radians(180)).isEqualTo(Math.PI);
    assertThat(Num.degrees(Math.PI)).isEqualTo(180);
    compare("radians", 1, sizes(-290, 290), pair(Num::radians, Math::toRadians));
    compare("degrees", 1, sizes(-290, 290), pair(Num::degrees, Math::toDegrees));
  }
}
