package ringbook.optics;

import ringbook.units.Num;
import ringbook.units.Span;
import ringbook.units.Whole;

/**
 * Lamps on alternating current, which pulse twice a period. Lamps fed through electronics may pulse
 * at any rate; this does not hold for them. Source: mean of a sine-shaped pulse over the exposure.
 */
public final class Flicker {

  private Flicker() {}

  /** Pulses of light during the exposure, {@code 2 f t}. */
  public static double pulses(double mainsHertz, Span time) {
    return 2 * mainsHertz * time.seconds();
  }

  /** Whether so many pulses are a whole number, so that each exposure gets the same light. */
  public static boolean isSafe(double pulses) {
    return Whole.atMost(1, pulses) && Whole.atMost(pulses, Whole.down(pulses));
  }

  /** Longest safe time not above {@code time}; 0 if it is shorter than one pulse. */
  public static Span safeTime(double mainsHertz, Span time) {
    return new Span(Whole.down(pulses(mainsHertz, time)) / (2 * mainsHertz));
  }

  /**
   * Share of the flicker that an exposure of so many pulses does not average away, {@code
   * |sin(πx)/(πx)|}. Whole pulses do not change the size of the sine, so only the part beyond them
   * is taken.
   */
  public static double left(double pulses) {
    double part = pulses - Whole.down(pulses);
    return pulses == 0 ? 1 : Math.abs(Num.sin(Math.PI * part)) / (Math.PI * pulses);
  }

  /**
   * Brightest over darkest exposure of a series at any moment of the pulse, {@code (1 + M s) / (1 −
   * M s)}; may be infinite.
   *
   * @param modulation M, how much of the light pulses, 0 to 1
   * @param left s, see {@link #left}
   */
  public static double swing(double modulation, double left) {
    return (1 + modulation * left) / (1 - modulation * left);
  }
}
