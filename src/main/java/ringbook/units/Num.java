package ringbook.units;

/** Elementary functions that give the same bits on every platform. */
public final class Num {

  private Num() {}

  public static double sin(double radians) {
    return Math.sin(radians);
  }

  public static double cos(double radians) {
    return Math.cos(radians);
  }

  public static double tan(double radians) {
    return Math.tan(radians);
  }

  public static double asin(double x) {
    return Math.asin(x);
  }

  public static double acos(double x) {
    return Math.acos(x);
  }

  public static double atan(double x) {
    return Math.atan(x);
  }

  public static double atan2(double y, double x) {
    return Math.atan2(y, x);
  }

  public static double exp(double x) {
    return Math.exp(x);
  }

  public static double log(double x) {
    return Math.log(x);
  }

  public static double log2(double x) {
    return Math.log(x) / Math.log(2);
  }

  public static double pow(double base, double exponent) {
    return Math.pow(base, exponent);
  }

  public static double hypot(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  /** Nearest whole number, halves away from zero. */
  public static double round(double x) {
    return x < 0 ? -Math.floor(-x + 0.5) : Math.floor(x + 0.5);
  }
}
