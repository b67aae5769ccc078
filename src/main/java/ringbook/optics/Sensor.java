package ringbook.optics;

import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Require;

/**
 * The light-sensitive rectangle and its pixels.
 *
 * @param width the long side, above 0
 * @param height the short side, above 0 and not longer than the width
 * @param pixelsAcross along the long side, at least 1
 * @param pixelsDown along the short side, at least 1
 */
public record Sensor(Length width, Length height, int pixelsAcross, int pixelsDown) {

  /** Diagonal of the 36 mm by 24 mm frame that "35 mm equivalent" focal lengths refer to. */
  public static final Length FULL_FRAME_DIAGONAL = Length.ofMillimetres(Num.hypot(36, 24));

  public Sensor {
    Require.positive("sensor width", "m", width.metres());
    Require.positive("sensor height", "m", height.metres());
    Require.atLeast("pixels across", 1, pixelsAcross);
    Require.atLeast("pixels down", 1, pixelsDown);
    if (height.compareTo(width) > 0) {
      throw new IllegalArgumentException("sensor height must not exceed sensor width");
    }
  }

  /** Corner to corner. */
  public Length diagonal() {
    return new Length(Num.hypot(width.metres(), height.metres()));
  }

  /** Distance between the middles of two neighbouring pixels along the long side. */
  public Length pixelPitch() {
    return width.times(1.0 / pixelsAcross);
  }

  /**
   * How far, as a share, a 35 mm equivalent may be off because it is given in whole millimetres;
   * what is worked out from it is off by the same share.
   */
  public static double equivalentError(Length equivalent) {
    return Length.ofMillimetres(0.5).over(equivalent);
  }

  /** How many times this sensor's area goes into 36 mm by 24 mm. */
  public double areaRatio() {
    return 36e-3 * 24e-3 / (width.metres() * height.metres());
  }

  /** Full-frame diagonal over this diagonal (the rule by diagonal that Exif uses). */
  public double cropFactor() {
    return FULL_FRAME_DIAGONAL.over(diagonal());
  }
}
