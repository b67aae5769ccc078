package ringbook.units;

/** Checks for constructors, with messages that name the value, what was expected and what came. */
public final class Require {

  private Require() {}

  /** A finite number above zero. */
  public static double positive(String name, String unit, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name
              + " must be a finite number above 0"
              + space(unit)
              + ", got "
              + Numbers.shortest(value));
    }
    return value;
  }

  /** A finite number of zero or above. */
  public static double notNegative(String name, String unit, double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name
              + " must be a finite number of at least 0"
              + space(unit)
              + ", got "
              + Numbers.shortest(value));
    }
    return value;
  }

  /** A finite number. */
  public static double finite(String name, double value) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name + " must be a finite number, got " + Numbers.shortest(value));
    }
    return value;
  }

  /** A number from {@code low} to {@code high}, both allowed. */
  public static double within(String name, double low, double high, double value) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name
              + " must lie from "
              + Numbers.shortest(low)
              + " to "
              + Numbers.shortest(high)
              + ", got "
              + Numbers.shortest(value));
    }
    return value;
  }

  /** A whole number of at least {@code low}. */
  public static int atLeast(String name, int low, int value) {
    if (value < low) {
      throw new IllegalArgumentException(name + " must be at least " + low + ", got " + value);
    }
    return value;
  }

  private static String space(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
