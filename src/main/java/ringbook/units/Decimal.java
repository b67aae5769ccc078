package ringbook.units;

import java.util.OptionalDouble;

/** Reads plain decimal numbers the same way on every platform. */
public final class Decimal {

  private Decimal() {}

  /**
   * The number that {@code text} writes with digits, at most one point and a leading sign; empty
   * where it is not such a number.
   */
  public static OptionalDouble parse(String text) {
    try {
      return OptionalDouble.of(Double.parseDouble(text));
    } catch (NumberFormatException notANumber) {
      return OptionalDouble.empty();
    }
  }
}
