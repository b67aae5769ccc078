package ringbook.optics;

import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Span;
import ringbook.units.Whole;

/**
 * The marks of a shutter dial: third stops, {@code t = 2^(−j/3)} s, and the rounded names engraved
 * for them. Source: powers of two; the names are common practice.
 */
public final class ShutterMarks {

  /** 30 s. */
  private static final int LONGEST = -15;

  /** From here on names are one over a number: 1/4 s. */
  private static final int FRACTIONS = 6;

  private static final double[] NAMES = {
    30, 25, 20, 15, 13, 10, 8, 6, 5, 4, 3.2, 2.5, 2, 1.6, 1.3, 1, 0.8, 0.6, 0.5, 0.4, 0.3, 4, 5, 6,
    8, 10, 13, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800,
    1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400, 8000
  };

  private ShutterMarks() {}

  /** The exact time so many thirds of a stop shorter than a second. */
  public static Span third(int steps) {
    return new Span(Num.pow(2, -steps / 3.0));
  }

  /** The exact time behind a mark's name: 1/128 s behind 1/125 s. */
  public static Span exact(Span named) {
    return third(nearest(named));
  }

  /** The longest mark that is not longer than {@code time}, exactly. */
  public static Span notLonger(Span time) {
    return new Span(Num.pow(2, Whole.down(3 * Num.log2(time.seconds())) / 3));
  }

  /** Whether {@code time} is the exact value of a mark from 30 s to 1/8000 s. */
  public static boolean isMark(Span time) {
    int steps = nearest(time);
    return steps >= LONGEST
        && steps < LONGEST + NAMES.length
        && Math.abs(third(steps).seconds() / time.seconds() - 1) < 1e-9;
  }

  /** The time engraved for a mark, in seconds: 0.008 for 2⁻⁷. */
  public static double nominalSeconds(Span mark) {
    int steps = nearest(mark);
    double name = NAMES[steps - LONGEST];
    return steps < FRACTIONS ? name : 1 / name;
  }

  /** The name engraved for a mark, without the unit: {@code 1/125}. */
  public static String name(Span mark) {
    int steps = nearest(mark);
    String number = Numbers.significant(NAMES[steps - LONGEST], 4);
    return steps < FRACTIONS ? number : "1/" + number;
  }

  private static int nearest(Span time) {
    return (int) Num.round(-3 * Num.log2(time.seconds()));
  }
}
