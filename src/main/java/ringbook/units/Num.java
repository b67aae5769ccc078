package ringbook.units;

/**
 * Elementary functions that give the same bits on every platform.
 *
 * <p>They are made of {@code + - * /}, square root, floor and bit moves only, so a JVM and a
 * browser agree to the last bit. Errors stay below 1 unit in the last place (2 for {@link #pow}).
 * NaN in gives NaN out; what else gives NaN is said at each function.
 */
public final class Num {

  // 180/pi and pi/180, each with what follows its last bit.
  private static final double RADIANS_PER_DEGREE = 0.017453292519943295;
  private static final double RADIANS_PER_DEGREE_REST = 2.9486522708701687e-19;
  private static final double DEGREES_PER_RADIAN = 57.29577951308232;
  private static final double DEGREES_PER_RADIAN_REST = -1.9878495670576283e-15;
  private static final double HUGE = 0x1p500;
  private static final double TINY = 0x1p-500;

  private Num() {}

  /** Sine. Beyond 10^6 rad on either side an {@link IllegalArgumentException}. */
  public static double sin(double radians) {
    return Circular.sin(radians);
  }

  /** Cosine. Beyond 10^6 rad on either side an {@link IllegalArgumentException}. */
  public static double cos(double radians) {
    return Circular.cos(radians);
  }

  /** Tangent. Beyond 10^6 rad on either side an {@link IllegalArgumentException}. */
  public static double tan(double radians) {
    return Circular.tan(radians);
  }

  /** Arc sine, from -pi/2 to pi/2; NaN where {@code x} is beyond -1 or 1. */
  public static double asin(double x) {
    return Arc.asin(x);
  }

  /** Arc cosine, from 0 to pi; NaN where {@code x} is beyond -1 or 1. */
  public static double acos(double x) {
    return Arc.acos(x);
  }

  /** Arc tangent, from -pi/2 to pi/2, both reached at the infinities. */
  public static double atan(double x) {
    return Arc.atan(x);
  }

  /**
   * The angle of the point (x, y) seen from the origin, from -pi to pi; 0 for the origin itself.
   */
  public static double atan2(double y, double x) {
    return Arc.atan2(y, x);
  }

  /** e to the power {@code x}; infinity above 709.78, 0 below -745.13. */
  public static double exp(double x) {
    return Power.exp(x);
  }

  /** Natural logarithm; minus infinity at 0, NaN below. */
  public static double log(double x) {
    return Power.log(x);
  }

  /** Logarithm to base 2, exact for powers of two; minus infinity at 0, NaN below. */
  public static double log2(double x) {
    return Power.log2(x);
  }

  /**
   * {@code base} to the power {@code exponent}; a whole power of a small whole number is exact. A
   * negative base has whole powers only, others give NaN; 1 to an infinite power gives NaN.
   */
  public static double pow(double base, double exponent) {
    return Power.pow(base, exponent);
  }

  /** Cube root, of negative numbers too. */
  public static double cbrt(double x) {
    double size = Math.abs(x);
    if (!(size > 0 && size < Double.POSITIVE_INFINITY)) {
      return x;
    }
    double normal = size < Double.MIN_NORMAL ? size * 0x1p54 : size;
    int exponent = (Exact.high(normal) >> 20) - 1023;
    int third = (exponent + 1200) / 3 - 400;
    double m = normal * Exact.powerOfTwo(-third) * Exact.powerOfTwo(-third);
    m = m * Exact.powerOfTwo(-third); // now from 1 to 8
    double t = m * 0.14 + 0.9;
    for (int i = 0; i < 3; i++) {
      double cube = t * t * t;
      t = (m * 2 + cube) * t / (cube * 2 + m);
    }
    double square = t * t;
    double cube = square * t;
    double excess = Exact.excess(t, t, square) * t + Exact.excess(square, t, cube);
    double root = t - ((cube - m) - excess) / (square * 3);
    root = Exact.scaled(root, size < Double.MIN_NORMAL ? third - 18 : third);
    return x < 0 ? -root : root;
  }

  /** The longest side of a right triangle, without overflow on the way. */
  public static double hypot(double x, double y) {
    double a = Math.max(Math.abs(x), Math.abs(y));
    double b = Math.min(Math.abs(x), Math.abs(y));
    if (Math.abs(x) == Double.POSITIVE_INFINITY || Math.abs(y) == Double.POSITIVE_INFINITY) {
      return Double.POSITIVE_INFINITY;
    }
    if (Double.isNaN(a) || b == 0 || a > b * 0x1p60) {
      return a;
    }
    if (a > HUGE) {
      return longSide(a * 0x1p-600, b * 0x1p-600) * 0x1p600;
    }
    return b < TINY ? longSide(a * 0x1p600, b * 0x1p600) * 0x1p-600 : longSide(a, b);
  }

  private static double longSide(double a, double b) {
    double aa = a * a;
    double bb = b * b;
    double sum = aa + bb;
    double lost = (bb - (sum - aa)) - Exact.excess(a, a, aa);
    lost = lost - Exact.excess(b, b, bb);
    double side = Math.sqrt(sum);
    double square = side * side;
    double over = (square - sum) - (Exact.excess(side, side, square) + lost);
    return side - over / (side * 2);
  }

  /** Nearest whole number, halves away from zero. */
  public static double round(double x) {
    double whole = Math.floor(Math.abs(x));
    double nearest = Math.abs(x) - whole >= 0.5 ? whole + 1 : whole;
    return x < 0 ? -nearest : nearest;
  }

  /** Nearest whole number, halves to the even one. */
  public static double rint(double x) {
    double whole = Math.floor(Math.abs(x));
    double over = Math.abs(x) - whole;
    boolean odd = Math.floor(whole / 2) != whole / 2;
    double nearest = over > 0.5 || (over == 0.5 && odd) ? whole + 1 : whole;
    return x < 0 ? -nearest : nearest;
  }

  /** Degrees as radians. */
  public static double radians(double degrees) {
    return product(degrees, RADIANS_PER_DEGREE, RADIANS_PER_DEGREE_REST);
  }

  /** Radians as degrees. */
  public static double degrees(double radians) {
    return product(radians, DEGREES_PER_RADIAN, DEGREES_PER_RADIAN_REST);
  }

  private static double product(double x, double factor, double factorRest) {
    double size = Math.abs(x);
    double product = x * factor;
    if (!(size > TINY && size < HUGE)) {
      return product;
    }
    return (x * factorRest - Exact.excess(x, factor, product)) + product;
  }
}
