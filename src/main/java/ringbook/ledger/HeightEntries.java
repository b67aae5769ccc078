package ringbook.ledger;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Unit;

/** What rings at other heights see of level tops and overhangs, and where their lens is. */
final class HeightEntries {

  private static final String PARALLEL =
      "angle between surface normal and line of sight, from so far away that all lines of sight run"
          + " alike";

  private HeightEntries() {}

  static List<Quantity> ring() {
    return List.of(
        angle("ring.wallSlant", "slant of an upright wall", "i_{\\mathrm{wall}}")
            .range(Range.degrees(0, 90))
            .meaning("How slanted the ring sees an upright wall that faces it; 0 is squarely.")
            .formula("abs(aim.elevation)")
            .source(PARALLEL)
            .checkedBy("test:HeightRoutesTest")
            .by(r -> Math.abs(r.si("aim.elevation"))),
        angle("ring.topSlant", "slant of a level top", "i_{\\mathrm{top}}")
            .range(Range.degrees(0, 180))
            .meaning("How slanted the ring sees a level top; from 90° on it does not see it.")
            .formula("90deg - aim.elevation")
            .source(PARALLEL)
            .checkedBy("test:HeightRoutesTest")
            .by(r -> Math.PI / 2 - r.si("aim.elevation")));
  }

  static List<Quantity> rings() {
    return List.of(
        length("rings.lowestHeight", "lens height of the lowest ring", "z_{1}")
            .meaning("Floor to lens on the lowest ring.")
            .formula("ring.middleHeight + ring.radius * sin(rings.lowest)")
            .by(r -> height(r, "rings.lowest")),
        length("rings.highestHeight", "lens height of the highest ring", "z_{N}")
            .meaning("Floor to lens on the highest ring.")
            .formula("ring.middleHeight + ring.radius * sin(rings.highest)")
            .by(r -> height(r, "rings.highest")),
        length("rings.highestFloor", "distance on the floor of the highest ring", "D_{N}")
            .meaning("Radius of the circle on the floor below the highest ring.")
            .formula("ring.radius * cos(rings.highest)")
            .by(r -> r.si("ring.radius") * Num.cos(r.si("rings.highest"))),
        angle("rings.topSlant", "slant of a level top from the highest ring", "i_{N}")
            .range(Range.degrees(0, 180))
            .meaning("How slanted the highest ring sees a level top.")
            .formula("90deg - rings.highest")
            .source(PARALLEL)
            .checkedBy("test:HeightRoutesTest")
            .by(r -> Math.PI / 2 - r.si("rings.highest")),
        Entry.of("rings.topSeen", "level top seen well?")
            .meaning("Whether the highest ring sees a level top no more slanted than the limit.")
            .symbol("\\mathrm{top}_{N}", Unit.ANSWER)
            .formula("rings.topSlant <= aim.incidenceLimit")
            .source("comparison")
            .checkedBy("test:HeightRoutesTest")
            .by(r -> Quantity.atMost(r.si("rings.topSlant"), r.si("aim.incidenceLimit"))),
        angle("rings.overhang", "overhang seen well from the lowest ring", "o_{1}")
            .range(Range.degrees(-80, 90))
            .meaning(
                "How far down a surface may face and still be seen well from the lowest ring: 0 is"
                    + " an upright wall, 90° faces the table.")
            .formula("min(90deg, aim.incidenceLimit - rings.lowest)")
            .source(PARALLEL)
            .checkedBy("test:HeightRoutesTest")
            .by(r -> Math.min(Math.PI / 2, r.si("aim.incidenceLimit") - r.si("rings.lowest"))));
  }

  private static double height(Reckoning r, String elevation) {
    return r.si("ring.middleHeight") + r.si("ring.radius") * Num.sin(r.si(elevation));
  }

  private static Entry length(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.CENTIMETRE)
        .range(Range.from(0))
        .source("plane and spherical trigonometry")
        .checkedBy("test:HeightRoutesTest");
  }

  private static Entry angle(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.DEGREE).rounded(Rounding.decimals(0));
  }
}
