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
            unlike(
                close || bunch.size() == 1 ? looking(bunch, seeing) : place(bunch), bunch, names));
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
    Arc arc = Arc.of(bunch.members());
    boolean closed = bunch.size() > 2 && Steps.of(bunch.members()).gaps().isEmpty();
    // The hours rise clockwise, azimuths the other way.
    return arc.isRound() || closed
        ? ""
        : " " + hours(arc.from() + arc.width(), arc.from(), "from ", " to ");
  }

  /** {@code from 3 to 5 o'clock}, {@code at 4 o'clock}: between two azimuths. */
  static String hours(double first, double last, String from, String to) {
    int one = Clock.hour(new Angle(first));
    int other = Clock.hour(new Angle(last));
    return one == other ? "at " + one + " o'clock" : from + one + to + other + " o'clock";
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

  /** The name, with what tells it from those before it: how the object lies, height, time. */
  private static String unlike(String name, Bunch bunch, List<String> taken) {
    List<String> more = new ArrayList<>();
    if (bunch.pose() == Pose.TURNED_OVER) {
      more.add(", turned over");
    }
    more.add(", " + height(bunch.elevation()));
    more.add(", from " + Clock.of(bunch.first().viewpoint().station().azimuth()));
    if (!taken.contains(name)) {
      return name;
    }
    for (String words : more) {
      if (!name.contains(words) && !taken.contains(name + words)) {
        return name + words;
      }
    }
    String all = name + String.join("", more);
    String free = all;
    for (int i = 0; taken.contains(free); i++) {
      free = all + ", once more".repeat(i + 1);
    }
    return free;
  }
}
