package ringbook.ledger;

import java.util.List;
import ringbook.assess.HoleView;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Unit;

/**
 * What can be seen of a round hole or pocket: its far wall, its floor, and from which angle. Angles
 * count from the axis of the hole; lines of sight run alike.
 */
final class HoleEntries {

  private static final String PARALLEL = "right-angled triangles, lines of sight that run alike";

  private HoleEntries() {}

  static List<Quantity> entries() {
    return List.of(
        bestAngle(),
        wallSeen(),
        wallShare(),
        oneEnd(),
        twoEnds(),
        floorMiddle(),
        floorHidden(),
        floorSeen(),
        floorShare(),
        floorRays(),
        ringAngle(),
        ringWall(),
        ringFloor());
  }

  private static HoleView hole(Reckoning r) {
    return new HoleView(r.length("subject.holeDiameter"), r.length("subject.holeDepth"));
  }

  private static Quantity bestAngle() {
    return angle("hole.bestAngle", "angle for the wall", "\\theta_{i}")
        .range(Range.degrees(0, 90))
        .meaning("Angle from the axis at which the wall is seen just well enough, and deepest.")
        .formula("90deg - aim.incidenceLimit")
        .source("the wall runs along the axis")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Angle.RIGHT.radians() - r.si("aim.incidenceLimit"));
  }

  private static Quantity wallSeen() {
    return length("hole.wallSeen", "depth of wall seen well", "h_{\\mathrm{w}}")
        .range(Range.above(0))
        .meaning("How deep the far wall is seen well from the best angle.")
        .formula("min(subject.holeDepth, subject.holeDiameter / tan(hole.bestAngle))")
        .source(PARALLEL)
        .checkedBy("HOL-01")
        .by(r -> hole(r).wallSeen(r.angle("hole.bestAngle")).metres());
  }

  private static Quantity wallShare() {
    return share("hole.wallShare", "share of the wall seen well", "q_{\\mathrm{w}}")
        .range(Range.above(0).upTo(1))
        .meaning("Depth of wall seen well over the depth of the hole.")
        .formula("hole.wallSeen / subject.holeDepth")
        .source("definition")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> r.si("hole.wallSeen") / r.si("subject.holeDepth"));
  }

  private static Quantity oneEnd() {
    return Entry.of("hole.oneEnd", "wall seen to the bottom from one end?")
        .meaning("Whether the wall is seen well down to the bottom from outside one end.")
        .symbol("\\mathrm{one\\,end}", Unit.ANSWER)
        .formula("hole.wallSeen >= subject.holeDepth")
        .source("comparison")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Quantity.atMost(r.si("subject.holeDepth"), r.si("hole.wallSeen")));
  }

  private static Quantity twoEnds() {
    return Entry.of("hole.twoEnds", "hole right through: two ends enough?")
        .meaning("Whether a hole right through is seen well all along its wall from its two ends.")
        .symbol("\\mathrm{two\\,ends}", Unit.ANSWER)
        .formula("2 * hole.wallSeen >= subject.holeDepth")
        .source("each end shows the same depth")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Quantity.atMost(r.si("subject.holeDepth"), 2 * r.si("hole.wallSeen")));
  }

  private static Quantity floorMiddle() {
    return angle(
            "hole.floorMiddle", "largest angle to the middle of the floor", "\\theta_{\\mathrm{m}}")
        .range(Range.degrees(0, 90))
        .meaning("Up to this angle from the axis the middle of the floor is in sight.")
        .formula("atan(subject.holeDiameter / (2 * subject.holeDepth))")
        .source(PARALLEL)
        .checkedBy("HOL-03")
        .by(r -> hole(r).floorMiddle().radians());
  }

  private static Quantity floorHidden() {
    return angle("hole.floorHidden", "angle that hides the floor", "\\theta_{\\mathrm{h}}")
        .range(Range.degrees(0, 90))
        .meaning("From this angle on nothing of the floor is in sight.")
        .formula("atan(subject.holeDiameter / subject.holeDepth)")
        .source(PARALLEL)
        .checkedBy("HOL-05")
        .by(r -> hole(r).floorHidden().radians());
  }

  private static Quantity floorSeen() {
    return length("hole.floorSeen", "floor seen across its middle", "d_{\\mathrm{f}}")
        .range(Range.from(0))
        .meaning("How much of the floor is in sight, across its middle, from the wall's angle.")
        .formula("max(0, subject.holeDiameter - subject.holeDepth * tan(hole.bestAngle))")
        .source(PARALLEL)
        .checkedBy("HOL-02")
        .by(r -> hole(r).floorSeen(r.angle("hole.bestAngle")).metres());
  }

  private static Quantity floorShare() {
    return share("hole.floorShare", "share of the floor seen", "q_{\\mathrm{floor}}")
        .range(Range.between(0, 1))
        .meaning("Share of the floor's area in sight from the wall's angle.")
        .rule(
            "area common to the floor and the mouth pushed aside by the depth times the tangent of"
                + " the angle",
            "subject.holeDiameter",
            "subject.holeDepth",
            "hole.bestAngle")
        .source("area common to two equal circles")
        .checkedBy("HOL-04")
        .by(r -> hole(r).floorShare(r.angle("hole.bestAngle")));
  }

  private static Quantity floorRays() {
    return angle(
            "hole.floorRays",
            "widest angle between lines of sight to the floor",
            "\\gamma_{\\mathrm{f}}")
        .range(Range.degrees(0, 180))
        .meaning(
            "Lines of sight to the middle of the floor differ by at most this; where it is small,"
                + " depth is weak.")
        .formula("2 * hole.floorMiddle")
        .source(PARALLEL)
        .checkedBy("test:HoleRoutesTest")
        .by(r -> 2 * r.si("hole.floorMiddle"));
  }

  private static Quantity ringAngle() {
    return angle("hole.ringAngle", "angle from the ring", "\\theta_{\\mathrm{r}}")
        .range(Range.degrees(0, 180))
        .meaning(
            "Smallest angle from the hole's axis that the ring offers: its station straight in"
                + " front of the hole.")
        .formula("abs(aim.elevation - subject.holeTilt)")
        .source("difference of elevations in one upright plane")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Math.abs(r.si("aim.elevation") - r.si("subject.holeTilt")));
  }

  private static Quantity ringWall() {
    return length("hole.ringWall", "depth of wall seen well from the ring", "h_{\\mathrm{r}}")
        .range(Range.from(0))
        .meaning(
            "How deep the wall is seen well from some station of the ring; a station to the side"
                + " helps where the one in front looks too straight in.")
        .formula(
            "if(hole.ringAngle < 90deg, min(subject.holeDepth, subject.holeDiameter /"
                + " tan(max(hole.bestAngle, hole.ringAngle))), 0)")
        .source(PARALLEL)
        .checkedBy("test:HoleRoutesTest")
        .by(HoleEntries::ringWallOf);
  }

  private static double ringWallOf(Reckoning r) {
    double angle = r.si("hole.ringAngle");
    double best = r.si("hole.bestAngle");
    Length depth = r.length("subject.holeDepth");
    HoleView hole = new HoleView(r.length("subject.holeDiameter"), depth);
    return angle >= Angle.RIGHT.radians()
        ? 0
        : hole.wallSeen(new Angle(Math.max(best, angle))).metres();
  }

  private static Quantity ringFloor() {
    return Entry.of("hole.ringFloor", "middle of the floor seen from the ring?")
        .meaning("Whether the ring has the middle of the hole's floor in sight.")
        .symbol("\\mathrm{floor}", Unit.ANSWER)
        .formula("hole.ringAngle <= hole.floorMiddle")
        .source("comparison")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Quantity.atMost(r.si("hole.ringAngle"), r.si("hole.floorMiddle")));
  }

  private static Entry angle(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.DEGREE).rounded(Rounding.decimals(0));
  }

  private static Entry length(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.CENTIMETRE);
  }

  private static Entry share(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PERCENT).rounded(Rounding.decimals(0));
  }
}
