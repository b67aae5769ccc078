package ringbook.ledger;

import java.util.List;
import ringbook.optics.AngleOfView;
import ringbook.optics.Sensor;
import ringbook.units.Num;
import ringbook.units.Unit;

/** What follows from camera and lens alone. */
final class KitEntries {

  private KitEntries() {}

  static List<Quantity> entries() {
    return List.of(
        diagonal(),
        cropFactor(),
        areaRatio(),
        equivalentError(),
        megapixels(),
        pixelPitch(),
        focalPixels(),
        angle("kit.angleLong", "long side", "kit.sensorWidth", "\\beta_{\\mathrm{l}}"),
        angle("kit.angleShort", "short side", "kit.sensorHeight", "\\beta_{\\mathrm{s}}"),
        angle("kit.angleDiagonal", "diagonal", "kit.diagonal", "\\beta_{\\mathrm{d}}"));
  }

  private static Quantity diagonal() {
    return Entry.of("kit.diagonal", "diagonal of the sensor")
        .meaning("The sensor from corner to corner.")
        .symbol("d", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("sqrt(kit.sensorWidth ^ 2 + kit.sensorHeight ^ 2)")
        .source("Pythagoras")
        .checkedBy("CRP-01", "CRP-04", "CRP-05", "CRP-06")
        .by(r -> Num.hypot(r.si("kit.sensorWidth"), r.si("kit.sensorHeight")));
  }

  private static Quantity cropFactor() {
    return Entry.of("kit.cropFactor", "crop factor")
        .meaning(
            "How many times the diagonal of this sensor goes into that of a 36 mm by 24 mm"
                + " frame.")
        .symbol("k_{\\mathrm{c}}", Unit.ONE)
        .range(Range.above(0))
        .formula("sqrt(36mm ^ 2 + 24mm ^ 2) / kit.diagonal")
        .source("the rule by diagonal, on which 35 mm equivalent focal lengths rest")
        .checkedBy("CRP-08", "CRP-13")
        .by(r -> Sensor.FULL_FRAME_DIAGONAL.over(r.length("kit.diagonal")));
  }

  private static Quantity areaRatio() {
    return Entry.of("kit.areaRatio", "area ratio to a full frame")
        .meaning("How many times the area of this sensor goes into a frame of 36 mm by 24 mm.")
        .symbol("r_{\\mathrm{A}}", Unit.ONE)
        .range(Range.above(0))
        .formula("36mm * 24mm / (kit.sensorWidth * kit.sensorHeight)")
        .source("areas of rectangles")
        .checkedBy("CRP-07")
        .by(r -> 36e-3 * 24e-3 / (r.si("kit.sensorWidth") * r.si("kit.sensorHeight")));
  }

  private static Quantity equivalentError() {
    return Entry.of("kit.equivalentError", "rounding of the 35 mm equivalent")
        .meaning(
            "How far the sensor size may be off if it was worked out from a 35 mm equivalent,"
                + " which is given in whole millimetres.")
        .symbol("\\delta_{35}", Unit.PERCENT)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("0.5mm / kit.equivalent")
        .source("half of the last digit")
        .checkedBy("EXF-14")
        .by(r -> Sensor.equivalentError(r.length("kit.equivalent")));
  }

  private static Quantity megapixels() {
    return Entry.of("kit.megapixels", "millions of pixels")
        .meaning("How many million pixels one photograph has.")
        .symbol("n_{\\mathrm{Mpx}}", Unit.ONE)
        .range(Range.above(0))
        .formula("kit.pixelsAcross * kit.pixelsDown / 1000000")
        .source("rows times columns")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("kit.pixelsAcross") * r.si("kit.pixelsDown") / 1e6);
  }

  private static Quantity pixelPitch() {
    return Entry.of("kit.pixelPitch", "pixel pitch")
        .meaning("The distance from the middle of one pixel to the middle of the next.")
        .symbol("p", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("kit.sensorWidth / kit.pixelsAcross")
        .source("division of the sensor into equal pixels")
        .checkedBy("MOT-01")
        .by(r -> r.length("kit.sensorWidth").metres() / r.si("kit.pixelsAcross"));
  }

  private static Quantity focalPixels() {
    return Entry.of("kit.focalPixels", "focal length in pixels")
        .meaning("The focal length counted in pixels, as programs that measure pictures use it.")
        .symbol("f_{\\mathrm{px}}", Unit.PIXEL)
        .range(Range.above(0))
        .rounded(Rounding.significant(4))
        .formula("kit.focalLength / kit.pixelPitch")
        .source("pinhole camera, textbooks of photogrammetry")
        .checkedBy("OCV-02")
        .by(r -> r.length("kit.focalLength").over(r.length("kit.pixelPitch")));
  }

  private static Quantity angle(String key, String side, String length, String symbol) {
    return Entry.of(key, "angle of view along the " + side)
        .meaning("How wide the lens sees along the " + side + " when focused far away.")
        .symbol(symbol, Unit.DEGREE)
        .range(Range.degrees(0, 180))
        .formula("2 * atan(" + length + " / (2 * kit.focalLength))")
        .source("right triangle of half the side and the focal length")
        .checkedBy("FOV-01", "FOV-03", "FOV-05", "FOV-10", "test:CameraLibraryTest")
        .by(r -> AngleOfView.of(r.length(length), r.length("kit.focalLength")).radians());
  }
}
