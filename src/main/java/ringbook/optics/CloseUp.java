package ringbook.optics;

import ringbook.units.Length;
import ringbook.units.Num;

/**
 * What focusing close costs in light. All functions take the magnification {@code m}, 0 or above,
 * and hold for a lens that moves as a whole and whose pupils are alike; lenses that shorten their
 * focal length when focused close lose less. Source: similar triangles.
 */
public final class CloseUp {

  private CloseUp() {}

  /** How many times the exposure time grows, {@code (1 + m)²}. */
  public static double exposureFactor(double magnification) {
    return (1 + magnification) * (1 + magnification);
  }

  /** The same in stops, {@code 2 log₂(1 + m)}. */
  public static double stopsLost(double magnification) {
    return 2 * Num.log2(1 + magnification);
  }

  /** Magnification of a lens moved {@code extension} beyond its infinity setting, {@code e/f}. */
  public static double magnification(Length focalLength, Length extension) {
    return extension.over(focalLength);
  }

  /** Power in dioptres of a close-up lens that focuses from infinity to {@code distance}. */
  public static double dioptres(Length distance) {
    return 1 / distance.metres();
  }
}
