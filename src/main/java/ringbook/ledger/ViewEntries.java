package ringbook.ledger;

import java.util.List;
import ringbook.optics.AngleOfView;
import ringbook.optics.CircleOfConfusion;
import ringbook.optics.ThinLens;
import ringbook.units.Unit;

/** The camera as it is set: focused close, with its f-number. */
final class ViewEntries {

  /** Line pairs a millimetre that an eye tells apart at 25 cm. */
  private static final double EYE_LINES = 5;

  private static final String THIN_LENS = "thin lens; textbooks of optics";

  private ViewEntries() {}

  static List<Quantity> entries() {
    return List.of(
        imageDistance(),
        extension(),
        fromSensor(),
        focalPixels(),
        angle("sharp.angleLong", "long side", "kit.sensorWidth", "\\gamma_{\\mathrm{l}}"),
        angle("sharp.angleShort", "short side", "kit.sensorHeight", "\\gamma_{\\mathrm{s}}"),
        scaleNumber(),
        aperture(),
        inFront(),
        behind(),
        focusTolerance(),
        printSpot(),
        printPixels(),
        enlargement(),
        eyeSpot(),
        viewSpot());
  }

  private static Quantity imageDistance() {
    return Entry.of("sharp.imageDistance", "image distance")
        .meaning(
            "From the lens to the sensor when focused on the object; programs that measure"
                + " pictures call it the principal distance.")
        .symbol("v", Unit.MILLIMETRE)
        .range(Range.above(0))
        .rounded(Rounding.significant(4))
        .formula("kit.focalLength * sharp.focus / (sharp.focus - kit.focalLength)")
        .source(THIN_LENS)
        .checkedBy("LEN-01", "LEN-04")
        .by(
            r ->
                ThinLens.imageDistance(r.length("kit.focalLength"), r.length("sharp.focus"))
                    .metres());
  }

