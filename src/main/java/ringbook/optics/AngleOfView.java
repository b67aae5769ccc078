package ringbook.optics;

import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * How wide a rectilinear lens sees. Angles are full angles, from edge to edge. Source: right
 * triangle of half the sensor side and the image distance.
 */
public final class AngleOfView {

  private AngleOfView() {}

  /**
   * Angle across a side of the sensor, {@code 2 atan(x / 2v)}.
   *
   * @param side x, width, height or diagonal of the sensor
   * @param imageDistance v; the focal length when the lens is focused far away
   */
  public static Angle of(Length side, Length imageDistance) {
    return new Angle(2 * Num.atan(side.over(imageDistance.times(2))));
  }

  /**
   * Focal length that sees {@code angle} across {@code side} when focused far away, {@code x / (2
   * tan(α/2))}.
   *
   * @param angle above 0° and below 180°
   */
  public static Length focalLength(Length side, Angle angle) {
    if (angle.radians() <= 0 || angle.radians() >= Math.PI) {
      throw new IllegalArgumentException("a rectilinear lens sees more than 0° and less than 180°");
    }
    return side.times(0.5 / Num.tan(angle.radians() / 2));
  }
}
