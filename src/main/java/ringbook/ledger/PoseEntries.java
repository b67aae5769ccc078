package ringbook.ledger;

import java.util.List;
import ringbook.units.Unit;
import ringbook.units.Whole;

/**
 * The second pose: the object turned upside down, so that its rings see the underside. A ring at
 * elevation e of the second pose sees what a ring at −e of the first would see through the table.
 */
final class PoseEntries {

  private static final String TURNED =
      "elevations change their sign when the object is turned over";

  private PoseEntries() {}

  static List<Quantity> entries() {
    return List.of(
        Entry.of("pose.apart", "turn between the poses")
            .meaning(
                "Turn, on the object, between the lowest ring of the first pose and the lowest"
                    + " ring of the second; 0 where they overlap.")
            .symbol("\\Delta e_{\\mathrm{p}}", Unit.DEGREE)
            .range(Range.degrees(0, 180))
            .rounded(Rounding.decimals(0))
            .formula("max(0, 2 * rings.lowest)")
            .source(TURNED)
            .checkedBy("test:RingRoutesTest")
            .by(r -> Math.max(0, 2 * r.si("rings.lowest"))),
        Entry.of("pose.band", "band common to both poses")
            .meaning("Range of elevations, on the object, from which both poses are photographed.")
            .symbol("\\beta_{\\mathrm{p}}", Unit.DEGREE)
            .range(Range.degrees(0, 180))
            .rounded(Rounding.decimals(0))
            .formula(
                "max(0, min(rings.highest, -rings.lowest) - max(rings.lowest, -rings.highest))")
            .source(TURNED)
            .checkedBy("test:RingRoutesTest")
            .by(PoseEntries::band),
        Entry.of("pose.tied", "poses tied to each other?")
            .meaning(
                "Whether the poses overlap or lie no farther apart than matches bear, provided the"
                    + " background is masked out.")
            .symbol("\\mathrm{tied}_{\\mathrm{p}}", Unit.ANSWER)
            .formula("pose.apart <= aim.stepLimit")
            .source("the same limit holds as round the ring")
            .checkedBy("test:RingRoutesTest")
            .by(r -> Quantity.atMost(r.si("pose.apart"), r.si("aim.stepLimit"))),
        Entry.of("pose.wide", "common band wide enough?")
            .meaning("Whether the common band holds a whole step from ring to ring: the safe case.")
            .symbol("\\mathrm{wide}", Unit.ANSWER)
            .formula("pose.band >= rings.spacing")
            .source("common practice, no source")
            .checkedBy("test:RingRoutesTest")
            .by(r -> Quantity.atMost(r.si("rings.spacing"), r.si("pose.band"))),
        count("pose.rings", "rings of the second pose", "N_{\\mathrm{p}}")
            .range(Range.wholeFrom(1))
            .meaning(
                "Rings of the second pose: the elevations the first pose did not have, and one"
                    + " ring more to tie the two.")
            .formula(
                "max(0, ceil((rings.highest + min(rings.lowest, rings.highest)) /"
                    + " aim.ringSpacing)) + 1")
            .source(TURNED)
            .checkedBy("test:RingRoutesTest")
            .by(PoseEntries::rings),
        count("pose.photos", "photographs of the second pose", "n_{\\mathrm{pose}}")
            .range(Range.wholeFrom(4))
            .meaning("Its rings and its views of the underside.")
            .formula("pose.rings * ring.photos * aim.repeats + rings.topViews")
            .source("count")
            .checkedBy("test:RingRoutesTest")
            .by(
                r ->
                    r.si("pose.rings") * r.si("ring.photos") * r.si("aim.repeats")
                        + r.si("rings.topViews")));
  }

  private static double band(Reckoning r) {
    double low = r.si("rings.lowest");
    double high = r.si("rings.highest");
    return Math.max(0, Math.min(high, -low) - Math.max(low, -high));
  }

  private static double rings(Reckoning r) {
    double low = r.si("rings.lowest");
    double high = r.si("rings.highest");
    double unseen = high + Math.min(low, high);
    return Math.max(0, Whole.up(unseen / r.si("aim.ringSpacing"))) + 1;
  }

  private static Entry count(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PIECE).rounded(Rounding.decimals(0));
  }
}
