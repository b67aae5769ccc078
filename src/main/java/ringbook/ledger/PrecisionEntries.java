package ringbook.ledger;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.PointPrecision;
import ringbook.geometry.Spread;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Unit;
import ringbook.units.Whole;

/**
 * How precisely the photographs of the ring fix a point, as standard deviations. Precision only:
 * errors of the lens model and of the scale come on top.
 */
final class PrecisionEntries {

  private static final String RING =
      "covariance of lines of sight evenly spread on a ring, summed in closed form";

  private PrecisionEntries() {}

  static List<Quantity> entries() {
    return List.of(
        spot(),
        pairDepth(),
        pairAcross(),
        ringAcross(),
        ringUp(),
        networkFactor(),
        mean(),
        wallDepth(),
        wallSize(),
        parts(),
        enough());
  }

  private static Entry sigma(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.MILLIMETRE).rounded(Rounding.significant(2));
  }

  private static Quantity spot() {
    return sigma("precision.spot", "one picture coordinate on the object", "s_{\\mathrm{o}}")
        .range(Range.above(0))
        .meaning(
            "Standard deviation of one coordinate of a spot in one photograph, carried to the"
                + " middle of the object.")
        .formula("aim.pointing * distance.samplingMiddle")
        .source("pixels times object size of a pixel")
        .checkedBy("test:PrecisionRoutesTest")
        .by(r -> r.si("aim.pointing") * r.si("distance.samplingMiddle"));
  }

  private static Quantity pairDepth() {
    return sigma("precision.pairDepth", "depth from two neighbours", "\\sigma_{D}")
        .range(Range.above(0))
        .meaning("Standard deviation of the depth that two neighbours of the ring alone give.")
        .formula("precision.spot / (sqrt(2) * sin(ring.rayAngle / 2))")
        .source("covariance of two lines of sight")
        .checkedBy("test:PrecisionRoutesTest", "test:PointPrecisionTest")
        .by(
            r ->
                PointPrecision.convergentDepth(r.length("precision.spot"), r.angle("ring.rayAngle"))
                    .metres());
  }

  private static Quantity pairAcross() {
    return sigma("precision.pairAcross", "up and down from two neighbours", "\\sigma_{\\perp}")
        .range(Range.above(0))
        .meaning("Standard deviation across the plane of the two lines of sight.")
        .formula("precision.spot / sqrt(2)")
        .source("mean of two measurements")
        .checkedBy("test:PrecisionRoutesTest")
        .by(r -> r.si("precision.spot") / Math.sqrt(2));
  }

  private static Quantity ringAcross() {
    return sigma(
            "precision.ringAcross", "level precision in the middle of the ring", "\\sigma_{XY}")
        .range(Range.above(0))
        .meaning("Level standard deviation of a point that all photographs of the ring see.")
        .formula(
            "precision.spot / sqrt(ring.photos * aim.repeats * (1 - cos(aim.elevation) ^ 2 / 2))")
        .source(RING)
        .checkedBy("test:CameraLibraryTest", "NET-01")
        .by(
            r ->
                PointPrecision.ringAcross(
                        r.length("precision.spot"), rays(r), r.angle("aim.elevation"))
                    .metres());
  }

  private static Quantity ringUp() {
    return sigma("precision.ringUp", "upright precision in the middle of the ring", "\\sigma_{z}")
        .range(Range.above(0))
        .meaning(
            "Upright standard deviation of a point that all photographs of the ring see; worse the"
                + " steeper the ring.")
        .formula("precision.spot / sqrt(ring.photos * aim.repeats * cos(aim.elevation) ^ 2)")
        .source(RING)
        .checkedBy("test:CameraLibraryTest", "NET-01")
        .by(
            r ->
                PointPrecision.ringUp(r.length("precision.spot"), rays(r), r.angle("aim.elevation"))
                    .metres());
  }

  private static double rays(Reckoning r) {
    return r.si("ring.photos") * r.si("aim.repeats");
  }

  private static Quantity networkFactor() {
    return Entry.of("precision.network", "strength of the ring as a network")
        .meaning(
            "Mean standard deviation of a point in the middle over that of one picture coordinate;"
                + " the smaller the better.")
        .symbol("q_{\\mathrm{net}}", Unit.ONE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula(
            "sqrt((2 / (1 - cos(aim.elevation) ^ 2 / 2) + 1 / cos(aim.elevation) ^ 2) / (3 *"
                + " ring.photos))")
        .source(RING)
        .checkedBy("NET-02", "NET-03")
        .by(r -> PointPrecision.networkFactor(r.si("ring.photos"), r.angle("aim.elevation")));
  }

  private static Quantity mean() {
    return sigma("precision.mean", "mean precision of a point", "\\sigma_{\\mathrm{m}}")
        .range(Range.above(0))
        .meaning(
            "Root mean square of the three standard deviations of a point that all photographs of"
                + " the ring see.")
        .formula("precision.network * precision.spot / sqrt(aim.repeats)")
        .source("Fraser's rule (Photogrammetric Engineering and Remote Sensing, 1984), from memory")
        .checkedBy("NET-05", "NET-06")
        .by(
            r ->
                PointPrecision.mean(
                        r.si("precision.network"), r.length("precision.spot"), r.si("aim.repeats"))
                    .metres());
  }

  private static final String[] WALL = {
    "ring.radius",
    "ring.realStep",
    "ring.halfArc",
    "aim.elevation",
    "aim.pointing",
    "aim.repeats",
    "distance.turningWidth",
    "kit.focalLength",
    "kit.pixelPitch"
  };

  private static Quantity wallDepth() {
    return sigma("precision.wallDepth", "depth precision on the wall", "\\sigma_{\\mathrm{d}}")
        .range(Range.above(0))
        .meaning(
            "Standard deviation, square to the wall, of a spot at half height, from the stations"
                + " that see it well.")
        .rule("inverse of the summed weights of all lines of sight within the limit", WALL)
        .source("least squares: covariance of lines of sight")
        .checkedBy("test:PrecisionRoutesTest")
        .by(r -> Math.sqrt(wall(r).along(new Vec3(1, 0, 0))));
  }

  private static Quantity wallSize() {
    return sigma("precision.wallMean", "mean precision on the wall", "\\sigma_{\\mathrm{w}}")
        .range(Range.above(0))
        .meaning("Root mean square of the three standard deviations of the same spot.")
        .rule("inverse of the summed weights of all lines of sight within the limit", WALL)
        .source("least squares: covariance of lines of sight")
        .checkedBy("test:PrecisionRoutesTest")
        .by(r -> Math.sqrt(wall(r).trace() / 3));
  }

  /** Covariance of the spot of the wall that faces +x, a station straight before it. */
  private static Spread wall(Reckoning r) {
    Vec3 spot = new Vec3(r.si("distance.turningWidth") / 2, 0, 0);
    double step = r.si("ring.realStep");
    int side = (int) Whole.down(r.si("ring.halfArc") / step);
    List<PointPrecision.Ray> rays = new ArrayList<>();
    for (int i = -side; i <= side; i++) {
      Vec3 lens =
          Vec3.towards(new Angle(i * step), r.angle("aim.elevation")).times(r.si("ring.radius"));
      Vec3 line = spot.minus(lens);
      double pixel = RoomEntries.samplingAt(r, line.norm());
      double sigma = r.si("aim.pointing") * pixel / Math.sqrt(r.si("aim.repeats"));
      rays.add(new PointPrecision.Ray(line.unit(), sigma));
    }
    return PointPrecision.covariance(rays)
        .orElseThrow(
            () ->
                new RefusedException(
                    "only one station sees a spot of the wall well: no depth",
                    "turn less from photograph to photograph"));
  }

  private static Quantity parts() {
    return Entry.of("precision.parts", "size over precision")
        .meaning(
            "The longest side of the object over the mean precision on the wall: one part in so"
                + " many.")
        .symbol("n_{\\sigma}", Unit.ONE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("max(subject.height, distance.turningWidth) / precision.wallMean")
        .source("definition")
        .checkedBy("test:PrecisionRoutesTest")
        .by(
            r ->
                Math.max(r.si("subject.height"), r.si("distance.turningWidth"))
                    / r.si("precision.wallMean"));
  }

  private static Quantity enough() {
    return Entry.of("precision.enough", "precise enough?")
        .meaning(
            "Whether three standard deviations of depth on the wall stay within the tolerance.")
        .symbol("\\mathrm{precise}", Unit.ANSWER)
        .formula("3 * precision.wallDepth <= aim.tolerance")
        .source("three standard deviations, common practice, no source")
        .checkedBy("test:PrecisionRoutesTest")
        .by(r -> Quantity.atMost(3 * r.si("precision.wallDepth"), r.si("aim.tolerance")));
  }
}
