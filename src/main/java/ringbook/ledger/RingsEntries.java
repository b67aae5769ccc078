package ringbook.ledger;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** How many rings fit between the lowest and the highest lens, and the views over the top. */
final class RingsEntries {

  private static final String PRACTICE =
      "equal steps of elevation; the step itself is common practice, no source";

  private RingsEntries() {}

  static List<Quantity> entries() {
    return List.of(
        lowest(),
        highest(),
        count(),
        spacing(),
        tied(),
        photos(),
        topViews(),
        topHeight(),
        topReachable());
  }

  private static Quantity lowest() {
    return elevation("rings.lowest", "elevation of the lowest ring", "e_{1}")
        .range(Range.degrees(-90, 90))
        .meaning(
            "Elevation with the lens as low as the group can hold it, but not below a camera that"
                + " rests on the table.")
        .formula(
            "asin(max(-1, (max(place.lowestLens, place.tableHeight + kit.lensOffset) -"
                + " ring.middleHeight) / ring.radius))")
        .source("sine of the elevation")
        .checkedBy("test:RingRoutesTest")
        .by(RingsEntries::lowestOf);
  }

  private static double lowestOf(Reckoning r) {
    double height =
        Math.max(r.si("place.lowestLens"), r.si("place.tableHeight") + r.si("kit.lensOffset"));
    double sine = (height - r.si("ring.middleHeight")) / r.si("ring.radius");
    if (sine > 1) {
      throw new RefusedException(
          "the lens cannot come low enough for any ring at this distance",
          "put the object higher or the camera lower");
    }
    return Num.asin(Math.max(-1, sine));
  }

  private static Quantity highest() {
    return elevation("rings.highest", "elevation of the highest ring", "e_{N}")
        .range(Range.degrees(-90, 90))
        .meaning("The highest ring wanted, or the highest the group can reach if that is lower.")
        .formula("min(aim.topElevation, ring.highestElevation)")
        .source("the lower of the two")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Math.min(r.si("aim.topElevation"), r.si("ring.highestElevation")));
  }

  private static Entry elevation(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.DEGREE).rounded(Rounding.decimals(0));
  }

  private static Quantity count() {
    return Entry.of("rings.count", "number of rings")
        .meaning("Fewest rings from the lowest to the highest with no wider step than wanted.")
        .symbol("N_{\\mathrm{r}}", Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0))
        .formula("ceil((rings.highest - rings.lowest) / aim.ringSpacing) + 1")
        .source(PRACTICE)
        .checkedBy("test:RingRoutesTest")
        .by(
            r -> {
              double range = r.si("rings.highest") - r.si("rings.lowest");
              if (range < 0) {
                throw noRing(r);
              }
              return Whole.up(range / r.si("aim.ringSpacing")) + 1;
            });
  }

  private static RefusedException noRing(Reckoning r) {
    return new RefusedException(
        "the lowest ring within reach lies above the highest one",
        "the highest ring must be at "
            + Numbers.fixed(Math.ceil(Unit.DEGREE.fromSi(r.si("rings.lowest"))), 0)
            + "° or more");
  }

  private static Quantity spacing() {
    return Entry.of("rings.spacing", "step from ring to ring")
        .meaning("The step of elevation when the rings are spread evenly; 0 for a single ring.")
        .symbol("\\Delta e", Unit.DEGREE)
        .range(Range.degrees(0, 60))
        .formula("(rings.highest - rings.lowest) / max(1, rings.count - 1)")
        .source("definition")
        .checkedBy("test:RingRoutesTest")
        .by(
            r ->
                (r.si("rings.highest") - r.si("rings.lowest"))
                    / Math.max(1, r.si("rings.count") - 1));
  }

  private static Quantity tied() {
    return Entry.of("rings.tied", "rings tied to each other?")
        .meaning("Whether the step from ring to ring is no larger than matches bear.")
        .symbol("\\mathrm{tied}", Unit.ANSWER)
        .formula("rings.spacing <= aim.stepLimit")
        .source("the same limit holds up and down as round")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Quantity.atMost(r.si("rings.spacing"), r.si("aim.stepLimit")));
  }

  private static Quantity photos() {
    return count("rings.photos", "photographs in all rings", "n_{\\mathrm{r}}")
        .range(Range.wholeFrom(3))
        .meaning("Photographs of all rings together.")
        .formula("rings.count * ring.photos * aim.repeats")
        .source("count")
        .checkedBy("ORB-02")
        .by(r -> r.si("rings.count") * r.si("ring.photos") * r.si("aim.repeats"));
  }

  private static Quantity topViews() {
    return count("rings.topViews", "photographs over the top", "n_{\\mathrm{t}}")
        .range(Range.wholeFrom(1))
        .meaning(
            "Photographs in an arc from one side of the highest ring over the top to the other"
                + " side, with steps as from ring to ring; they look into an open rim.")
        .formula("max(1, ceil((180deg - 2 * rings.highest) / aim.ringSpacing) - 1)")
        .source(PRACTICE)
        .checkedBy("test:RingRoutesTest")
        .by(
            r ->
                Math.max(
                    1,
                    Whole.up((Math.PI - 2 * r.si("rings.highest")) / r.si("aim.ringSpacing")) - 1));
  }

  private static Entry count(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PIECE).rounded(Rounding.decimals(0));
  }

  private static Quantity topHeight() {
    return Entry.of("rings.topHeight", "lens straight above the object")
        .meaning("Floor to lens in the middle of the arc over the top.")
        .symbol("z_{\\mathrm{top}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("ring.middleHeight + ring.radius")
        .source("definition")
        .checkedBy("test:RingRoutesTest")
        .by(r -> r.si("ring.middleHeight") + r.si("ring.radius"));
  }

  private static Quantity topReachable() {
    return Entry.of("rings.topReachable", "top within reach?")
        .meaning(
            "Whether the group can hold the lens straight above the object, feet on the floor.")
        .symbol("\\mathrm{top}", Unit.ANSWER)
        .formula("rings.topHeight <= place.highestLens")
        .source("comparison")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Quantity.atMost(r.si("rings.topHeight"), r.si("place.highestLens")));
  }
}
