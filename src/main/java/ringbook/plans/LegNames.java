package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.plans.Bunch.Form;
import ringbook.shots.Pose;
import ringbook.units.Angle;
import ringbook.units.Num;
import ringbook.units.Numbers;

/** What legs are called. */
final class LegNames {

  private static final int LETTERS = 26;

  /** A row with a gap no wider goes all round. */
  private static final double GAP = Angle.ofDegrees(100).radians();

  private LegNames() {}

  /** The names of bunches, in their order: by part and place. */
  static List<String> of(List<Bunch> bunches, Seeing seeing) {
    List<String> names = new ArrayList<>();
    int rings = 0;
    for (Bunch bunch : bunches) {
      boolean close = bunch.form() == Form.CLOSE;
      if (bunch.form() == Form.RING) {
        names.add(ring(rings++));
      } else {
        names.add(
            unlike(close || bunch.size() == 1 ? looking(bunch, seeing) : place(bunch), names));
      }
    }
    return names;
  }

  /** By what it looks at. */
  private static String looking(Bunch bunch, Seeing seeing) {
    if (bunch.form() == Form.CLOSE) {
      return (bunch.size() == 1 ? "close-up of the " : "close-ups of the ")
          + Sentences.part(bunch.part());
    }
    String part = Gathering.main(seeing, bunch.first().view().wells());
    return "view of the " + Sentences.part(part) + " from " + hour(bunch.first());
  }

  private static String place(Bunch bunch) {
    String height = height(bunch.elevation());
    return switch (bunch.form()) {
      case UPWARDS -> "strip upwards at " + hour(bunch.members().get(bunch.size() / 2));
      case ABOVE -> (bunch.pose() == Pose.STANDING ? "top " : "underside ") + height + arc(bunch);
      default -> (arc(bunch).isEmpty() ? "sparse ring " : "arc ") + height + arc(bunch);
    };
  }

  private static String height(Angle elevation) {
    double whole = Num.round(elevation.degrees());
    String side = whole < 0 ? " below" : " above";
    return whole == 0 ? "level" : Numbers.fixed(Math.abs(whole), 0) + "°" + side;
  }

  /** From which hour to which it goes; empty if all round. */
  private static String arc(Bunch bunch) {
    List<Double> turns = new ArrayList<>();
    for (Candidate one : bunch.members()) {
      double full = Bunch.azimuth(one) / (2 * Math.PI);
      turns.add((full - Math.floor(full)) * 2 * Math.PI);
    }
    turns.sort(null);
    double widest = -1;
    double from = 0;
    double to = 0;
    for (int i = 0; i < turns.size(); i++) {
      boolean last = i + 1 == turns.size();
      double next = last ? turns.get(0) + 2 * Math.PI : turns.get(i + 1);
      if (next - turns.get(i) > widest + 1e-9) {
        widest = next - turns.get(i);
        to = turns.get(i);
        from = next;
      }
    }
    if (widest <= GAP) {
      return "";
    }
    // The hours rise clockwise, azimuths the other way.
    int first = Clock.hour(new Angle(to));
    int last = Clock.hour(new Angle(from));
    return first == last
        ? " at " + first + " o'clock"
        : " from " + first + " to " + last + " o'clock";
  }

  private static String hour(Candidate one) {
    return Clock.hour(one.viewpoint().station().azimuth()) + " o'clock";
  }

  /** Ring A for 0, ring B for 1, ring AA after ring Z. */
  static String ring(int index) {
    return "ring " + letters(index);
  }

  private static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? last : letters(index / LETTERS - 1) + last;
  }

  /** The name, with a number behind it where it is taken. */
  static String unlike(String name, List<String> taken) {
    String free = name;
    for (int i = 2; taken.contains(free); i++) {
      free = name + " " + i;
    }
    return free;
  }
}
