package ringbook.plans;

import ringbook.units.Angle;
import ringbook.units.Numbers;
import ringbook.units.Words;

/** Words for plans. */
final class Sentences {

  private Sentences() {}

  static String capital(String text) {
    char first = text.charAt(0);
    boolean small = first >= 'a' && first <= 'z';
    return small ? (char) (first - 'a' + 'A') + text.substring(1) : text;
  }

  static String photographs(int count) {
    return Words.count(count, "photograph");
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

  /** A part as a person would say it: {@code right of the front leg} for "front leg: right". */
  static String part(String name) {
    int colon = name.indexOf(": ");
    if (name.isEmpty()) {
      return "surface";
    }
    if (colon < 0) {
      return name;
    }
    String whole = name.substring(0, colon);
    char last = whole.charAt(whole.length() - 1);
    // "pocket 3" is a name of its own: nobody says "the pocket 3".
    String of = last >= '0' && last <= '9' ? " of " : " of the ";
    return name.substring(colon + 2) + of + whole;
  }
}
