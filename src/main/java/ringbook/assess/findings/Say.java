package ringbook.assess.findings;

import ringbook.shots.Scene;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Numbers;
import ringbook.units.Unit;
import ringbook.units.Words;

/** Numbers as findings say them. */
final class Say {

  private static final String SPACE = "\u00a0";

  private Say() {}

  static String photographs(int count) {
    return Words.count(count, "photograph");
  }

  /** Whole degrees, folded into one circle. */
  static String direction(Angle azimuth) {
    double degrees = Math.floor(azimuth.degrees() + 0.5);
    return Numbers.fixed(degrees - 360 * Math.floor(degrees / 360), 0) + "°";
  }

  static String degrees(Angle angle) {
    return Numbers.fixed(angle.degrees(), 0) + "°";
  }

  /** A length as people of this scene tell it. */
  static String length(Scene scene, double metres) {
    return scene.aim().lengths().roughly(metres);
  }

  static String fine(Length length) {
    return Numbers.significant(length.millimetres(), 2) + SPACE + Unit.MILLIMETRE.symbol();
  }

  /** A share of the surface. */
  static String percent(double share) {
    double percent = 100 * share;
    return Numbers.fixed(percent, percent < 1 ? 1 : 0) + SPACE + Unit.PERCENT.symbol();
  }

  /** Which side of the ring plan a direction lies on. */
  static String side(Angle azimuth) {
    double degrees = azimuth.degrees() - 360 * Math.floor(azimuth.degrees() / 360);
    String[] sides = {
      "right", "far right", "far side", "far left", "left", "near left", "near side", "near right"
    };
    return sides[(int) Math.floor(degrees / 45 + 0.5) % 8];
  }
}
