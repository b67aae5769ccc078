package ringbook.ledger;

import java.util.List;
import ringbook.optics.Sampling;
import ringbook.units.Length;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** How finely the pixels sample the object, and how far one may stand for the detail wanted. */
final class SamplingEntries {

  private SamplingEntries() {}

  static List<Quantity> entries() {
    return List.of(
        sampling("distance.samplingNear", "near face", "distance.standoff", "near"),
        sampling("distance.samplingMiddle", "middle", "distance.middle", "mid"),
        sampling("distance.samplingFar", "far face", "distance.far", "far"),
        samplingWanted(),
        pixelsOnDetail(),
        fine(),
        largestStandoff());
  }

  private static Quantity samplingWanted() {
    return Entry.of("distance.samplingWanted", "sampling distance wanted")
        .meaning("The largest length on the object that may fall on one pixel.")
        .symbol("g_{\\mathrm{want}}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("aim.detail / aim.pixelsPerDetail")
        .source("sampling theorem asks for 2 pixels; 3 is common practice, no source")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.length("aim.detail").metres() / r.si("aim.pixelsPerDetail"));
  }

  private static Quantity pixelsOnDetail() {
    return Entry.of("distance.pixelsOnDetail", "pixels on the smallest detail")
        .meaning("How many pixels the smallest detail wanted spans at the far face.")
        .symbol("k_{\\mathrm{far}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("aim.detail / distance.samplingFar")
        .source("division")
        .checkedBy("test:DistanceRoutesTest", "test:CameraLibraryTest")
        .by(r -> r.length("aim.detail").over(r.length("distance.samplingFar")));
  }

  private static Quantity fine() {
    return Entry.of("distance.fine", "sampled finely enough")
        .meaning("Whether even the far face is sampled as finely as wanted.")
        .symbol("\\mathrm{fine}", Unit.ANSWER)
        .formula("distance.samplingFar <= distance.samplingWanted")
        .source("comparison; the far face is the coarsest")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Quantity.atMost(r.si("distance.samplingFar"), r.si("distance.samplingWanted")));
  }

  private static Quantity largestStandoff() {
    return Entry.of("distance.largest", "largest standoff")
        .meaning("The farthest the lens may be from the near face for the detail wanted.")
        .symbol("u_{\\max}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula(
            "kit.focalLength * (1 + distance.samplingWanted / kit.pixelPitch)"
                + " - distance.turningWidth")
        .source("thin lens, solved for the distance of the far face")
        .checkedBy("GSD-04")
        .by(SamplingEntries::largest);
  }

  private static Quantity sampling(String key, String where, String distance, String index) {
    return Entry.of(key, "sampling distance at the " + where)
        .meaning("The length on the object, seen square on, that falls on one pixel there.")
        .symbol("g_{\\mathrm{" + index + "}}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .formula("kit.pixelPitch * (" + distance + " - kit.focalLength) / kit.focalLength")
        .source("thin lens; textbooks of photogrammetry")
        .checkedBy("GSD-01", "GSD-04")
        .by(
            r ->
                Sampling.onObject(
                        r.length("kit.pixelPitch"), r.length("kit.focalLength"), r.length(distance))
                    .metres());
  }

  private static double largest(Reckoning r) {
    Length far =
        Sampling.distance(
            r.length("kit.pixelPitch"),
            r.length("kit.focalLength"),
            r.length("distance.samplingWanted"));
    Length largest = far.minus(r.length("distance.turningWidth"));
    Length closest = r.scene().kit().lens().closestFocus();
    if (!Whole.atMost(closest.metres(), largest.metres())) {
      Length there =
          Sampling.onObject(
              r.length("kit.pixelPitch"),
              r.length("kit.focalLength"),
              closest.plus(r.length("distance.turningWidth")));
      double detail = there.times(r.scene().aim().pixelsPerDetail()).metres();
      throw new RefusedException(
          "Even at its closest focus, "
              + r.text("kit.closestFocus")
              + ", this lens does not sample the far face finely enough.",
          "From there it shows a detail of "
              + Enough.text(r, "aim.detail", detail)
              + ". Ask for that, or take a longer lens.");
    }
    return largest.metres();
  }
}
