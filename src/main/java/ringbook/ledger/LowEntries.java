package ringbook.ledger;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Unit;

/** The lowest ring of all: the camera rests on the table, right way up or turned over. */
final class LowEntries {

  private static final String SINE = "sine of the elevation";

  private LowEntries() {}

  static List<Quantity> entries() {
    return List.of(
        height("low.turnedHeight", "lens of a camera turned over", "z_{\\mathrm{u}}")
            .range(Range.above(0))
            .meaning("Floor to lens when the camera rests on the table, lens end down.")
            .formula("place.tableHeight + kit.lensOffset")
            .checkedBy("test:RingRoutesTest")
            .by(r -> r.si("place.tableHeight") + r.si("kit.lensOffset")),
        height("low.uprightHeight", "lens of a camera right way up", "z_{\\mathrm{o}}")
            .range(Range.above(0))
            .meaning("Floor to lens when the camera rests on the table, lens end up.")
            .formula("place.tableHeight + kit.lensFarOffset")
            .checkedBy("test:RingRoutesTest")
            .by(r -> r.si("place.tableHeight") + r.si("kit.lensFarOffset")),
        height("low.gain", "height gained by turning the camera over", "g_{\\mathrm{u}}")
            .range(Range.any())
            .meaning("How much lower the lens comes when the camera is turned over.")
            .formula("low.uprightHeight - low.turnedHeight")
            .checkedBy("test:RingRoutesTest")
            .by(r -> r.si("low.uprightHeight") - r.si("low.turnedHeight")),
        elevation("low.turnedElevation", "elevation of the camera turned over", "e_{\\mathrm{u}}")
            .range(Range.degrees(-90, 90))
            .meaning("Elevation of a ring with the camera turned over on the table.")
            .formula("asin((low.turnedHeight - ring.middleHeight) / ring.radius)")
            .checkedBy("test:RingRoutesTest")
            .by(r -> elevationOf(r, "low.turnedHeight")),
        elevation("low.uprightElevation", "elevation of the camera right way up", "e_{\\mathrm{o}}")
            .range(Range.degrees(-90, 90))
            .meaning("Elevation of a ring with the camera right way up on the table.")
            .formula("asin((low.uprightHeight - ring.middleHeight) / ring.radius)")
            .checkedBy("test:RingRoutesTest")
            .by(r -> elevationOf(r, "low.uprightHeight")),
        elevation("low.gainAngle", "elevation gained by turning the camera over", "\\Delta e_{u}")
            .range(Range.degrees(-180, 180))
            .meaning("How much flatter the ring becomes when the camera is turned over.")
            .formula("low.uprightElevation - low.turnedElevation")
            .checkedBy("test:RingRoutesTest")
            .by(r -> r.si("low.uprightElevation") - r.si("low.turnedElevation")));
  }

  private static Entry height(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.CENTIMETRE).source("sum of heights");
  }

  private static Entry elevation(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.DEGREE).source(SINE);
  }

  private static double elevationOf(Reckoning r, String height) {
    double sine = (r.si(height) - r.si("ring.middleHeight")) / r.si("ring.radius");
    if (Math.abs(sine) > 1) {
      throw new RefusedException(
          "a camera that rests on the table is "
              + (sine > 0 ? "above" : "below")
              + " every point of the ring's sphere",
          "hold it at the height of the object instead");
    }
    return Num.asin(sine);
  }
}
