package ringbook.ledger;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** How deep a hole may be, and what a thin edge needs whose two sides are never seen together. */
final class EdgeEntries {

  private EdgeEntries() {}

  static List<Quantity> hole() {
    return List.of(
        Entry.of("hole.deepest", "deepest hole that one end shows")
            .meaning("How deep a hole as wide as this one may be for its wall to be seen well.")
            .symbol("h_{\\max}", Unit.CENTIMETRE)
            .range(Range.above(0))
            .formula("subject.holeDiameter / tan(hole.bestAngle)")
            .source("right-angled triangles, lines of sight that run alike")
            .checkedBy("test:EdgeRoutesTest")
            .by(r -> r.si("subject.holeDiameter") / Num.tan(r.si("hole.bestAngle"))));
  }

  static List<Quantity> strip() {
    return List.of(
        Entry.of("strip.edgeBlind", "turn that sees neither side of an edge well")
            .meaning(
                "Between the last direction that sees one side of a flat, thin part well and the"
                    + " first that sees the other: within it both are seen too slanted.")
            .symbol("\\beta_{\\mathrm{e}}", Unit.DEGREE)
            .range(Range.degrees(0, 160))
            .rounded(Rounding.decimals(0))
            .formula("180deg - 2 * aim.incidenceLimit")
            .source("angles between the normals of the two sides and the line of sight")
            .checkedBy("test:EdgeRoutesTest")
            .by(r -> Math.PI - 2 * r.si("aim.incidenceLimit")),
        count("strip.edgeLost", "stations that see neither side well", "n_{\\mathrm{lost,e}}")
            .range(Range.wholeFrom(0))
            .meaning("How many steps of the ring fit into that turn.")
            .formula("floor(strip.edgeBlind / ring.realStep)")
            .source("count of equal turns")
            .by(r -> Whole.down(r.si("strip.edgeBlind") / r.si("ring.realStep"))),
        count("strip.edgePhotos", "photographs round an edge", "n_{\\mathrm{edge}}")
            .range(Range.wholeFrom(2))
            .meaning(
                "Photographs from one side round the edge to the other, both ends counted, at half"
                    + " the real turn.")
            .formula("ceil(strip.edgeBlind / (ring.realStep / 2)) + 1")
            .source("count of equal turns; half the turn is common practice, no source")
            .by(r -> Whole.up(r.si("strip.edgeBlind") / (r.si("ring.realStep") / 2)) + 1));
  }

  private static Entry count(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.PIECE)
        .rounded(Rounding.decimals(0))
        .checkedBy("test:EdgeRoutesTest");
  }
}
