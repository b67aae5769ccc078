package ringbook.assess.coverage;

import ringbook.assess.MatchSurvival;
import ringbook.shots.Aim;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * What counts as seen well, as tied, as fine enough; from the aim of a scene.
 *
 * @param incidence most slanted view that still counts
 * @param sampling metres of surface on one pixel, at most, where the surface is shown best
 * @param pointing how exactly a spot is found in a photograph, in pixels
 * @param turn largest turn, measured at the patch, over which a patch is still matched
 * @param decay turn over which matches fall to 1/e
 */
public record Limits(Angle incidence, double sampling, double pointing, Angle turn, Angle decay) {

  /**
   * Turn at the patch over turn on the ring. The largest turn of the aim is one between stations,
   * seen from the middle of the object; the near side of the object lies nearer to the lens and
   * sees a larger one: half as much again where the ring is three times as wide as the object.
   */
  public static final double NEARER = 1.5;

  /**
   * Fewest tied views of a patch seen well: two fix a point, a third checks it. Common practice.
   */
  public static final int VIEWS = 3;

  /**
   * Smallest of the largest angles between tied rays: there depth is ten times as uncertain as a
   * picture coordinate, {@code 1 / (√2 sin(γ/2)) = 10} of {@link
   * ringbook.assess.PointPrecision#convergentDepth}, about 8°.
   */
  public static final Angle RAYS = new Angle(2 * Num.asin(1 / (10 * Math.sqrt(2))));

  /** The limits of a scene. */
  public static Limits of(Scene scene) {
    Aim aim = scene.aim();
    double pointing = SceneDetails.si(scene, "aim.pointing");
    return new Limits(
        aim.incidenceLimit(),
        aim.detail().metres() / aim.pixelsPerDetail(),
        pointing,
        aim.stepLimit().times(NEARER),
        aim.decay());
  }

  /** Share of spots that still look alike at the largest turn. */
  public double alike() {
    return MatchSurvival.alike(turn, decay);
  }

  /**
   * What two photographs must have in common that can be matched, as a share of what the lesser of
   * them sees well, to count as tied: as much as two photographs of a ball the largest turn apart.
   */
  public double tie() {
    return MatchSurvival.matchable(turn, incidence, decay);
  }
}
