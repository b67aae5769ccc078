package ringbook.ledger;

import java.util.List;
import ringbook.shots.Subject.Surface;
import ringbook.units.Angle;
import ringbook.units.Unit;

/** Whether the object, this kit and this place suit each other: one yes or no for each reason. */
final class FitnessEntries {

  /** Neighbours of textured objects still held at 15° in 97 to 100 of 100 pairs. */
  private static final Angle TEXTURED = Angle.ofDegrees(15);

  /** The plain object lost 18 of 100 pairs at 15°; 8° to 10° held. */
  private static final Angle PLAIN = Angle.ofDegrees(8);

  private static final String MEASURED =
      "matches counted on published picture sets: 15° holds for textured surfaces, 8° for plain";

  private FitnessEntries() {}

  static List<Quantity> entries() {
    return List.of(
        matt(),
        opaque(),
        textured(),
        distinct(),
        still(),
        thinPixels(),
        thin(),
        size(),
        clear(),
        stepAdvised(),
        stepKept(),
        score(),
        fit());
  }

  private static Surface surface(Reckoning r) {
    return r.scene().subject().surface();
  }

  private static Entry answer(String key, String name, String symbol) {
    return Entry.of(key, name).symbol("\\mathrm{" + symbol + "}", Unit.ANSWER);
  }

  private static Quantity matt() {
    return answer("fitness.matt", "free of shine?", "matt")
        .meaning(
            "Whether highlights stay away. If not: move lamps and windows out of the mirror"
                + " direction, cross polarising filters, or ask the keeper about a dulling spray"
                + " that comes off again; spray only with fresh air, away from eyes, food and"
                + " flames.")
        .rule("no for a glossy surface, yes for the others")
        .source("a highlight wanders with the camera; common practice, no source")
        .by(r -> Quantity.answer(surface(r) != Surface.GLOSSY));
  }

  private static Quantity opaque() {
    return answer("fitness.opaque", "opaque?", "opaque")
        .meaning(
            "Whether the surface hides what lies behind it. If not: choose another object; a"
                + " coating is for the keeper to decide.")
        .rule("no for a clear surface, yes for the others")
        .source("what shines through moves against the surface; common practice, no source")
        .by(r -> Quantity.answer(surface(r) != Surface.CLEAR));
  }

  private static boolean isMatt(Reckoning r) {
    return surface(r) == Surface.TEXTURED || surface(r) == Surface.PLAIN;
  }

  private static Quantity textured() {
    return answer("fitness.textured", "texture to hold on to?", "texture")
        .meaning(
            "Whether the surface has texture all over that can be found again. If not: take smaller"
                + " turns, let patterned paper or small stickers beside the object carry the"
                + " matching, and touch the object itself only if its keeper agrees.")
        .rule("yes for a textured surface")
        .source(MEASURED)
        .by(r -> Quantity.answer(surface(r) == Surface.TEXTURED));
  }

  private static Quantity distinct() {
    return answer("fitness.distinct", "different from every side?", "distinct")
        .meaning(
            "Whether no two sides look the same, so that none can be taken for another. If not:"
                + " leave a patterned sheet or a few odd things around it, in view and unmoved.")
        .formula("subject.alike <= 1")
        .source(
            "alike sides gave false matches at half a turn on published picture sets; common"
                + " practice")
        .checkedBy("test:FitnessTest")
        .by(r -> Quantity.atMost(r.si("subject.alike"), 1));
  }

  private static Quantity still() {
    return answer("fitness.still", "does it keep still?", "still")
        .meaning(
            "Whether nothing moves by more than one pixel between photographs. If it does: stop the"
                + " draught, let it settle, tie loose parts back; never tie what could break.")
        .formula("subject.sway <= distance.samplingNear")
        .source("one pixel; common practice, no source")
        .checkedBy("test:FitnessTest")
        .by(r -> Quantity.atMost(r.si("subject.sway"), r.si("distance.samplingNear")));
  }

