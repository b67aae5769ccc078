package ringbook.ledger;

import java.util.List;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** The shooting day: runs and slates, time and storage, and the smaller plan for a short day. */
final class DayEntries {

  private static final String COUNT = "count";
  private static final String PROOF = "test:LaterRoutesTest";

  private DayEntries() {}

  static List<Quantity> entries() {
    return List.of(
        ringTime(), runs(), slates(), files(), day(), holds(), fewest(), fewestTime(), fewestDay());
  }

  private static Quantity ringTime() {
    return minutes("job.ringTime", "time for one ring", "t_{\\mathrm{r}}")
        .meaning("Time at the camera for one ring, at the pace stated.")
        .formula("ring.photos * aim.repeats * aim.secondsPerPhoto")
        .source("count times time")
        .by(r -> r.si("ring.photos") * r.si("aim.repeats") * r.si("aim.secondsPerPhoto"));
  }

  private static Quantity runs() {
    return count("job.runs", "runs of photographs", "n_{\\mathrm{u}}", 2)
        .meaning(
            "Runs that are shot without a break: each ring, the views over the top, and the same"
                + " for the second pose.")
        .formula("rings.count + 1 + (aim.poses - 1) * (pose.rings + 1)")
        .source(COUNT)
        .by(DayEntries::runsOf);
  }

  private static double runsOf(Reckoning r) {
    return r.si("rings.count") + 1 + (r.si("aim.poses") - 1) * (r.si("pose.rings") + 1);
  }

  private static Quantity slates() {
    return count("job.slates", "slates", "n_{\\mathrm{s}}", 3)
        .meaning("A photograph of the slate before each run, and one at the very end.")
        .formula("job.runs + 1")
        .source("common practice, no source")
        .by(r -> r.si("job.runs") + 1);
  }

  private static Quantity files() {
    return count("job.files", "files on the camera", "n_{\\mathrm{f}}", 7)
        .meaning("All photographs with the spare ones, and the slates.")
        .formula("job.photos + job.slates")
        .source(COUNT)
        .by(r -> r.si("job.photos") + r.si("job.slates"));
  }

  private static Quantity day() {
    return minutes("job.day", "time for the whole session", "t_{\\mathrm{d}}")
        .meaning(
            "Setting up, shooting, and checking with retakes; each of them takes as long as the"
                + " shooting.")
        .formula("3 * job.time")
        .source("common practice for a first time, no source")
        .by(r -> 3 * r.si("job.time"));
  }

  private static Quantity holds() {
    return count("job.holds", "photographs that the free storage holds", "n_{\\mathrm{m}}", 0)
        .meaning("Whole files that fit into the free storage.")
        .formula("floor(kit.freeStorage / kit.fileSize)")
        .source(COUNT)
        .by(r -> Whole.down(r.si("kit.freeStorage") / r.si("kit.fileSize")));
  }

  private static Quantity fewest() {
    return count("job.fewest", "photographs of the smaller plan", "n_{\\mathrm{B}}", 4)
        .meaning(
            "All rings at the largest turn with reliable matches, one photograph a station, the"
                + " views over the top, and none to spare.")
        .formula(
            "rings.count * ring.fewest + rings.topViews + (aim.poses - 1) * (pose.rings *"
                + " ring.fewest + rings.topViews)")
        .source(COUNT)
        .by(
            r -> {
              double ring = r.si("ring.fewest");
              double top = r.si("rings.topViews");
              double second = r.si("pose.rings") * ring + top;
              return r.si("rings.count") * ring + top + (r.si("aim.poses") - 1) * second;
            });
  }

  private static Quantity fewestTime() {
    return minutes("job.fewestTime", "time for the smaller plan", "t_{\\mathrm{B}}")
        .meaning("Time at the camera for it.")
        .formula("job.fewest * aim.secondsPerPhoto")
        .source("count times time")
        .by(r -> r.si("job.fewest") * r.si("aim.secondsPerPhoto"));
  }

  private static Quantity fewestDay() {
    return minutes("job.fewestDay", "session of the smaller plan", "t_{\\mathrm{d,B}}")
        .meaning("Its shooting, as long again to set up, and as long again to check.")
        .formula("3 * job.fewestTime")
        .source("common practice for a first time, no source")
        .by(r -> 3 * r.si("job.fewestTime"));
  }

  private static Entry minutes(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.MINUTE)
        .range(Range.above(0))
        .rounded(Rounding.decimals(0))
        .checkedBy(PROOF);
  }

  private static Entry count(String key, String name, String symbol, int least) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.PIECE)
        .range(Range.wholeFrom(least))
        .rounded(Rounding.decimals(0))
        .checkedBy(PROOF);
  }
}
