package ringbook.optics;

import java.util.Optional;
import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Whole;

/**
 * What one photograph must keep to: a depth with blur no wider than one limit and a diffraction
 * disc no wider than another. Both together leave a window of f-numbers, which widens with
 * distance.
 *
 * @param lens the lens and the f-numbers it can be set to
 * @param depth depth to hold sharp, above 0
 * @param blurSpot widest blur on the sensor
 * @param disc widest diffraction disc on the sensor, in green light
 */
public record SharpWindow(Lens lens, Length depth, Length blurSpot, Length disc) {

  /** Smallest f-number that holds the depth behind {@code near} sharp. */
  public FNumber open(Length near) {
    return DepthOfField.fNumberFor(lens.focalLength(), near, near.plus(depth), blurSpot);
  }

  /** Largest f-number whose disc is within the limit, focused for the depth behind {@code near}. */
  public FNumber closed(Length near) {
    Length focus = DepthOfField.focusBetween(near, near.plus(depth));
    return Diffraction.fNumberFor(disc, ThinLens.magnification(lens.focalLength(), focus));
  }

  /** Whether the lens can be set to an f-number within both limits. */
  public boolean opensAt(Length near) {
    return Whole.atMost(from(near), to(near));
  }

  /**
   * The nearest distance from {@code near} outwards at which the window opens; empty if it does not
   * up to {@code reach}. Farther out the needed f-number falls and the allowed one rises, so once
   * open it stays open, and halving the interval finds the edge.
   */
  public Optional<Length> nearestOpen(Length near, Length reach) {
    if (opensAt(near)) {
      return Optional.of(near);
    }
    if (!opensAt(reach)) {
      return Optional.empty();
    }
    Length shut = near;
    Length open = reach;
    for (int i = 0; i < 60; i++) {
      Length middle = shut.plus(open).times(0.5);
      // Strictly, so that a hair of rounding at the edge is still forgiven.
      if (from(middle) <= to(middle)) {
        open = middle;
      } else {
        shut = middle;
      }
    }
    return Optional.of(open);
  }

  private double from(Length near) {
    return Math.max(open(near).value(), lens.widest().value());
  }

  private double to(Length near) {
    return Math.min(closed(near).value(), lens.narrowest().value());
  }
}
