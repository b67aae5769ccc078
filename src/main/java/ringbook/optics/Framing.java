package ringbook.optics;

import ringbook.units.Length;
import ringbook.units.Whole;

/** How far to stand so that the object fits the picture, and what the picture then covers. */
public final class Framing {

  private Framing() {}

  /**
   * How many frames side by side cover {@code length}, {@code ⌈(L − F) / ((1 − q) F)⌉ + 1}, 1 where
   * one frame holds it. Source: strip of overlapping frames, end to end.
   *
   * @param length L
   * @param field F, what one frame shows along it
   * @param overlap q, share of a frame that its neighbour shows too, 0 to below 1
   */
  public static double frames(Length length, Length field, double overlap) {
    double missing = length.minus(field).over(field.times(1 - overlap));
    return Math.max(0, Whole.up(missing)) + 1;
  }

  /**
   * Distance from the lens at which {@code extent} takes up {@code fill} of a side of the picture,
   * {@code u = f (1 + S / (φ s))}. Source: thin lens, magnification {@code φ s / S}.
   *
   * @param focalLength f
   * @param extent S, size of the object along that side of the picture
   * @param side s, that side of the sensor
   * @param fill φ, above 0, up to 1
   */
  public static Length standoff(Length focalLength, Length extent, Length side, double fill) {
    return focalLength.times(1 + extent.over(side.times(fill)));
  }

  /** Width of what a side of the sensor shows at {@code distance}, {@code s / m}. */
  public static Length field(Length focalLength, Length side, Length distance) {
    return side.times(1 / ThinLens.magnification(focalLength, distance));
  }

  /** Share of a side of the picture that {@code extent} takes up at {@code distance}. */
  public static double filled(Length focalLength, Length extent, Length side, Length distance) {
    return ThinLens.magnification(focalLength, distance) * extent.over(side);
  }
}
