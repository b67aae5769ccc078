package ringbook.plans;

import java.util.List;
import ringbook.units.Angle;
import ringbook.units.Numbers;

/** Words for plans. */
final class Sentences {

  private Sentences() {}

  static String capital(String text) {
    char first = text.charAt(0);
    boolean small = first >= 'a' && first <= 'z';
    return small ? (char) (first - 'a' + 'A') + text.substring(1) : text;
  }

  static String photographs(int count) {
    return count == 1 ? "1 photograph" : count + " photographs";
  }

  /** To whole degrees, or to a tenth where that says more: {@code 13.8°}. */
  static String degrees(Angle angle) {
    return Numbers.trimmed(Numbers.fixed(angle.degrees(), 1)) + "°";
  }

  /** An elevation as a person would say it: {@code 15° above the middle}. */
  static String elevation(Angle elevation) {
    double whole = Math.floor(Math.abs(elevation.degrees()) + 0.5);
    if (whole == 0) {
      return "level with the middle";
    }
    return Numbers.fixed(whole, 0) + "° " + (elevation.degrees() > 0 ? "above" : "below");
  }

  /**
   * How far apart stations in the order of walking are: {@code 15° apart}, {@code 9° to 15° apart}.
   */
  static String steps(List<Candidate> members) {
    double[] range = range(members);
    String wide = degrees(Angle.ofDegrees(range[1]));
    boolean even = range[1] - range[0] < 0.5;
    return (even ? wide : degrees(Angle.ofDegrees(range[0])) + " to " + wide) + " apart";
  }

  /** Whether no two neighbours are more than twice as far apart as others. */
  static boolean areEven(List<Candidate> members) {
    double[] range = range(members);
    return range[1] <= 2 * range[0];
  }

  /** Least and largest turn from one to the next, in degrees. */
  private static double[] range(List<Candidate> members) {
    double least = 360;
    double most = 0;
    for (int i = 1; i < members.size(); i++) {
      double turn =
          members.get(i).viewpoint().station().azimuth().degrees()
              - members.get(i - 1).viewpoint().station().azimuth().degrees();
      double folded = Math.abs(turn - 360 * Math.floor(turn / 360 + 0.5));
      least = Math.min(least, folded);
      most = Math.max(most, folded);
    }
    return new double[] {least, most};
  }

  /** A part as a person would say it: {@code right of the front leg} for "front leg: right". */
  static String part(String name) {
    int colon = name.indexOf(": ");
    if (name.isEmpty()) {
      return "surface";
    }
    return colon < 0 ? name : name.substring(colon + 2) + " of the " + name.substring(0, colon);
  }
}
