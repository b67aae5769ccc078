package ringbook.units;

/**
 * Whole numbers from measured ones. 360° over 15° is 24, though in binary it comes out a hair
 * above: the functions here forgive a relative excess or lack of 10⁻⁹, far below anything a person
 * measures.
 */
public final class Whole {

  private static final double FORGIVEN = 1e-9;

  private Whole() {}

  /** The smallest whole number not below {@code x}. */
  public static double up(double x) {
    return isWhole(x) ? nearest(x) : Math.ceil(x);
  }

  /** Whether {@code x} is no more than {@code limit}, forgiving the same hair of excess. */
  public static boolean atMost(double x, double limit) {
    double size = Math.max(Math.abs(x), Math.abs(limit));
    return x <= limit || (size < Double.POSITIVE_INFINITY && x - limit <= FORGIVEN * size);
  }

  /** The largest whole number not above {@code x}. */
  public static double down(double x) {
    return isWhole(x) ? nearest(x) : Math.floor(x);
  }

  private static boolean isWhole(double x) {
    return Math.abs(x - nearest(x)) <= FORGIVEN * Math.max(1, Math.abs(x));
  }

  private static double nearest(double x) {
    return Math.floor(x + 0.5);
  }
}
