package ringbook.assess;

import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * How much of the surface that one photograph sees well enough its neighbour sees well enough too,
 * 0 to 1. It says whether both cameras could see a spot, not whether the spot still looks alike:
 * for that see {@link MatchSurvival}.
 */
public final class SharedSurface {

  private SharedSurface() {}

  /**
   * On a ball seen from far away. Each photograph sees the cap within {@code limit} of its own line
   * of sight; two caps whose middles are {@code turn} apart overlap in a lens, whose area over the
   * area of one cap is
   *
   * <p>{@code (4 acos(sin(t/2) / sin r) − 4 acos(tan(t/2) / tan r) cos r) / (2π (1 − cos r))},
   *
   * <p>0 from t = 2r on. Spherical geometry; the same area by counting points spread evenly over
   * the ball.
   *
   * @param turn t, at least 0
   * @param limit r, the most slanted view that still counts, above 0 and below 90°
   */
  public static double ofCaps(Angle turn, Angle limit) {
    double half = turn.radians() / 2;
    double r = limit.radians();
    if (half >= r) {
      return 0;
    }
    double corner = Num.acos(Num.sin(half) / Num.sin(r));
    double edge = Num.acos(Num.tan(half) / Num.tan(r));
    return 4 * (corner - edge * Num.cos(r)) / (2 * Math.PI * (1 - Num.cos(r)));
  }

  /**
   * On an upright round wall, where each photograph sees an arc of twice {@code halfArc}: {@code
   * (2φ − α) / 2φ}, 0 from α = 2φ on.
   *
   * @param turn α, at least 0
   * @param halfArc φ, above 0; see {@link SeenArc#halfWithin}
   */
  public static double ofArcs(Angle turn, Angle halfArc) {
    double arc = 2 * halfArc.radians();
    return Math.max(0, (arc - turn.radians()) / arc);
  }
}
