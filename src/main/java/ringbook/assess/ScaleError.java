package ringbook.assess;

import java.util.List;
import ringbook.units.Length;

/** How far off the size of a model is, given how its scale was set. One standard deviation. */
public final class ScaleError {

  private ScaleError() {}

  /** Error of a length between two targets: {@code √2 σ}. */
  public static Length betweenTargets(Length target) {
    return target.times(Math.sqrt(2));
  }

  /**
   * Relative error of the scale from one bar: {@code √(σ_L² + σ_l²) / L}.
   *
   * @param bar L
   * @param known σ_L, of the length of the bar itself
   * @param measured σ_l, of the bar's length in the model
   */
  public static double ofBar(Length bar, Length known, Length measured) {
    return both(known, measured) / bar.metres();
  }

  /** Two independent errors together, in metres. */
  static double both(Length one, Length other) {
    return Math.sqrt(one.metres() * one.metres() + other.metres() * other.metres());
  }

  /**
   * A scale factor from one bar.
   *
   * @param factor true length over length in the model
   * @param sigma its standard deviation, above 0
   */
  public record Scale(double factor, double sigma) {}

  /** The mean of several, each weighted by {@code 1/σ²}; at least one. */
  public static Scale mean(List<Scale> scales) {
    double weights = 0;
    double sum = 0;
    for (Scale scale : scales) {
      double weight = 1 / (scale.sigma() * scale.sigma());
      weights += weight;
      sum += weight * scale.factor();
    }
    return new Scale(sum / weights, 1 / Math.sqrt(weights));
  }
}