  private static Quantity extension() {
    return Entry.of("sharp.extension", "travel of the lens")
        .meaning(
            "How far the lens moves out from its far setting to focus on the object: why focus"
                + " must stay locked through a ring.")
        .symbol("\\Delta f", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("sharp.imageDistance - kit.focalLength")
        .source(THIN_LENS)
        .checkedBy("CLO-10")
        .by(r -> r.si("sharp.imageDistance") - r.si("kit.focalLength"));
  }

  private static Quantity fromSensor() {
    return Entry.of("sharp.fromSensor", "focus distance from the sensor")
        .meaning(
            "From the sensor to where the lens is focused: the distance scale of a lens and the"
                + " column of a copy stand count so.")
        .symbol("s_{\\mathrm{sensor}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("sharp.focus + sharp.imageDistance")
        .source(THIN_LENS + "; both main planes taken as one")
        .checkedBy("LEN-08")
        .by(r -> r.si("sharp.focus") + r.si("sharp.imageDistance"));
  }

  private static Quantity focalPixels() {
    return Entry.of("sharp.focalPixels", "image distance in pixels")
        .meaning("The focal length that a program finds in the photographs, in pixels.")
        .symbol("v_{\\mathrm{px}}", Unit.PIXEL)
        .range(Range.above(0))
        .rounded(Rounding.significant(4))
        .formula("sharp.imageDistance / kit.pixelPitch")
        .source("pinhole camera; textbooks of photogrammetry")
        .checkedBy("OCV-02")
        .by(r -> r.length("sharp.imageDistance").over(r.length("kit.pixelPitch")));
  }

  private static Quantity angle(String key, String side, String length, String symbol) {
    return Entry.of(key, "angle of view along the " + side + ", focused close")
        .meaning("How wide the lens sees along the " + side + " with the focus on the object.")
        .symbol(symbol, Unit.DEGREE)
        .range(Range.degrees(0, 180))
        .formula("2 * atan(" + length + " / (2 * sharp.imageDistance))")
        .source("right triangle of half the side and the image distance")
        .checkedBy("FOV-14", "test:CameraLibraryTest")
        .by(r -> AngleOfView.of(r.length(length), r.length("sharp.imageDistance")).radians());
  }

  private static Quantity scaleNumber() {
    return Entry.of("sharp.scaleNumber", "scale number of the picture")
        .meaning("How many times the object is larger than its picture on the sensor.")
        .symbol("S", Unit.ONE)
        .range(Range.above(0))
        .formula("1 / sharp.magnification")
        .source("definition; textbooks of photogrammetry")
        .checkedBy("PHO-13")
        .by(r -> 1 / r.si("sharp.magnification"));
  }

  private static Quantity aperture() {
    return Entry.of("sharp.aperture", "width of the aperture")
        .meaning("The hole the light comes through at the f-number to set.")
        .symbol("d_{\\mathrm{a}}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("kit.focalLength / sharp.fNumber")
        .source("definition of the f-number")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("kit.focalLength") / r.si("sharp.fNumber"));
  }

  private static Quantity inFront() {
    return Entry.of("sharp.inFront", "sharp depth before the focus")
        .meaning("How much of the depth to hold sharp lies before the focus distance.")
        .symbol("\\Delta_{\\mathrm{fr}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("sharp.focus - sharp.near")
        .source("difference of distances")
        .checkedBy("DOF-15")
        .by(r -> r.si("sharp.focus") - r.si("sharp.near"));
  }

  private static Quantity behind() {
    return Entry.of("sharp.behind", "sharp depth behind the focus")
        .meaning("How much of the depth to hold sharp lies behind the focus distance.")
        .symbol("\\Delta_{\\mathrm{be}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("sharp.far - sharp.focus")
        .source("difference of distances")
        .checkedBy("DOF-15")
        .by(r -> r.si("sharp.far") - r.si("sharp.focus"));
  }

  private static Quantity focusTolerance() {
    return Entry.of("sharp.focusTolerance", "depth of focus to either side")
        .meaning("How far the sensor may lie off the image before a point is a blur spot wide.")
        .symbol("\\Delta v", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("sharp.effective * sharp.blurSpot")
        .source("similar triangles behind the lens; textbooks of optics")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("sharp.effective") * r.si("sharp.blurSpot"));
  }

  private static Quantity printSpot() {
    return Entry.of("sharp.printSpot", "blur spot of the rule for prints")
        .meaning("The blur that the usual tables allow, made for looking at a print.")
        .symbol("c_{\\mathrm{print}}", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("kit.diagonal / 1500")
        .source("one part in 1500 of the diagonal; common practice, no source")
        .checkedBy("COC-02")
        .by(r -> CircleOfConfusion.fromDiagonal(r.length("kit.diagonal")).metres());
  }

  private static Quantity printPixels() {
    return Entry.of("sharp.printPixels", "blur of the rule for prints in pixels")
        .meaning("How many pixels wide the usual tables let a point be blurred.")
        .symbol("b_{\\mathrm{print}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("sharp.printSpot / kit.pixelPitch")
        .source("division")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.length("sharp.printSpot").over(r.length("kit.pixelPitch")));
  }

  private static Quantity enlargement() {
    return Entry.of("sharp.enlargement", "enlargement from sensor to print")
        .meaning("How many times a print to look at is larger than the sensor, by diagonals.")
        .symbol("V_{\\mathrm{pr}}", Unit.ONE)
        .range(Range.above(0))
        .formula("aim.printDiagonal / kit.diagonal")
        .source("ratio of lengths")
        .checkedBy("COC-04")
        .by(
            r ->
                CircleOfConfusion.enlargement(
                    r.length("aim.printDiagonal"), r.length("kit.diagonal")));
  }

  private static Quantity eyeSpot() {
    return Entry.of("sharp.eyeSpot", "least spot an eye sees on the print")
        .meaning("The smallest spot on the print that does not look like a point, from that far.")
        .symbol("c_{\\mathrm{eye}}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("0.2mm * aim.viewingDistance / 25cm")
        .source("five line pairs a millimetre at 25 cm; common practice, no source")
        .checkedBy("COC-03")
        .by(r -> CircleOfConfusion.onPrint(r.length("aim.viewingDistance"), EYE_LINES).metres());
  }

  private static Quantity viewSpot() {
    return Entry.of("sharp.viewSpot", "blur spot for looking at that print")
        .meaning("The blur on the sensor that nobody sees on that print; measuring needs less.")
        .symbol("c_{\\mathrm{view}}", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("sharp.eyeSpot / sharp.enlargement")
        .source("ratio of lengths")
        .checkedBy("COC-01", "COC-03", "COC-04")
        .by(
            r ->
                CircleOfConfusion.fromPrint(r.length("sharp.eyeSpot"), r.si("sharp.enlargement"))
                    .metres());
  }
}
