package ringbook.sheets;

import ringbook.geometry.Vec3;
import ringbook.plans.Clock;
import ringbook.plans.PlanWords;
import ringbook.shots.Leg;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Lengths;
import ringbook.units.Num;

/** A plan as text to read and to tick off: a table for each leg. */
public final class ShotText {

  private ShotText() {}

  /** The whole text; ends with a line end. */
  public static String of(ShotPlan plan, Lengths lengths) {
    PlanWords words = PlanWords.of(plan, lengths);
    StringBuilder out = new StringBuilder();
    for (Leg leg : plan.legs()) {
      out.append(out.length() == 0 ? "" : "\n");
      out.append(PlanWords.title(leg)).append('\n');
      if (!leg.why().isEmpty()) {
        out.append("  ").append(leg.why()).append('\n');
      }
      out.append("  ").append(words.setup(leg)).append('\n');
      table(leg, words, out);
    }
    return out.toString();
  }

  private static void table(Leg leg, PlanWords words, StringBuilder out) {
    TextTable table =
        new TextTable(
            "   ", "no.", "clock", "azimuth", "lens height", "along floor", "to the spot", "aim");
    for (Station station : leg.stations()) {
      Vec3 lens = station.position();
      table.row(
          "[ ]",
          String.valueOf(station.number()),
          Clock.of(station.azimuth()),
          PlanWords.azimuth(station),
          words.length(lens.z()),
          words.length(Num.hypot(lens.x(), lens.y())),
          words.length(station.target().minus(lens).norm()),
          words.aim(station));
    }
    table.toString().lines().forEach(line -> out.append("  ").append(line).append('\n'));
  }
}