  private static Quantity thinPixels() {
    return Entry.of("fitness.thinPixels", "pixels across the thinnest part")
        .meaning("How many pixels span the thinnest part at the far face.")
        .symbol("k_{\\mathrm{t}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("subject.thinnest / distance.samplingFar")
        .source("size over sampling distance")
        .checkedBy("test:FitnessTest")
        .by(r -> r.si("subject.thinnest") / r.si("distance.samplingFar"));
  }

  private static Quantity thin() {
    return answer("fitness.thin", "thin parts sampled finely enough?", "thin")
        .meaning(
            "Whether the thinnest part spans as many pixels as the smallest detail must. If not:"
                + " take a closer set of that part, and mind that thin parts break easily.")
        .formula("aim.pixelsPerDetail <= fitness.thinPixels")
        .source("comparison")
        .checkedBy("test:FitnessTest")
        .by(r -> Quantity.atMost(r.si("aim.pixelsPerDetail"), r.si("fitness.thinPixels")));
  }

  private static Quantity size() {
    return answer("fitness.size", "large enough for this lens?", "size")
        .meaning(
            "Whether the lens may come near enough for the object to fill the frame. If not: a lens"
                + " that focuses closer, or be content with less of the frame.")
        .formula("distance.heldOff <= 0")
        .source("closest focus against the standoff wanted")
        .checkedBy("test:FitnessTest")
        .by(r -> Quantity.atMost(r.si("distance.heldOff"), 0));
  }

  private static Quantity clear() {
    return answer("fitness.clear", "ring clear of walls and furniture?", "clear")
        .meaning(
            "Whether the whole ring finds room. If not: another place, a turntable, or a gap that"
                + " is planned.")
        .formula("ring.floorDistance <= room.free")
        .source("comparison")
        .checkedBy("test:FitnessTest")
        .by(r -> Quantity.atMost(r.si("ring.floorDistance"), r.si("room.free")));
  }

  private static Quantity stepAdvised() {
    return Entry.of("fitness.stepAdvised", "largest turn for this surface")
        .meaning("Largest turn at which most neighbours still matched on such a surface.")
        .symbol("\\alpha_{\\mathrm{s}}", Unit.DEGREE)
        .range(Range.degrees(8, 15))
        .rule("15° for a textured surface, 8° for a plain one, none for the others")
        .source(MEASURED)
        .checkedBy("test:MatchSurvivalTest")
        .by(
            r -> {
              if (!isMatt(r)) {
                throw new RefusedException(
                    "no turn is small enough for a surface that shines or lets light through",
                    "choose another object; coat it only if its keeper agrees");
              }
              return surface(r) == Surface.TEXTURED ? TEXTURED.radians() : PLAIN.radians();
            });
  }

  private static Quantity stepKept() {
    return answer("fitness.stepKept", "turn small enough for this surface?", "turn")
        .meaning("Whether the real turn keeps to the largest turn for this surface.")
        .formula("ring.realStep <= fitness.stepAdvised")
        .source("comparison")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Quantity.atMost(r.si("ring.realStep"), r.si("fitness.stepAdvised")));
  }

  private static final String[] REASONS = {
    "fitness.matt",
    "fitness.opaque",
    "fitness.textured",
    "fitness.distinct",
    "fitness.still",
    "fitness.size",
    "fitness.clear",
    "distance.fine",
    "sharp.window",
    "ring.reachable",
    "rings.topReachable"
  };

  private static Quantity score() {
    return Entry.of("fitness.score", "reasons that speak for the object, of eleven")
        .meaning(
            "How many of eleven hold: free of shine, opaque, textured, different from every side,"
                + " still, large enough for the lens, ring clear, detail reached, sharp throughout,"
                + " ring within reach, top within reach.")
        .symbol("F_{\\mathrm{o}}", Unit.PIECE)
        .range(Range.wholeBetween(0, REASONS.length))
        .rounded(Rounding.decimals(0))
        .rule("one for each reason that holds", REASONS)
        .source("common practice, no source")
        .by(
            r -> {
              double sum = 0;
              for (String reason : REASONS) {
                sum += r.si(reason);
              }
              return sum;
            });
  }

  private static Quantity fit() {
    return answer("fitness.fit", "object fit for this kit and place?", "fit")
        .meaning(
            "Whether what is hard to make up for holds: free of shine, opaque, still, detail"
                + " reached, ring within reach.")
        .formula("both(fitness.matt, fitness.opaque, fitness.still, distance.fine, ring.reachable)")
        .source("common practice, no source")
        .by(
            r ->
                Quantity.answer(
                    r.yes("fitness.matt")
                        && r.yes("fitness.opaque")
                        && r.yes("fitness.still")
                        && r.yes("distance.fine")
                        && r.yes("ring.reachable")));
  }
}
