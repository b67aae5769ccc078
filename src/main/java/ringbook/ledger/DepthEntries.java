package ringbook.ledger;

import java.util.List;
import java.util.Optional;
import ringbook.optics.DepthOfField;
import ringbook.optics.Diffraction;
import ringbook.units.Length;
import ringbook.units.Unit;

/** What is sharp, and how sharp, with the f-number set and the focus where it should be. */
final class DepthEntries {

  private static final String OPTICS = "similar triangles at the aperture; textbooks of optics";

  private DepthEntries() {}

  static List<Quantity> entries() {
    return List.of(
        hyperfocal(),
        nearLimit(),
        farLimit(),
        depth(),
        airy(),
        airyPixels(),
        blur("sharp.blurNearPixels", "near end of the depth", "sharp.near", "n"),
        blur("sharp.blurFarPixels", "far end of the depth", "sharp.far", "F"),
        blur("sharp.blurBackPixels", "far side of the object", "distance.far", "b"),
        finestPeriod(),
        spotPixels());
  }

  private static Quantity hyperfocal() {
    return Entry.of("sharp.hyperfocal", "hyperfocal distance")
        .meaning("The nearest focus distance at which everything beyond looks sharp too.")
        .symbol("H", Unit.METRE)
        .range(Range.above(0))
        .formula("kit.focalLength ^ 2 / (sharp.fNumber * sharp.blurSpot) + kit.focalLength")
        .source(OPTICS)
        .checkedBy("HYP-01", "HYP-03")
        .by(
            r ->
                DepthOfField.hyperfocal(
                        r.length("kit.focalLength"),
                        r.fNumber("sharp.fNumber"),
                        r.length("sharp.blurSpot"))
                    .metres());
  }

  private static Quantity nearLimit() {
    return Entry.of("sharp.nearLimit", "near limit of sharpness")
        .meaning("The nearest distance that is sharp with focus and f-number set.")
        .symbol("n_{\\mathrm{sharp}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula(
            "sharp.focus * (sharp.hyperfocal - kit.focalLength)"
                + " / (sharp.hyperfocal + sharp.focus - 2 * kit.focalLength)")
        .source(OPTICS)
        .checkedBy("DOF-01", "DOF-03", "DOF-05", "HYP-03")
        .by(
            r ->
                DepthOfField.nearLimit(
                        r.length("kit.focalLength"),
                        r.length("sharp.hyperfocal"),
                        r.length("sharp.focus"))
                    .metres());
  }

  private static Quantity farLimit() {
    return Entry.of("sharp.farLimit", "far limit of sharpness")
        .meaning("The farthest distance that is sharp with focus and f-number set.")
        .symbol("F_{\\mathrm{sharp}}", Unit.CENTIMETRE)
        .range(Range.above(0).orEndless())
        .formula(
            "if(sharp.focus < sharp.hyperfocal, sharp.focus"
                + " * (sharp.hyperfocal - kit.focalLength)"
                + " / (sharp.hyperfocal - sharp.focus), inf)")
        .source(OPTICS)
        .checkedBy("DOF-02", "DOF-04", "DOF-06")
        .by(
            r ->
                orInfinity(
                    DepthOfField.farLimit(
                        r.length("kit.focalLength"),
                        r.length("sharp.hyperfocal"),
                        r.length("sharp.focus"))));
  }

  private static Quantity depth() {
    return Entry.of("sharp.depth", "depth of field")
        .meaning("How much depth is sharp with focus and f-number set.")
        .symbol("\\Delta_{\\mathrm{sharp}}", Unit.CENTIMETRE)
        .range(Range.above(0).orEndless())
        .formula("sharp.farLimit - sharp.nearLimit")
        .source("far limit less near limit")
        .checkedBy("DOF-13", "DOF-14")
        .by(r -> r.si("sharp.farLimit") - r.si("sharp.nearLimit"));
  }

  private static Quantity airy() {
    return Entry.of("sharp.airy", "diffraction disc")
        .meaning("How wide the aperture alone spreads a point, up to the first dark ring.")
        .symbol("a", Unit.MICROMETRE)
        .range(Range.above(0))
        .formula("sharp.darkRing * sharp.wavelength * sharp.effective")
        .source("Airy pattern of a round aperture")
        .checkedBy("DIF-01", "DIF-03", "DIF-09")
        .by(r -> Diffraction.disc(Diffraction.GREEN, r.fNumber("sharp.effective")).metres());
  }

  private static Quantity airyPixels() {
    return Entry.of("sharp.airyPixels", "diffraction disc in pixels")
        .meaning("The same, counted in pixels.")
        .symbol("a_{\\mathrm{disc}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("sharp.airy / kit.pixelPitch")
        .source("division")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.length("sharp.airy").over(r.length("kit.pixelPitch")));
  }

  private static Quantity finestPeriod() {
    return Entry.of("sharp.finestPeriod", "finest pattern the aperture passes")
        .meaning(
            "How many pixels one light and one dark line must take up together to show at"
                + " all; from 2 on, the pixels could show finer ones than the aperture lets"
                + " through.")
        .symbol("\\lambda_{\\mathrm{px}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("sharp.wavelength * sharp.effective / kit.pixelPitch")
        .source("cut-off of a round aperture without faults; textbooks of optics")
        .checkedBy("DIF-07")
        .by(
            r ->
                Diffraction.finestPeriod(Diffraction.GREEN, r.fNumber("sharp.effective"))
                    .over(r.length("kit.pixelPitch")));
  }

  private static Quantity spotPixels() {
    return Entry.of("sharp.spotPixels", "spot at the ends in pixels")
        .meaning("Blur, diffraction and the pixel itself taken together.")
        .symbol("b_{\\mathrm{all}}", Unit.PIXEL)
        .range(Range.above(1))
        .formula("sqrt(sharp.blurFarPixels ^ 2 + sharp.airyPixels ^ 2 + 1)")
        .source("sum of squares; a convention, common practice, no source")
        .checkedBy("DIF-10")
        .by(
            r ->
                Diffraction.together(
                        new Length(r.si("sharp.blurFarPixels")),
                        new Length(r.si("sharp.airyPixels")),
                        new Length(1))
                    .metres());
  }

  private static Quantity blur(String key, String where, String point, String index) {
    return Entry.of(key, "blur at the " + where + " in pixels")
        .meaning("How many pixels wide a point at the " + where + " is blurred.")
        .symbol("b_{" + index + "}", Unit.PIXEL)
        .range(Range.from(0))
        .formula(
            "kit.focalLength ^ 2 * abs("
                + point
                + " - sharp.focus) / (sharp.fNumber * "
                + point
                + " * (sharp.focus - kit.focalLength) * kit.pixelPitch)")
        .source(OPTICS)
        .checkedBy("DOF-17")
        .by(
            r ->
                DepthOfField.blur(
                        r.length("kit.focalLength"),
                        r.fNumber("sharp.fNumber"),
                        r.length("sharp.focus"),
                        r.length(point))
                    .over(r.length("kit.pixelPitch")));
  }

  /** A distance that may be infinite, as SI. */
  static double orInfinity(Optional<Length> distance) {
    return distance.map(Length::metres).orElse(Double.POSITIVE_INFINITY);
  }
}
