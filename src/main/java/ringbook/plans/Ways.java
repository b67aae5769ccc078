package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Num;

/** How a person gets from one station to the next, in words. */
final class Ways {

  /** Farther round than that nobody takes it for one step. */
  private static final Angle STEP = Angle.ofDegrees(45);

  private static final double SAME_DIRECTION = Angle.ofDegrees(1).radians();

  private final LegWords words;

  Ways(LegWords words) {
    this.words = words;
  }

  /** To the first station of all. */
  String to(Station station) {
    return "Stand at "
        + Clock.of(station.azimuth())
        + ", "
        + words.floor(station)
        + " from the middle along the floor.";
  }

  /** From one station to another: where the feet go, and the lens up or down. */
  String between(Station from, Station to) {
    List<String> parts = new ArrayList<>();
    String feet = feet(from, to);
    if (!feet.isEmpty()) {
      parts.add(feet);
    }
    double up = to.position().z() - from.position().z();
    if (!words.height(from).equals(words.height(to))) {
      parts.add("lens " + words.words().length(Math.abs(up)) + (up > 0 ? " up" : " down"));
    }
    String way = parts.isEmpty() ? "stay where you are" : String.join(", ", parts);
    return Sentences.capital(way) + ".";
  }

  private String feet(Station from, Station to) {
    Vec3 step = to.position().minus(from.position());
    double flat = Num.hypot(step.x(), step.y());
    String length = words.words().length(flat);
    if (length.equals(words.words().length(0))) {
      return "";
    }
    double turn = Bunch.turn(from.azimuth().radians(), to.azimuth().radians());
    if (Math.abs(turn) < SAME_DIRECTION) {
      boolean in = LegWords.onFloor(to) < LegWords.onFloor(from);
      return "straight " + (in ? "in, " : "back, ") + length;
    }
    if (Math.abs(turn) <= STEP.radians() && words.floor(from).equals(words.floor(to))) {
      return "one step to the " + (turn > 0 ? "right: " : "left: ") + length;
    }
    return "walk to "
        + Clock.of(to.azimuth())
        + ", "
        + words.floor(to)
        + " from the middle along the floor";
  }

  /**
   * What is done between two legs, before the slate of the second; the first has none before it.
   */
  List<String> into(Leg before, Leg leg) {
    List<String> todo = new ArrayList<>();
    Station first = leg.stations().get(0);
    if (before == null) {
      todo.add("Lens " + words.height(first) + " above the floor.");
      todo.add(to(first));
      return todo;
    }
    Station last = before.stations().get(before.stations().size() - 1);
    if (before.setup().pose() != leg.setup().pose()) {
      boolean over = leg.setup().pose() == Pose.TURNED_OVER;
      todo.add(over ? "Turn the object over, on the same spot." : "Stand the object up again.");
    }
    if (!words.height(last).equals(words.height(first))) {
      boolean up = first.position().z() > last.position().z();
      todo.add((up ? "Raise" : "Lower") + " the lens to " + words.height(first) + ".");
    }
    String feet = feet(last, first);
    if (!feet.isEmpty()) {
      todo.add(Sentences.capital(feet) + ".");
    }
    String focus = words.words().length(leg.setup().focus().metres());
    if (!focus.equals(words.words().length(before.setup().focus().metres()))) {
      todo.add("Focus at " + focus + ", then lock it again.");
    }
    return todo;
  }
}
