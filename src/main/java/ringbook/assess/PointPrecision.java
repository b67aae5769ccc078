package ringbook.assess;

import java.util.List;
import java.util.Optional;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * How precisely a point is fixed by lines of sight. All of it is precision (one standard
 * deviation), not accuracy: errors of the lens model and of the scale come on top.
 *
 * <p>The standard deviation put in is that of one picture coordinate of one photograph, carried to
 * the object: pixels times object size of a pixel.
 */
public final class PointPrecision {

  private PointPrecision() {}

  /**
   * Depth from two photographs with parallel axes: {@code σ_Z = s (Z/B) √2}, because both pictures
   * are measured.
   *
   * @param spot s, one picture coordinate carried to the object
   * @param baseRatio B/Z, above 0
   */
  public static Length parallelDepth(Length spot, double baseRatio) {
    return spot.times(Math.sqrt(2) / baseRatio);
  }

  /**
   * Depth from two photographs that look at the point from the same distance, along the line
   * midway: {@code σ = s / (√2 sin(γ/2))}.
   *
   * @param spot s
   * @param rayAngle γ, above 0
   */
  public static Length convergentDepth(Length spot, Angle rayAngle) {
    return spot.times(1 / (Math.sqrt(2) * Num.sin(rayAngle.radians() / 2)));
  }

  /** Level precision at the middle of a ring: {@code s / √(n (1 − ½ cos² e))}, n at least 3. */
  public static Length ringAcross(Length spot, double stations, Angle elevation) {
    double c = Num.cos(elevation.radians());
    return spot.times(1 / Math.sqrt(stations * (1 - c * c / 2)));
  }

  /** Upright precision at the middle of a ring: {@code s / √(n cos² e)}, n at least 3. */
  public static Length ringUp(Length spot, double stations, Angle elevation) {
    double c = Num.cos(elevation.radians());
    return spot.times(1 / Math.sqrt(stations * c * c));
  }

  /**
   * The factor q of Fraser's rule at the middle of a ring: root mean square of the three standard
   * deviations over s, {@code √((2/(1 − c²/2) + 1/c²) / 3n)} with c = cos e.
   */
  public static double networkFactor(double stations, Angle elevation) {
    double c = Num.cos(elevation.radians());
    double squared = c * c;
    return Math.sqrt((2 / (1 - squared / 2) + 1 / squared) / (3 * stations));
  }

  /**
   * Fraser's rule {@code σ̄ = q s / √k}.
   *
   * @param factor q of the network of stations
   * @param spot s
   * @param repeats k, photographs at each station (not lines of sight)
   */
  public static Length mean(double factor, Length spot, double repeats) {
    return spot.times(factor / Math.sqrt(repeats));
  }

  /**
   * One line of sight.
   *
   * @param direction from lens to point, of length 1
   * @param sigmaMetres standard deviation across the line, above 0
   */
  public record Ray(Vec3 direction, double sigmaMetres) {}

  /**
   * Covariance of the point that the lines of sight meet in, in square metres: {@code (Σ (I − u uᵀ)
   * / σ²)⁻¹}. Empty if they do not fix a point.
   */
  public static Optional<Spread> covariance(List<Ray> rays) {
    Spread weight = Spread.ZERO;
    for (Ray ray : rays) {
      double sigma = ray.sigmaMetres();
      weight = weight.plus(Spread.across(ray.direction()).times(1 / (sigma * sigma)));
    }
    return weight.inverse();
  }
}
