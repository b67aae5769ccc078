package ringbook.ledger;

import java.util.List;
import ringbook.optics.Framing;
import ringbook.optics.ThinLens;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Unit;

/** Numbers that the first lessons ask for: the same view, a new focus, small and thin things. */
final class LessonEntries {

  private static final String THIN_LENS = "thin lens; textbooks of optics";

  private LessonEntries() {}

  static List<Quantity> kit() {
    return List.of(sameView());
  }

  static List<Quantity> sharp() {
    return List.of(refocus(), refocusPixels());
  }

  static List<Quantity> lamps() {
    return List.of(pairSpread());
  }

  static List<Quantity> fitness() {
    return List.of(
        thinnestShown(),
        smallest("fitness.smallestAcross", "width", "distance.sideAcross", "W_{\\min}"),
        smallest("fitness.smallestUp", "height", "distance.sideUp", "h_{\\min}"));
  }

  private static Quantity sameView() {
    return Entry.of("kit.sameView", "focal length with the same view on a full frame")
        .meaning(
            "The focal length that shows the same angle from corner to corner on a frame of 36 mm"
                + " by 24 mm.")
        .symbol("f_{=}", Unit.MILLIMETRE)
        .formula("kit.cropFactor * kit.focalLength")
        .range(Range.above(0))
        .source("the rule by diagonal, on which 35 mm equivalent focal lengths rest")
        .checkedBy("test:LessonRoutesTest")
        .by(r -> r.si("kit.cropFactor") * r.si("kit.focalLength"));
  }

  private static Quantity refocus() {
    return Entry.of("sharp.refocus", "change of picture size by a new focus")
        .meaning(
            "How much larger the picture is drawn if the lens is focused on the near end of the"
                + " depth to hold sharp instead of on its far end; for a lens that moves as a"
                + " whole.")
        .symbol("\\delta_{s}", Unit.PERCENT)
        .rounded(Rounding.significant(2))
        .formula(
            "sharp.near * (sharp.far - kit.focalLength) / (sharp.far * (sharp.near -"
                + " kit.focalLength)) - 1")
        .range(Range.from(0))
        .source(THIN_LENS)
        .checkedBy("test:LessonRoutesTest")
        .by(r -> image(r, "sharp.near").over(image(r, "sharp.far")) - 1);
  }

  private static Length image(Reckoning r, String distance) {
    return ThinLens.imageDistance(r.length("kit.focalLength"), r.length(distance));
  }

  private static Quantity refocusPixels() {
    return Entry.of("sharp.refocusPixels", "shift at the edge by a new focus")
        .meaning(
            "How far a spot at the end of the long side moves in the picture by such a new focus.")
        .symbol("\\Delta_{s}", Unit.PIXEL)
        .rounded(Rounding.significant(2))
        .formula("kit.pixelsAcross / 2 * sharp.refocus")
        .range(Range.from(0))
        .source(THIN_LENS)
        .checkedBy("test:LessonRoutesTest")
        .by(r -> r.si("kit.pixelsAcross") / 2 * r.si("sharp.refocus"));
  }

  private static Quantity pairSpread() {
    return Entry.of("light.pairSpread", "unevenness of two lamps over the object")
        .meaning(
            "How many stops brighter the two sides are than the middle, between two equal small"
                + " lamps on opposite sides.")
        .symbol("q_{2}", Unit.STOP)
        .rounded(Rounding.significant(2))
        .formula(
            "log2(place.lampDistance ^ 2 * (place.lampDistance ^ 2 + (distance.turningWidth / 2) ^"
                + " 2) / (place.lampDistance ^ 2 - (distance.turningWidth / 2) ^ 2) ^ 2)")
        .range(Range.from(0))
        .source("inverse square law, two small lamps; textbooks of lighting")
        .checkedBy("test:LessonRoutesTest")
        .by(
            r -> {
              double lamp = LampEntries.lamp(r).metres();
              double half = r.si("distance.turningWidth") / 2;
              double near = 1 / ((lamp - half) * (lamp - half));
              double far = 1 / ((lamp + half) * (lamp + half));
              return Num.log2((near + far) * lamp * lamp / 2);
            });
  }

  private static Quantity thinnestShown() {
    return Entry.of("fitness.thinnestShown", "thinnest part that is shown")
        .meaning("How thick a part must be to span enough pixels at the far face.")
        .symbol("t_{\\min}", Unit.MILLIMETRE)
        .formula("aim.pixelsPerDetail * distance.samplingFar")
        .range(Range.above(0))
        .source("size over sampling distance")
        .checkedBy("test:LessonRoutesTest")
        .by(r -> r.si("aim.pixelsPerDetail") * r.si("distance.samplingFar"));
  }

  private static Quantity smallest(String key, String which, String side, String symbol) {
    return Entry.of(key, "smallest " + which + " that fills the frame")
        .meaning(
            "The "
                + which
                + " that fills as much of the picture as wanted from the closest focus; a smaller"
                + " one fills less.")
        .symbol(symbol, Unit.CENTIMETRE)
        .formula("aim.fill * " + side + " * (kit.closestFocus - kit.focalLength) / kit.focalLength")
        .range(Range.above(0))
        .source(THIN_LENS)
        .checkedBy("test:LessonRoutesTest")
        .by(
            r ->
                r.si("aim.fill")
                    * Framing.field(
                            r.length("kit.focalLength"),
                            r.length(side),
                            r.length("kit.closestFocus"))
                        .metres());
  }
}
