package ringbook.plans;

import java.util.List;
import ringbook.shots.Pose;
import ringbook.units.Lengths;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * A plan as a learner writes it on a sheet: {@code rings: 24 at 15°, 24 at 30°; low ring: 24; top:
 * 3; turned over: 20 at 15°}.
 *
 * @param runs in the order of shooting, at least one
 */
public record WrittenPlan(List<WrittenRun> runs) {

  public WrittenPlan {
    runs = List.copyOf(runs);
  }

  /** What {@code text} says; distances may be in any unit. */
  public static PlanReading read(String text) {
    return read(text, Lengths.METRIC);
  }

  /** The same for people who measure in {@code lengths}: examples in messages are in them. */
  public static PlanReading read(String text, Lengths lengths) {
    return new PlanReader(text, lengths).read();
  }

  /** A distance as it may stand in a plan. */
  public static String example(Lengths lengths) {
    return lengths.either("1.1 m", "43 in");
  }

  /** How many photographs in all, where none is left out. */
  public int photos() {
    int photos = 0;
    for (WrittenRun run : runs) {
      photos += run.photos();
    }
    return photos;
  }

  /** The plan in this notation, in its usual form, in metres; reading it gives the same plan. */
  public String text() {
    return text(Lengths.METRIC);
  }

  /** The same with distances in metres, or in inches to the quarter. */
  public String text(Lengths lengths) {
    StringBuilder text = new StringBuilder();
    Pose pose = Pose.STANDING;
    WrittenRun before = null;
    for (WrittenRun run : runs) {
      boolean turned = run.pose() != pose;
      pose = run.pose();
      if (before != null && !turned && before.kind() == run.kind()) {
        text.append(", ");
      } else {
        text.append(before == null ? "" : "; ");
        text.append(!turned ? "" : pose == Pose.STANDING ? "standing: " : "turned over: ");
        boolean plain = turned && run.kind() == WrittenRun.Kind.RING;
        text.append(plain ? "" : run.kind().label() + ": ");
      }
      append(run, lengths, text);
      before = run;
    }
    return text.toString();
  }

  private static void append(WrittenRun run, Lengths lengths, StringBuilder text) {
    text.append(run.photos());
    WrittenRun.Where where = run.where();
    if (where.elevation().isPresent()) {
      text.append(" at ").append(Numbers.shortest(where.elevation().getAsDouble())).append('°');
    }
    WrittenRun.Directions directions = where.directions();
    if (directions.sort() != WrittenRun.Sort.ALL) {
      text.append(' ').append(directions.sort().word()).append(' ');
      text.append(Numbers.shortest(directions.from())).append('°');
    }
    if (directions.sort() == WrittenRun.Sort.OVER || directions.sort() == WrittenRun.Sort.WITHOUT) {
      text.append(" to ").append(Numbers.shortest(directions.to())).append('°');
    }
    if (where.standoff().isPresent()) {
      double metres = where.standoff().getAsDouble();
      double quarters = Math.floor(4 * Unit.INCH.fromSi(metres) + 0.5);
      text.append(" at ")
          .append(
              lengths.either(
                  Numbers.shortest(metres) + " m", Numbers.shortest(quarters / 4) + " in"));
    }
  }
}
