package ringbook.optics;

import ringbook.units.FNumber;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * A small lamp: its light falls with the square of the distance. Holds from about five times the
 * size of the lamp; not for soft boxes close by or for beams. Source: inverse square law, textbooks
 * of lighting.
 */
public final class Lamp {

  private Lamp() {}

  /** Illuminance in lux at {@code to}, where it is {@code lux} at {@code from}. */
  public static double illuminanceLux(double lux, Length from, Length to) {
    double ratio = from.over(to);
    return lux * ratio * ratio;
  }

  /** Illuminance in lux square on to the light of a lamp of so many candela. */
  public static double luxOfIntensity(double candela, Length distance) {
    return candela / (distance.metres() * distance.metres());
  }

  /** Illuminance in lux of a lamp that shines evenly all round, with its flux in lumen. */
  public static double luxOfFlux(double lumen, Length distance) {
    return luxOfIntensity(lumen / (4 * Math.PI), distance);
  }

  /** How many stops darker it is at {@code far} than at {@code near}. */
  public static double stopsBetween(Length near, Length far) {
    return 2 * Num.log2(far.over(near));
  }

  /**
   * How many stops the far side of an object is darker than the near one, {@code 2 log₂((d + z/2) /
   * (d − z/2))}.
   *
   * @param distance d, from the lamp to the middle of the object, above half of {@code depth}
   * @param depth z
   */
  public static double spread(Length distance, Length depth) {
    Length half = depth.times(0.5);
    return stopsBetween(distance.minus(half), distance.plus(half));
  }

  /** Distance to the middle at which {@link #spread} is {@code stops}. */
  public static Length distanceFor(Length depth, double stops) {
    double ratio = Num.pow(2, stops / 2);
    return depth.times((ratio + 1) / (ratio - 1) / 2);
  }

  /** Hours in a light of so many lux that add up to a dose in lux hours. */
  public static double doseHours(double luxHours, double lux) {
    return luxHours / lux;
  }

  /** F-number for a flash of a guide number (in metres, at the ISO set). */
  public static FNumber flash(double guideNumberMetres, Length distance) {
    return new FNumber(guideNumberMetres / distance.metres());
  }
}
