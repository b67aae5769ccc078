package ringbook.optics;

import ringbook.units.Length;

/**
 * The thin lens in air: where the picture of an object lies and how large it is.
 *
 * <p>{@code f} focal length, {@code u} distance from the lens to the object, {@code v} from the
 * lens to the picture, {@code m} magnification (size of the picture over size of the object). All
 * functions need {@code u > f}: nearer than that there is no picture on the sensor. Source: lens
 * equation, any textbook of optics.
 */
public final class ThinLens {

  private ThinLens() {}

  /** Distance from the lens to the picture, {@code v = f u / (u − f)}. */
  public static Length imageDistance(Length focalLength, Length distance) {
    return focalLength.times(distance.over(beyond(focalLength, distance)));
  }

  /** Size of the picture over size of the object, {@code m = f / (u − f)}. */
  public static double magnification(Length focalLength, Length distance) {
    return focalLength.over(beyond(focalLength, distance));
  }

  /**
   * Distance from the lens to the object, {@code u = f (1 + 1/m)}.
   *
   * @param magnification m, above 0
   */
  public static Length distance(Length focalLength, double magnification) {
    return focalLength.times(1 + 1 / magnification);
  }

  /**
   * The focal length that shows {@code extent} on {@code side} from {@code distance}, {@code f = u
   * / (1 + S/s)}.
   *
   * @param extent S, size on the object
   * @param side s, its size on the sensor
   */
  public static Length focalLength(Length distance, Length extent, Length side) {
    return distance.times(1 / (1 + extent.over(side)));
  }

  /** {@code u − f}, which must be above zero. */
  private static Length beyond(Length focalLength, Length distance) {
    if (distance.compareTo(focalLength) <= 0) {
      throw new IllegalArgumentException("the object must lie beyond the focal length");
    }
    return distance.minus(focalLength);
  }
}
