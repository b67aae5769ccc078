package ringbook.optics;

import ringbook.units.Angle;
import ringbook.units.Num;

/** Filters before lens and lamp. Source: definition of the stop; law of Malus for polarisers. */
public final class Filter {

  private Filter() {}

  /**
   * Stops lost, {@code log₂(1/τ)}.
   *
   * @param transmittance τ, share of the light let through, above 0
   */
  public static double stopsLost(double transmittance) {
    return -Num.log2(transmittance);
  }

  /** Share of the light let through by a filter that costs so many stops. */
  public static double transmittance(double stopsLost) {
    return Num.pow(2, -stopsLost);
  }

  /** Share of polarised light that a polariser at an angle to it lets through, {@code cos²θ}. */
  public static double malus(Angle angle) {
    double cosine = Num.cos(angle.radians());
    return cosine * cosine;
  }

  /** The angle at which a polariser lets through {@code share} of polarised light. */
  public static Angle malusAngle(double share) {
    return new Angle(Num.acos(Math.sqrt(share)));
  }
}
