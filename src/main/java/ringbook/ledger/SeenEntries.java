package ringbook.ledger;

import java.util.List;
import ringbook.assess.SeenArc;
import ringbook.assess.SharedSurface;
import ringbook.units.Angle;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** What one photograph of the ring sees of the object's upright wall, taken as round. */
final class SeenEntries {

  private SeenEntries() {}

  static List<Quantity> entries() {
    return List.of(
        visibleArc(), ballShare(), halfArc(), sharedArc(), views(), closing(), samplingLoss());
  }

  private static Quantity visibleArc() {
    return Entry.of("ring.visibleArc", "arc in sight")
        .meaning("How much of a round wall as wide as the object one photograph sees at all.")
        .symbol("\\beta", Unit.DEGREE)
        .range(Range.degrees(0, 180))
        .formula("2 * acos(distance.turningWidth / (2 * ring.floorDistance))")
        .source("tangents to a circle")
        .checkedBy("VIS-07")
        .by(
            r ->
                SeenArc.visible(RingEntries.outlineRadius(r), r.length("ring.floorDistance"))
                    .map(Angle::radians)
                    .orElseThrow(SeenEntries::above));
  }

  private static Quantity ballShare() {
    return Entry.of("ring.ballShare", "share of a ball in sight")
        .meaning("Share of a ball as wide as the object that one photograph sees: never half.")
        .symbol("q_{\\mathrm{b}}", Unit.PERCENT)
        .range(Range.above(0).below(0.5))
        .rounded(Rounding.decimals(0))
        .formula("(1 - distance.turningWidth / (2 * ring.radius)) / 2")
        .source("area of a cap of a sphere")
        .checkedBy("VIS-04", "VIS-05")
        .by(
            r ->
                SeenArc.shareOfBall(RingEntries.outlineRadius(r), r.length("ring.radius"))
                    .orElseThrow(SeenEntries::above));
  }

  private static RefusedException above() {
    return new RefusedException(
        "the ring stands above the object and sees no upright wall", "lower the ring");
  }

  private static Quantity halfArc() {
    return Entry.of("ring.halfArc", "half the arc seen well")
        .meaning(
            "How far to either side of its middle a photograph sees a round wall no more slanted"
                + " than the limit, at half height.")
        .symbol("\\varphi_{i}", Unit.DEGREE)
        .range(Range.degrees(0, 90))
        .formula(
            "acos(cos(aim.incidenceLimit - asin(distance.turningWidth / (2 * ring.radius) *"
                + " sin(aim.incidenceLimit))) / cos(aim.elevation))")
        .source("sine rule; on a raised ring, dot product of wall normal and line of sight")
        .checkedBy("VIS-08")
        .by(SeenEntries::halfArcOf);
  }

  private static double halfArcOf(Reckoning r) {
    Angle limit = r.angle("aim.incidenceLimit");
    return SeenArc.halfWithin(
            RingEntries.outlineRadius(r), r.length("ring.radius"), r.angle("aim.elevation"), limit)
        .map(Angle::radians)
        .orElseThrow(() -> tooSteep(r, limit));
  }

  private static RefusedException tooSteep(Reckoning r, Angle limit) {
    double ratio = RingEntries.outlineRadius(r).over(r.length("ring.radius"));
    if (ratio >= 1) {
      return above();
    }
    double level = limit.radians() - Num.asin(ratio * Num.sin(limit.radians()));
    return new RefusedException(
        "from this ring every upright wall is seen more slanted than the limit",
        "at most "
            + Numbers.fixed(Whole.down(new Angle(level).degrees()), 0)
            + "° of elevation see part of the wall well enough");
  }

  private static Quantity sharedArc() {
    return Entry.of("ring.sharedArc", "shared part of the arc seen well")
        .meaning("Share of the wall that one photograph sees well and its neighbour does too.")
        .symbol("q_{\\varphi}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.decimals(0))
        .formula("max(0, (2 * ring.halfArc - ring.realStep) / (2 * ring.halfArc))")
        .source("overlap of two equal arcs")
        .checkedBy("ORB-15")
        .by(r -> SharedSurface.ofArcs(r.angle("ring.realStep"), r.angle("ring.halfArc")));
  }

  private static Quantity views() {
    return Entry.of("ring.views", "photographs that see a spot well")
        .meaning("How many photographs of the ring see any spot of the wall well, at least.")
        .symbol("k_{\\varphi}", Unit.PIECE)
        .range(Range.wholeFrom(0))
        .rounded(Rounding.decimals(0))
        .formula("floor(2 * ring.halfArc / ring.realStep)")
        .source("count of equal turns in an arc")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Whole.down(2 * r.si("ring.halfArc") / r.si("ring.realStep")));
  }

  private static Quantity closing() {
    return Entry.of("ring.closing", "photographs that just close the wall")
        .meaning(
            "Fewest photographs that see all of the wall well, with nothing shared: far too few to"
                + " be matched.")
        .symbol("n_{\\varphi}", Unit.PIECE)
        .range(Range.wholeFrom(3))
        .rounded(Rounding.decimals(0))
        .formula("ceil(360deg / (2 * ring.halfArc))")
        .source("count of arcs in a full turn")
        .checkedBy("VIS-09")
        .by(r -> Whole.up(Angle.FULL_TURN.radians() / (2 * r.si("ring.halfArc"))));
  }

  private static Quantity samplingLoss() {
    return Entry.of("ring.samplingLoss", "coarser along the slant")
        .meaning(
            "How many times farther apart the pixels lie along a surface seen at the most slanted"
                + " view that still counts than on one seen squarely.")
        .symbol("s_{i}", Unit.ONE)
        .range(Range.above(1))
        .formula("1 / cos(aim.incidenceLimit)")
        .source("cosine law of foreshortening")
        .checkedBy("VIS-01", "VIS-02")
        .by(r -> 1 / Num.cos(r.si("aim.incidenceLimit")));
  }
}
