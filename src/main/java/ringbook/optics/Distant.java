package ringbook.optics;

import ringbook.units.Length;

/**
 * The shortcut for distant objects, which takes the image distance for the focal length. Many
 * selection guides print it; it errs by the magnification, so it is a typical slip close by.
 * Source: similar triangles with the sensor in the focal plane.
 */
public final class Distant {

  private Distant() {}

  /** What a side of the sensor shows, {@code s u / f}; too much by the magnification. */
  public static Length field(Length focalLength, Length side, Length distance) {
    return side.times(distance.over(focalLength));
  }

  /** Focal length that shows {@code extent} on {@code side}, {@code u s / S}; too long likewise. */
  public static Length focalLength(Length distance, Length extent, Length side) {
    return distance.times(side.over(extent));
  }

  /** Length on the object that falls on one pixel, {@code p u / f}; too much likewise. */
  public static Length sampling(Length pixelPitch, Length focalLength, Length distance) {
    return field(focalLength, pixelPitch, distance);
  }
}
