package ringbook.optics;

import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * How finely the pixels sample the object. A sampling distance is the length on the object, seen
 * square on, that falls on one pixel. Source: photogrammetry textbooks, as ground or object
 * sampling distance.
 */
public final class Sampling {

  private Sampling() {}

  /** Sampling distance at {@code distance}, {@code g = p / m = p (u − f) / f}. */
  public static Length onObject(Length pixelPitch, Length focalLength, Length distance) {
    return pixelPitch.times(1 / ThinLens.magnification(focalLength, distance));
  }

  /** Distance at which the sampling distance is {@code wanted}, {@code u = f (1 + g/p)}. */
  public static Length distance(Length pixelPitch, Length focalLength, Length wanted) {
    return focalLength.times(1 + wanted.over(pixelPitch));
  }

  /**
   * Sampling distance along a slope, {@code g / cos i}.
   *
   * @param incidence i, between the line of sight and the surface's normal, below 90°
   */
  public static Length onSlope(Length squareOn, Angle incidence) {
    return onSlope(squareOn, Num.cos(incidence.radians()));
  }

  /**
   * The same where the cosine of the incidence is known.
   *
   * @param cosine cos i, above 0
   */
  public static Length onSlope(Length squareOn, double cosine) {
    return squareOn.times(1 / cosine);
  }
}
