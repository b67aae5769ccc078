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
    return List.of(matt(), textured(), stepAdvised(), stepKept(), score(), fit());
  }

  private static Surface surface(Reckoning r) {
    return r.scene().subject().surface();
  }

  private static Entry answer(String key, String name, String symbol) {
    return Entry.of(key, name).symbol("\\mathrm{" + symbol + "}", Unit.ANSWER);
  }

  private static Quantity matt() {
    return answer("fitness.matt", "matt and opaque?", "matt")
        .meaning("Whether the surface neither shines nor lets light through.")
        .rule("yes for a textured or a plain surface, no for a glossy or a clear one")
        .source("highlights and what shines through wander with the camera")
        .by(r -> Quantity.answer(isMatt(r)));
  }

  private static boolean isMatt(Reckoning r) {
    return surface(r) == Surface.TEXTURED || surface(r) == Surface.PLAIN;
  }

  private static Quantity textured() {
    return answer("fitness.textured", "texture to hold on to?", "texture")
        .meaning("Whether the surface has texture all over that can be found again.")
        .rule("yes for a textured surface")
        .source(MEASURED)
        .by(r -> Quantity.answer(surface(r) == Surface.TEXTURED));
  }

  private static Quantity stepAdvised() {
    return Entry.of("fitness.stepAdvised", "largest turn for this surface")
        .meaning("Largest turn at which most neighbours still matched on such a surface.")
        .symbol("\\alpha_{\\mathrm{s}}", Unit.DEGREE)
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
    "fitness.textured",
    "distance.fine",
    "sharp.window",
    "ring.reachable",
    "rings.topReachable",
    "room.free",
    "ring.floorDistance"
  };

  private static Quantity score() {
    return Entry.of("fitness.score", "reasons that speak for the object")
        .meaning(
            "How many of seven hold: matt, textured, detail reached, sharp throughout, ring within"
                + " reach, top within reach, ring free.")
        .symbol("F_{\\mathrm{o}}", Unit.PIECE)
        .rounded(Rounding.decimals(0))
        .rule("one for each reason that holds", REASONS)
        .source("common practice, no source")
        .by(
            r -> {
              double sum = Quantity.atMost(r.si("ring.floorDistance"), r.si("room.free"));
              for (int i = 0; i < 6; i++) {
                sum += r.si(REASONS[i]);
              }
              return sum;
            });
  }

  private static Quantity fit() {
    return answer("fitness.fit", "object fit for this kit and place?", "fit")
        .meaning(
            "Whether what cannot be made up for holds: matt, detail reached, ring within reach.")
        .formula("both(fitness.matt, distance.fine, ring.reachable)")
        .source("common practice, no source")
        .by(
            r ->
                Quantity.answer(
                    r.yes("fitness.matt") && r.yes("distance.fine") && r.yes("ring.reachable")));
  }
}
