package ringbook.ledger;

import java.util.List;
import ringbook.assess.SeenArc;
import ringbook.assess.Standing;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Unit;

/** Ways round what is in the way: a raised ring, a wider ring, a turntable. */
final class WayRoundEntries {

  private WayRoundEntries() {}

  static List<Quantity> entries() {
    return List.of(
        raised(),
        raisedHeight(),
        raisedReach(),
        raisedSees(),
        wider(),
        widerSampling(),
        widerLoss(),
        widerFine(),
        widerFree(),
        turntable());
  }

  private static Quantity raised() {
    return Entry.of("room.raised", "elevation that clears the room")
        .meaning(
            "Elevation at which a ring at the same distance draws in enough to be all free;"
                + " 0 where every elevation does.")
        .symbol("e_{\\mathrm{f}}", Unit.DEGREE)
        .range(Range.degrees(0, 90))
        .rounded(Rounding.decimals(0))
        .formula("acos(min(1, room.free / ring.radius))")
        .source("cosine of the elevation")
        .checkedBy("test:PlanRoutesTest")
        .by(
            r -> {
              double ratio = Math.min(1, r.si("room.free") / r.si("ring.radius"));
              if (ratio <= 0) {
                throw new RefusedException(
                    "there is no free room round the object at all", "move the object");
              }
              return Num.acos(ratio);
            });
  }

  private static Quantity raisedHeight() {
    return Entry.of("room.raisedHeight", "lens height of that ring")
        .meaning("Floor to lens on the ring raised clear of the room.")
        .symbol("z_{\\mathrm{f}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("ring.middleHeight + ring.radius * sin(room.raised)")
        .source("sine of the elevation")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> r.si("ring.middleHeight") + r.si("ring.radius") * Num.sin(r.si("room.raised")));
  }

  private static Quantity raisedReach() {
    return Entry.of("room.raisedReach", "raised ring within reach?")
        .meaning("Whether the group can hold the lens that high, feet on the floor.")
        .symbol("\\mathrm{reach}_{\\mathrm{f}}", Unit.ANSWER)
        .formula("room.raisedHeight <= place.highestLens")
        .source("comparison")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> Quantity.atMost(r.si("room.raisedHeight"), r.si("place.highestLens")));
  }

  private static Quantity raisedSees() {
    return Entry.of("room.raisedSees", "walls still seen well from there?")
        .meaning("Whether the raised ring sees upright walls no more slanted than the limit.")
        .symbol("\\mathrm{walls}_{\\mathrm{f}}", Unit.ANSWER)
        .formula(
            "cos(aim.incidenceLimit - asin(distance.turningWidth / (2 * ring.radius) *"
                + " sin(aim.incidenceLimit))) <= cos(room.raised)")
        .source("sine rule and dot product, as for the arc seen well")
        .checkedBy("test:PlanRoutesTest")
        .by(
            r ->
                Quantity.answer(
                    SeenArc.halfWithin(
                            RingEntries.outlineRadius(r),
                            r.length("ring.radius"),
                            r.angle("room.raised"),
                            r.angle("aim.incidenceLimit"))
                        .isPresent()));
  }

  private static Quantity wider() {
    return Entry.of("room.wider", "distance of a ring outside the furniture")
        .meaning(
            "Distance on the floor from which the ring passes behind everything that is in the way"
                + " now; for furniture that the lens looks over, not for walls.")
        .symbol("r_{\\mathrm{w}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .rule("farthest corner of what is in the way", "room.standing")
        .source("distances in plan")
        .checkedBy("test:PlanRoutesTest")
        .by(
            r -> {
              double beyond = Standing.beyondMetres(r.scene().place(), RoomEntries.standing(r));
              if (beyond == 0) {
                throw new RefusedException("nothing is in the way", "use the ring as it is");
              }
              return Math.max(beyond, r.si("room.standing"));
            });
  }

  private static Quantity widerSampling() {
    return Entry.of("room.widerSampling", "sampling from that ring")
        .meaning("Object size of a pixel at the middle of the object, from the wider ring.")
        .symbol("g_{\\mathrm{w}}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula(
            "kit.pixelPitch * (room.wider / cos(aim.elevation) - kit.focalLength) /"
                + " kit.focalLength")
        .source("thin lens, sampling at a distance")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> RoomEntries.samplingAt(r, r.si("room.wider") / RoomEntries.flat(r)));
  }

  private static Quantity widerLoss() {
    return Entry.of("room.widerLoss", "how much coarser that is")
        .meaning("Sampling of the wider ring over that of the ring as planned.")
        .symbol("s_{\\mathrm{wide}}", Unit.ONE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("room.widerSampling / distance.samplingMiddle")
        .source("definition")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> r.si("room.widerSampling") / r.si("distance.samplingMiddle"));
  }

  private static Quantity widerFine() {
    return Entry.of("room.widerFine", "still fine enough?")
        .meaning("Whether the wider ring still shows the smallest detail at the object's middle.")
        .symbol("\\mathrm{fine}_{\\mathrm{w}}", Unit.ANSWER)
        .formula("room.widerSampling <= distance.samplingWanted")
        .source("comparison")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> Quantity.atMost(r.si("room.widerSampling"), r.si("distance.samplingWanted")));
  }

  private static Quantity widerFree() {
    return Entry.of("room.widerFree", "wider ring free of all else?")
        .meaning("Whether nothing else in the room is in the way of the wider ring.")
        .symbol("\\mathrm{free}_{\\mathrm{w}}", Unit.ANSWER)
        .rule(
            "no outline in plan but those passed comes nearer than the wider ring and the room a"
                + " person needs",
            "room.wider",
            "room.standing",
            "place.bodyRoom")
        .source("distances in plan")
        .checkedBy("test:PlanRoutesTest")
        .by(
            r ->
                Quantity.answer(
                    Standing.isFreeBeyond(
                        r.scene().place(),
                        RoomEntries.standing(r),
                        new Length(r.si("room.wider") + r.si("place.bodyRoom")))));
  }

  private static Quantity turntable() {
    return Entry.of("room.turntable", "turntable possible?")
        .meaning(
            "Whether at least one direction is free, from which a turning object can be"
                + " photographed before a plain background or with masks.")
        .symbol("\\mathrm{table}", Unit.ANSWER)
        .formula("room.blockedArc < 360deg")
        .source("one free direction is enough when the object turns")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> Quantity.answer(r.si("room.blockedArc") < 2 * Math.PI));
  }
}
