package ringbook.optics;

import java.util.Optional;
import ringbook.units.FNumber;
import ringbook.units.Num;

/**
 * The marks on an aperture dial: third stops, {@code N = 2^(j/6)}, and the rounded names engraved
 * for them. Source: powers of the root of two; the names are common practice.
 */
public final class FStops {

  private static final int LOWEST = -3;

  private static final double[] NAMES = {
    0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1,
    8, 9, 10, 11, 13, 14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64, 72, 80, 90, 102, 114,
    128
  };

  private FStops() {}

  /** The exact f-number so many thirds of a stop from f/1. */
  public static FNumber third(int steps) {
    return new FNumber(Num.pow(2, steps / 6.0));
  }

  /** How many thirds of a stop from f/1 the nearest mark lies, nearest in stops. */
  public static int nearest(FNumber fNumber) {
    return (int) Num.round(6 * Num.log2(fNumber.value()));
  }

  /** The name engraved for the nearest mark; the number itself beyond f/0.7 and f/128. */
  public static double name(FNumber fNumber) {
    int index = nearest(fNumber) - LOWEST;
    return index < 0 || index >= NAMES.length ? fNumber.value() : NAMES[index];
  }

  /** Whether the number is the exact value of a mark, but for rounding in the last digits. */
  public static boolean isMark(FNumber fNumber) {
    return Math.abs(third(nearest(fNumber)).value() / fNumber.value() - 1) < 1e-9;
  }

  /**
   * The middle in stops of {@code low} to {@code high}, moved to the nearest mark that lies between
   * them; empty if none does.
   */
  public static Optional<FNumber> markBetween(FNumber low, FNumber high) {
    double from = 6 * Num.log2(low.value());
    double to = 6 * Num.log2(high.value());
    double tiny = 1e-9;
    double mark =
        Math.min(
            Math.floor(to + tiny), Math.max(Math.ceil(from - tiny), Num.round((from + to) / 2)));
    return mark < from - tiny ? Optional.empty() : Optional.of(third((int) mark));
  }
}
