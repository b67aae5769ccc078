package ringbook.optics;

import java.util.Optional;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * How much of the depth before the lens is sharp; exact for the thin lens with a pupil in it.
 *
 * <p>{@code f} focal length, {@code N} marked f-number, {@code s} focus distance, {@code c} widest
 * blur spot on the sensor still taken for sharp, {@code H} hyperfocal distance. Distances run from
 * the lens and lie beyond the focal length. Source: geometrical optics, similar triangles at the
 * aperture; textbooks of photographic optics.
 */
public final class DepthOfField {

  private DepthOfField() {}

  /**
   * Nearest focus distance at which the sharp range reaches infinity, {@code H = f² / (N c) + f}.
   */
  public static Length hyperfocal(Length focalLength, FNumber fNumber, Length blurSpot) {
    return focalLength.times(focalLength.over(blurSpot) / fNumber.value() + 1);
  }

  /** Nearest sharp distance, {@code s (H − f) / (H + s − 2f)}. */
  public static Length nearLimit(Length focalLength, Length hyperfocal, Length focus) {
    Length below = hyperfocal.plus(focus).minus(focalLength.times(2));
    return focus.times(hyperfocal.minus(focalLength).over(below));
  }

  /** Farthest sharp distance, {@code s (H − f) / (H − s)}; empty if it lies at infinity. */
  public static Optional<Length> farLimit(Length focalLength, Length hyperfocal, Length focus) {
    if (focus.compareTo(hyperfocal) >= 0) {
      return Optional.empty();
    }
    return Optional.of(focus.times(hyperfocal.minus(focalLength).over(hyperfocal.minus(focus))));
  }

  /** Focus distance that blurs {@code near} and {@code far} alike, {@code 2 n F / (n + F)}. */
  public static Length focusBetween(Length near, Length far) {
    return near.times(2 * far.over(near.plus(far)));
  }

  /**
   * Smallest f-number that holds {@code near} to {@code far} sharp when focused {@link
   * #focusBetween}, {@code N = f² (F − n) / (c (F + n) (s − f))}.
   */
  public static FNumber fNumberFor(Length focalLength, Length near, Length far, Length blurSpot) {
    Length beyond = focusBetween(near, far).minus(focalLength);
    return new FNumber(
        focalLength.over(blurSpot)
            * focalLength.over(beyond)
            * far.minus(near).over(far.plus(near)));
  }

  /**
   * The whole sharp depth, {@code 2 N c (1 + m) / (m² − (N c / f)²)}, where that is above zero;
   * otherwise it reaches infinity and is empty.
   *
   * @param magnification m at the focus distance
   */
  public static Optional<Length> depth(
      Length focalLength, double magnification, FNumber fNumber, Length blurSpot) {
    Length spread = blurSpot.times(fNumber.value());
    double share = spread.over(focalLength);
    double below = magnification * magnification - share * share;
    return below <= 0
        ? Optional.empty()
        : Optional.of(spread.times(2 * (1 + magnification) / below));
  }

  /** Diameter on the sensor of the blur of a point, {@code b = f² |x − s| / (N x (s − f))}. */
  public static Length blur(Length focalLength, FNumber fNumber, Length focus, Length point) {
    double off = Math.abs(point.minus(focus).over(point));
    return focalLength.times(off * focalLength.over(focus.minus(focalLength)) / fNumber.value());
  }

  /**
   * Depth from {@code near} that one photograph holds sharp with its near limit on {@code near},
   * {@code n (H − 2f) / (H − 2n) − n}; empty if it reaches infinity. Follows from the two limits.
   */
  public static Optional<Length> depthFrom(Length focalLength, Length hyperfocal, Length near) {
    Length below = hyperfocal.minus(near.times(2));
    if (below.metres() <= 0) {
      return Optional.empty();
    }
    double ratio = hyperfocal.minus(focalLength.times(2)).over(below);
    return Optional.of(near.times(ratio).minus(near));
  }

  /**
   * How many photographs, each focused a little farther, hold {@code near} to {@code far} sharp
   * between them: the logarithm of {@code (1 − f/F) / (1 − f/n)} over that of {@code (f + N c) / (f
   * − N c)}. One photograph's sharp range runs over a constant ratio of {@code 1 − f/x}; this
   * follows from {@link #blur} set to c. Not rounded; 0 where one holds everything.
   */
  public static double slices(Length focalLength, Length near, Length far, Length spread) {
    double share = spread.over(focalLength);
    if (share >= 1) {
      return 0;
    }
    double range = (1 - focalLength.over(far)) / (1 - focalLength.over(near));
    return Num.log(range) / Num.log((1 + share) / (1 - share));
  }
}
