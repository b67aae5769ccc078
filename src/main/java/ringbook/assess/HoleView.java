package ringbook.assess;

import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Require;

/**
 * What a photograph sees of a round hole with straight walls and a flat floor, from so far away
 * that all lines of sight run alike. Angles count from the axis of the hole.
 *
 * @param diameter d, above 0
 * @param depth h, above 0
 */
public record HoleView(Length diameter, Length depth) {

  public HoleView {
    Require.positive("diameter of a hole", "m", diameter.metres());
    Require.positive("depth of a hole", "m", depth.metres());
  }

  /** How deep the wall is seen on the far side: {@code min(h, d / tan θ)}. */
  public Length wallSeen(Angle angle) {
    double tangent = Num.tan(angle.radians());
    return tangent * depth.metres() <= diameter.metres() ? depth : diameter.times(1 / tangent);
  }

  /** How much of the floor is seen, across its middle: {@code max(0, d − h tan θ)}. */
  public Length floorSeen(Angle angle) {
    double hidden = depth.metres() * Num.tan(angle.radians());
    return new Length(Math.max(0, diameter.metres() - hidden));
  }

  /**
   * Share of the floor that is seen: {@code (2/π) (acos x − x √(1 − x²))} with {@code x = h tan θ /
   * d}; two equal circles pushed apart. 0 from x = 1 on.
   */
  public double floorShare(Angle angle) {
    double x = depth.over(diameter) * Num.tan(angle.radians());
    return x >= 1 ? 0 : 2 / Math.PI * (Num.acos(x) - x * Math.sqrt(1 - x * x));
  }

  /** Largest angle that still sees the middle of the floor: {@code atan(d / 2h)}. */
  public Angle floorMiddle() {
    return new Angle(Num.atan(diameter.over(depth) / 2));
  }

  /** Angle from which nothing of the floor is seen: {@code atan(d / h)}. */
  public Angle floorHidden() {
    return new Angle(Num.atan(diameter.over(depth)));
  }
}
