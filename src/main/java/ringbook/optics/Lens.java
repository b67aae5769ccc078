package ringbook.optics;

import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Require;

/**
 * A lens at one focal length, taken as a thin lens in air.
 *
 * @param focalLength true focal length, above 0
 * @param widest smallest f-number it can be set to
 * @param narrowest largest f-number it can be set to; the same as {@code widest} for a fixed
 *     aperture
 * @param closestFocus nearest distance from the lens it can focus on, longer than the focal length
 */
public record Lens(Length focalLength, FNumber widest, FNumber narrowest, Length closestFocus) {

  public Lens {
    Require.positive("focal length", "m", focalLength.metres());
    if (widest.compareTo(narrowest) > 0) {
      throw new IllegalArgumentException("the widest f-number must not exceed the narrowest");
    }
    if (closestFocus.compareTo(focalLength) <= 0) {
      throw new IllegalArgumentException("closest focus must lie beyond the focal length");
    }
  }

  /** Whether the f-number cannot be chosen, as on most phones. */
  public boolean hasFixedAperture() {
    return widest.equals(narrowest);
  }
}
