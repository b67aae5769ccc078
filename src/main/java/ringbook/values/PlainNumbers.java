package ringbook.values;

import ringbook.units.Numbers;

/** How a bare number turns into text: only if it is whole, for it knows no unit and no rounding. */
final class PlainNumbers {

  /** The largest whole number that a double holds without gaps below it. */
  private static final double LARGEST = 9e15;

  private PlainNumbers() {}

  static String text(double number) throws ExpressionFault {
    if (Double.isNaN(number) || Math.abs(number) == Double.POSITIVE_INFINITY) {
      throw ExpressionFault.of(
          "the expression comes to '" + Numbers.shortest(number) + "', which is no number", "", "");
    }
    if (Math.floor(number) == number && Math.abs(number) < LARGEST) {
      return Numbers.fixed(number, 0);
    }
    throw ExpressionFault.of(
        "the expression comes to the bare number " + Numbers.significant(number, 12),
        "use a quantity, which knows its unit and its rounding",
        "");
  }
}
