package ringbook.ledger;

import ringbook.units.Angle;
import ringbook.units.Lengths;
import ringbook.units.MeasurePrinter;
import ringbook.units.Numbers;
import ringbook.units.Unit;
import ringbook.units.Whole;

/**
 * Where the values of a quantity can lie, from what it is. A value outside is a fault of the
 * program, not of the scene.
 *
 * @param low lower bound in SI; minus infinity where there is none
 * @param withLow whether the bound itself is possible
 * @param high upper bound in SI; infinity where there is none
 * @param withHigh whether the bound itself is possible
 * @param whole whether only whole numbers are possible
 * @param endless whether infinity is a true answer too
 */
public record Range(
    double low, boolean withLow, double high, boolean withHigh, boolean whole, boolean endless) {

  private static final double OPEN = Double.POSITIVE_INFINITY;
  private static final int DIGITS = 3;

  /** Any number, above and below 0. */
  public static Range any() {
    return new Range(-OPEN, false, OPEN, false, false, false);
  }

  /** More than {@code low}. */
  public static Range above(double low) {
    return new Range(low, false, OPEN, false, false, false);
  }

  /** {@code low} or more. */
  public static Range from(double low) {
    return new Range(low, true, OPEN, false, false, false);
  }

  /** From {@code low} to {@code high}, both possible. */
  public static Range between(double low, double high) {
    return new Range(low, true, high, true, false, false);
  }

  /** From one angle to another, in degrees, both possible. */
  public static Range degrees(double low, double high) {
    return between(Angle.ofDegrees(low).radians(), Angle.ofDegrees(high).radians());
  }

  /** Whole numbers, {@code low} or more. */
  public static Range wholeFrom(int low) {
    return new Range(low, true, OPEN, false, true, false);
  }

  /** Whole numbers from {@code low} to {@code high}. */
  public static Range wholeBetween(int low, int high) {
    return new Range(low, true, high, true, true, false);
  }

  /** The same, but no more than {@code bound}. */
  public Range upTo(double bound) {
    return new Range(low, withLow, bound, true, whole, endless);
  }

  /** The same, but less than {@code bound}. */
  public Range below(double bound) {
    return new Range(low, withLow, bound, false, whole, endless);
  }

  /** The same, and infinity. */
  public Range orEndless() {
    return new Range(low, withLow, high, withHigh, whole, true);
  }

  /** Whether {@code si} lies within; a hair beyond a possible bound is forgiven. */
  public boolean holds(double si) {
    if (si == OPEN) {
      return endless;
    }
    boolean highEnough = withLow ? Whole.atMost(low, si) : si > low;
    boolean lowEnough = withHigh ? Whole.atMost(si, high) : si < high;
    return highEnough && lowEnough && (!whole || si == Math.floor(si));
  }

  /** In a few words, with bounds in {@code unit}: {@code above 0}, {@code 0° to 180°}. */
  public String text(Unit unit) {
    return text(unit, Lengths.METRIC);
  }

  /** The same with lengths told in these measures. */
  String text(Unit unit, Lengths lengths) {
    if (unit == Unit.ANSWER) {
      return "yes or no";
    }
    String words = (whole ? "whole, " : "") + bounds(unit, lengths);
    return endless ? words + ", or ∞" : words;
  }

  private String bounds(Unit unit, Lengths lengths) {
    if (low == -OPEN) {
      return high == OPEN
          ? "any number"
          : (withHigh ? "up to " : "below ") + bound(high, unit, lengths);
    }
    if (high == OPEN) {
      return (withLow ? "from " : "above ") + bound(low, unit, lengths);
    }
    boolean both = withLow && withHigh;
    boolean once =
        both && isSaidOnce(unit) && lengths.limit(low, unit) == lengths.limit(high, unit);
    return (both ? "" : withLow ? "from " : "above ")
        + (once ? number(low, lengths.limit(low, unit)) : bound(low, unit, lengths))
        + (withHigh ? " to " : ", below ")
        + bound(high, unit, lengths);
  }

  /** Whether the unit stands behind the second number alone: 1 to 4 stops, but 0° to 90°. */
  private static boolean isSaidOnce(Unit unit) {
    return unit != Unit.DEGREE && unit != Unit.F_STOP;
  }

  /** The bound as a person writes it; 0 needs no unit. */
  private static String bound(double si, Unit own, Lengths lengths) {
    Unit unit = lengths.limit(si, own);
    return si == 0 && unit != Unit.DEGREE
        ? number(si, unit)
        : MeasurePrinter.PAGE.beside(Numbers.significant(unit.fromSi(si), DIGITS), unit);
  }

  private static String number(double si, Unit unit) {
    return MeasurePrinter.PAGE.beside(Numbers.significant(unit.fromSi(si), DIGITS), Unit.ONE);
  }
}
