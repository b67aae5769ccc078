package ringbook.ledger;

import java.util.List;
import ringbook.optics.Distant;
import ringbook.optics.Sampling;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Unit;

/** What distance costs, what slopes cost, and what the raised camera sees. */
final class FartherEntries {

  private FartherEntries() {}

  static List<Quantity> entries() {
    return List.of(
        pixels("distance.pixelsAcross", "width", "distance.turningWidth", "n_{\\mathrm{w}}"),
        pixels("distance.pixelsUp", "height", "subject.height", "n_{\\mathrm{h}}"),
        twice(),
        samplingTwice(),
        coarserTwice(),
        filledTwice(),
        samplingSlope(),
        fineSlope(),
        distantField(),
        distantError(),
        raisedHeight(),
        raisedFilled(),
        raisedFits());
  }

  private static Quantity pixels(String key, String extent, String size, String symbol) {
    return Entry.of(key, "pixels across the " + extent + " of the object")
        .meaning("How many pixels the " + extent + " of the object takes up, at its near face.")
        .symbol(symbol, Unit.PIXEL)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula(size + " / distance.samplingNear")
        .source("division")
        .checkedBy("test:DistanceRoutesTest", "test:CameraLibraryTest")
        .by(r -> r.length(size).over(r.length("distance.samplingNear")));
  }

  private static Quantity twice() {
    return Entry.of("distance.twice", "twice the standoff")
        .meaning("The standoff doubled, to see what that costs.")
        .symbol("u_{2}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("2 * distance.standoff")
        .source("definition")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> 2 * r.si("distance.standoff"));
  }

  private static Quantity samplingTwice() {
    return Entry.of("distance.samplingTwice", "sampling distance from twice as far")
        .meaning("The length on the near face that falls on one pixel from twice as far.")
        .symbol("g_{2}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("kit.pixelPitch * (distance.twice - kit.focalLength) / kit.focalLength")
        .source("thin lens; textbooks of photogrammetry")
        .checkedBy("GSD-01", "GSD-04")
        .by(
            r ->
                Sampling.onObject(
                        r.length("kit.pixelPitch"),
                        r.length("kit.focalLength"),
                        r.length("distance.twice"))
                    .metres());
  }

  private static Quantity coarserTwice() {
    return Entry.of("distance.coarserTwice", "coarser from twice as far")
        .meaning("How many times the sampling distance grows when the standoff doubles.")
        .symbol("r_{2}", Unit.ONE)
        .range(Range.above(2))
        .formula("distance.samplingTwice / distance.samplingNear")
        .source("division")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.length("distance.samplingTwice").over(r.length("distance.samplingNear")));
  }

  private static Quantity filledTwice() {
    return Entry.of("distance.filledTwice", "share of the picture used from twice as far")
        .meaning(
            "How much of the picture's area the outline box of the object takes up from twice as"
                + " far.")
        .symbol("\\varphi_{2}", Unit.PERCENT)
        .range(Range.above(0).below(0.25))
        .rounded(Rounding.significant(2))
        .formula("distance.filledLong * distance.filledShort / distance.coarserTwice ^ 2")
        .source("areas go with the square of lengths")
        .checkedBy("test:DistanceRoutesTest")
        .by(
            r ->
                r.si("distance.filledLong")
                    * r.si("distance.filledShort")
                    / (r.si("distance.coarserTwice") * r.si("distance.coarserTwice")));
  }

  private static Quantity samplingSlope() {
    return Entry.of("distance.samplingSlope", "sampling distance on the steepest slope")
        .meaning(
            "The length along the surface that falls on one pixel where it is seen at the most"
                + " slanted view that still counts, at the object's middle.")
        .symbol("g_{\\mathrm{sl}}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("distance.samplingMiddle / cos(aim.incidenceLimit)")
        .source("cosine of the incidence angle; textbooks of photogrammetry")
        .checkedBy("VIS-02")
        .by(
            r ->
                Sampling.onSlope(r.length("distance.samplingMiddle"), r.angle("aim.incidenceLimit"))
                    .metres());
  }

  private static Quantity fineSlope() {
    return Entry.of("distance.fineSlope", "slopes sampled finely enough")
        .meaning(
            "Whether even the most slanted surface that counts is sampled as finely as wanted.")
        .symbol("\\mathrm{fine}_{\\mathrm{sl}}", Unit.ANSWER)
        .formula("distance.samplingSlope <= distance.samplingWanted")
        .source("comparison")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Quantity.atMost(r.si("distance.samplingSlope"), r.si("distance.samplingWanted")));
  }

  private static Quantity distantField() {
    return Entry.of("distance.distantField", "field by the shortcut for distant objects")
        .meaning("What the long side would show if the lens stood a focal length from the sensor.")
        .symbol("F_{\\mathrm{far}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("kit.sensorWidth * distance.standoff / kit.focalLength")
        .source("similar triangles with the sensor in the focal plane; a shortcut")
        .checkedBy("LEN-12", "GSD-02")
        .by(
            r ->
                Distant.field(
                        r.length("kit.focalLength"),
                        r.length("kit.sensorWidth"),
                        r.length("distance.standoff"))
                    .metres());
  }

  private static Quantity distantError() {
    return Entry.of("distance.distantError", "error of the shortcut for distant objects")
        .meaning("By how much the shortcut promises too wide a field; it equals the magnification.")
        .symbol("\\delta_{\\mathrm{far}}", Unit.PERCENT)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("distance.distantField / distance.fieldLong - 1")
        .source("comparison with the thin lens")
        .checkedBy("LEN-12", "LEN-13", "GSD-04", "GSD-05")
        .by(r -> r.length("distance.distantField").over(r.length("distance.fieldLong")) - 1);
  }

  private static Quantity raisedHeight() {
    return Entry.of("distance.raisedHeight", "height of the object in the raised view")
        .meaning(
            "How high the object looks from the elevation of the ring: from above, its depth adds"
                + " to its height.")
        .symbol("h_{e}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula(
            "subject.height * cos(aim.elevation)"
                + " + distance.turningWidth * abs(sin(aim.elevation))")
        .source("parallel projection of an upright box")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> raised(r).metres());
  }

  private static Quantity raisedFilled() {
    return Entry.of("distance.raisedFilled", "share of the upright side filled in the raised view")
        .meaning("How much of the upright side of the picture the object takes up from up there.")
        .symbol("\\varphi_{e}", Unit.PERCENT)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("distance.raisedHeight * distance.magnification / distance.sideUp")
        .source("thin lens at the scale of the near face, which errs to the safe side")
        .checkedBy("LEN-02")
        .by(
            r ->
                r.si("distance.magnification")
                    * r.length("distance.raisedHeight").over(r.length("distance.sideUp")));
  }

  private static Quantity raisedFits() {
    return Entry.of("distance.raisedFits", "the raised view fits the picture")
        .meaning("Whether the whole object is in the picture from the elevation of the ring.")
        .symbol("\\mathrm{fits}", Unit.ANSWER)
        .formula("distance.raisedFilled <= 1")
        .source("comparison")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Quantity.atMost(r.si("distance.raisedFilled"), 1));
  }

  private static Length raised(Reckoning r) {
    double e = r.si("aim.elevation");
    return r.length("subject.height")
        .times(Num.cos(e))
        .plus(r.length("distance.turningWidth").times(Math.abs(Num.sin(e))));
  }
}
