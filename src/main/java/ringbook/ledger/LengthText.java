package ringbook.ledger;

import ringbook.units.Dimension;
import ringbook.units.Inches;
import ringbook.units.Lengths;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * Lengths of the ledger in feet and inches, about as finely as the ledger rounds them in
 * centimetres: a whole centimetre is told to the quarter of an inch, a millimetre to a tenth; and
 * speeds in inches a second.
 */
final class LengthText {

  /** Below so many inches, lengths stay in millimetres. */
  private static final double SMALL = 0.25;

  private static final double QUARTER = 0.25;
  private static final double FOOT = 12;
  private static final int FINE_DIGITS = 4;
  private static final int SPEED_DIGITS = 3;

  /** Below so many inches a quarter is much: what is stated is told to the tenth. */
  private static final double SHORT = 10;

  private LengthText() {}

  /** Whether a quantity is one whose values are told in inches where people measure in them. */
  static boolean isMeant(Quantity quantity) {
    return Lengths.isTold(quantity.unit());
  }

  /** The text of a finite value; {@code up} never tells less than it is. */
  static String of(Quantity quantity, double si, boolean up) {
    double inches = Unit.INCH.fromSi(si);
    double size = Math.abs(inches);
    if (quantity.unit().dimension() == Dimension.SPEED) {
      return Numbers.significant(inches, SPEED_DIGITS) + "\u00a0" + Unit.INCH_PER_SECOND.symbol();
    }
    if (size == 0) {
      return "0\u00a0" + Unit.INCH.symbol();
    }
    double step = step(quantity, si);
    if (size < SMALL) {
      double millimetres = Unit.MILLIMETRE.fromSi(si);
      return Numbers.trimmed(Numbers.fixed(millimetres, decimals(step)))
          + "\u00a0"
          + Unit.MILLIMETRE.symbol();
    }
    return step < QUARTER
        ? Inches.inDecimals(inches, decimals(step), up)
        : Inches.inSteps(inches, step, up);
  }

  /** Half of the last digit that is printed of {@code si}, which is worked out; in SI. */
  static double slack(Quantity quantity, double si) {
    if (quantity.unit().dimension() == Dimension.SPEED) {
      return 0; // no more than in its own unit
    }
    boolean small = Math.abs(Unit.INCH.fromSi(si)) < SMALL;
    return (small ? Unit.MILLIMETRE : Unit.INCH).toSi(step(quantity, si)) / 2;
  }

  /** The step of the last digit that is printed, in inches; of what is small, in millimetres. */
  private static double step(Quantity quantity, double si) {
    double size = Math.abs(Unit.INCH.fromSi(si));
    double own = quantity.unit().toSi(ownStep(quantity, quantity.unit().fromSi(si)));
    if (size < SMALL) {
      return power(-decimals(Unit.MILLIMETRE.fromSi(own)));
    }
    boolean written = quantity.definition() instanceof Quantity.Given;
    double step = Unit.INCH.fromSi(own);
    if (step >= 1) {
      return step >= FOOT ? FOOT : 1;
    }
    if ((written && isWhole(4 * size)) || (step >= QUARTER && !(written && size < SHORT))) {
      return QUARTER;
    }
    int finer = Math.max(1, decimals(step));
    return power(size >= 100 * power(1 - finer) ? 1 - finer : -finer);
  }

  /** For questions: a learner who goes on with it must come to the right answer. */
  static String fine(Quantity quantity, double si) {
    double inches = Unit.INCH.fromSi(si);
    return quantity.unit().dimension() == Dimension.SPEED || (Math.abs(inches) < SMALL && si != 0)
        ? of(quantity, si, false)
        : Numbers.significant(inches, FINE_DIGITS) + "\u00a0" + Unit.INCH.symbol();
  }

  /** The step of the last digit that is printed in the quantity's own unit. */
  private static double ownStep(Quantity quantity, double number) {
    if (!(quantity.definition() instanceof Quantity.Given)) {
      return 2 * quantity.rounding().slack(number);
    }
    String text = quantity.rounding().text(number);
    int point = text.indexOf('.');
    return point < 0 ? 1 : power(point + 1 - text.length());
  }

  /** So many digits after the point that the last one steps by no more than {@code step}. */
  private static int decimals(double step) {
    int decimals = 0;
    while (power(-decimals) > step * (1 + 1e-9) && decimals < 9) {
      decimals++;
    }
    return decimals;
  }

  private static double power(int exponent) {
    return Num.pow(10, exponent);
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.floor(number + 0.5)) < 1e-6;
  }
}
