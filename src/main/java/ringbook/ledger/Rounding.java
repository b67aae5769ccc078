package ringbook.ledger;

import ringbook.optics.FStops;
import ringbook.optics.ShutterMarks;
import ringbook.units.FNumber;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Span;

/**
 * How a number is rounded when a person reads it. Further sums always use the unrounded number.
 *
 * @param kind what {@code digits} counts
 * @param digits how many
 */
public record Rounding(Kind kind, int digits) {

  /** What the digits count. */
  public enum Kind {
    /** Digits after the point. */
    DECIMALS,
    /** Significant digits. */
    SIGNIFICANT,
    /** Significant digits, except that the marks of an aperture dial go by their engraved names. */
    MARK,
    /**
     * Times: the marks of a shutter dial by their engraved names, others below 0.3 as one over a
     * number with so many significant digits.
     */
    FRACTION
  }

  /** So many digits after the point. */
  public static Rounding decimals(int digits) {
    return new Rounding(Kind.DECIMALS, digits);
  }

  /** So many significant digits; whole numbers keep all digits before the point. */
  public static Rounding significant(int digits) {
    return new Rounding(Kind.SIGNIFICANT, digits);
  }

  /** The engraved name of an aperture mark ({@code 5.6} for 5.657); other f-numbers with digits. */
  public static Rounding mark(int digits) {
    return new Rounding(Kind.MARK, digits);
  }

  /** Times as on a camera: {@code 1/125}, {@code 0.5}. */
  public static Rounding fraction(int digits) {
    return new Rounding(Kind.FRACTION, digits);
  }

  /** Whether it only leaves digits out: no marks of a dial, which stand for other numbers. */
  boolean isPlain() {
    return kind == Kind.DECIMALS || kind == Kind.SIGNIFICANT;
  }

  /** The same with so many digits more. */
  Rounding finer(int more) {
    return new Rounding(kind, digits + more);
  }

  /** The text of {@code number}. */
  public String text(double number) {
    if (Math.abs(number) == Double.POSITIVE_INFINITY) {
      return number > 0 ? "∞" : "−∞";
    }
    if (isMark(number)) {
      return Numbers.significant(FStops.name(new FNumber(number)), 3);
    }
    if (isTimeMark(number)) {
      return ShutterMarks.name(new Span(number));
    }
    if (isFraction(number)) {
      return "1/" + significant(digits).text(1 / number);
    }
    if (kind != Kind.DECIMALS && Math.abs(number) >= Num.pow(10, digits)) {
      return Numbers.fixed(number, 0);
    }
    return kind == Kind.DECIMALS
        ? Numbers.fixed(number, digits)
        : Numbers.significant(number, digits);
  }

  /**
   * Half the last digit that {@link #text} shows of {@code number}: how far the text may be from
   * the number.
   */
  public double slack(double number) {
    if (isMark(number)) {
      return Math.abs(FStops.name(new FNumber(number)) - number) + 0.05;
    }
    if (isTimeMark(number)) {
      double nominal = ShutterMarks.nominalSeconds(new Span(number));
      return Math.abs(nominal - number) + 0.005 * number;
    }
    if (isFraction(number)) {
      return number * number * significant(digits).slack(1 / number);
    }
    if (kind == Kind.DECIMALS || number == 0) {
      return 0.5 * Num.pow(10, -digits);
    }
    double magnitude = Math.floor(Num.log(Math.abs(number)) / Num.log(10));
    return 0.5 * Num.pow(10, Math.min(0, magnitude - digits + 1));
  }

  private boolean isTimeMark(double number) {
    return kind == Kind.FRACTION && number > 0 && ShutterMarks.isMark(new Span(number));
  }

  private boolean isFraction(double number) {
    return kind == Kind.FRACTION && number > 0 && number < 0.3;
  }

  private boolean isMark(double number) {
    return kind == Kind.MARK && number > 0 && FStops.isMark(new FNumber(number));
  }
}
