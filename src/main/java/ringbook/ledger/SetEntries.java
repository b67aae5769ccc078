package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.PointPrecision;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.shots.Ring;
import ringbook.shots.Station;
import ringbook.units.Unit;

/** How precisely all rings together fix a point in the middle, for comparison with one ring. */
final class SetEntries {

  private static final String[] INPUTS = {
    "ring.middleHeight",
    "ring.radius",
    "ring.photos",
    "rings.lowest",
    "rings.highest",
    "rings.count",
    "precision.spot",
    "aim.repeats"
  };

  private SetEntries() {}

  static List<Quantity> entries() {
    return List.of(
        sigma("precision.setAcross", "level precision of all rings", "\\sigma_{\\mathrm{XY,all}}")
            .range(Range.above(0))
            .meaning("Level standard deviation of a point that all photographs of all rings see.")
            .checkedBy("test:JobPropertiesTest")
            .by(r -> Math.sqrt(middle(r).along(new Vec3(1, 0, 0)))),
        sigma("precision.setUp", "upright precision of all rings", "\\sigma_{\\mathrm{z,all}}")
            .range(Range.above(0))
            .meaning("Upright standard deviation of a point that all photographs of all rings see.")
            .checkedBy("test:JobPropertiesTest")
            .by(r -> Math.sqrt(middle(r).along(Vec3.UP))),
        Entry.of("precision.setGain", "how much the other rings help")
            .meaning("Upright standard deviation from this ring alone over that from all rings.")
            .symbol("k_{\\mathrm{all}}", Unit.ONE)
            .range(Range.above(0))
            .rounded(Rounding.significant(2))
            .formula("precision.ringUp / precision.setUp")
            .source("definition")
            .checkedBy("test:PrecisionRoutesTest")
            .by(r -> r.si("precision.ringUp") / r.si("precision.setUp")));
  }

  private static Entry sigma(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.MILLIMETRE)
        .rounded(Rounding.significant(2))
        .rule("inverse of the summed weights of all lines of sight of all rings", INPUTS)
        .source("least squares: covariance of lines of sight");
  }

  private static Spread middle(Reckoning r) {
    double sigma = r.si("precision.spot") / Math.sqrt(r.si("aim.repeats"));
    Ring ring =
        new Ring(
            r.length("ring.middleHeight"),
            r.length("ring.radius"),
            r.angle("rings.lowest"),
            (int) r.si("ring.photos"));
    List<PointPrecision.Ray> rays = new ArrayList<>();
    int count = (int) r.si("rings.count");
    for (Ring each : ring.stack(r.angle("rings.lowest"), r.angle("rings.highest"), count)) {
      for (Station station : each.stations()) {
        rays.add(new PointPrecision.Ray(station.view(), sigma));
      }
    }
    return PointPrecision.covariance(rays)
        .orElseThrow(
            () -> new RefusedException("all lines of sight run alike", "add a lower ring"));
  }
}
