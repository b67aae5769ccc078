package ringbook.ledger;

import java.util.List;
import ringbook.assess.PointPrecision;
import ringbook.shots.Strip;
import ringbook.units.Length;
import ringbook.units.Unit;
import ringbook.units.Whole;

/**
 * Rows of photographs along a flat face, close enough for the smallest detail: short side of the
 * picture along the row.
 */
final class StripEntries {

  private static final String FLAT = "parallel axes, flat face";
  private static final String LENS = "thin lens, sampling at a distance";

  private StripEntries() {}

  static List<Quantity> entries() {
    return List.of(
        standoff(),
        footprint(),
        across(),
        length(),
        base(),
        baseRatio(),
        rayAngle(),
        fewest(),
        frames(),
        twice(),
        imagesPerPoint(),
        rows(),
        photos(),
        nearOverlap(),
        depth());
  }

  private static Strip strip(Reckoning r) {
    Length footprint = r.length("strip.footprint");
    double overlap = Strip.overlapOf(r.length("strip.base"), footprint);
    return new Strip(footprint, overlap, r.length("strip.length"));
  }

  private static Quantity standoff() {
    return length("strip.standoff", "standoff for the strip", "u_{\\mathrm{s}}")
        .range(Range.above(0))
        .meaning("Distance from lens to face at which the smallest detail just has its pixels.")
        .formula("kit.focalLength * (1 + distance.samplingWanted / kit.pixelPitch)")
        .source(LENS)
        .checkedBy("test:HoleRoutesTest", "PHO-02")
        .by(StripEntries::standoffOf);
  }

  private static double standoffOf(Reckoning r) {
    double standoff =
        r.si("kit.focalLength") * (1 + r.si("distance.samplingWanted") / r.si("kit.pixelPitch"));
    double closest = r.scene().kit().lens().closestFocus().metres();
    if (!Whole.atMost(closest, standoff)) {
      throw new RefusedException(
          "the lens cannot focus near enough to show that detail",
          "it focuses from "
              + r.text("kit.closestFocus").replace('\u00a0', ' ')
              + " on; ask for a coarser detail or use a longer focal length");
    }
    return standoff;
  }

  private static Quantity footprint() {
    return length("strip.footprint", "footprint along the row", "W_{\\mathrm{s}}")
        .range(Range.above(0))
        .meaning("What one photograph covers along the row, with its short side.")
        .formula(
            "kit.pixelsDown * kit.pixelPitch * (strip.standoff - kit.focalLength) /"
                + " kit.focalLength")
        .source(LENS)
        .checkedBy("test:HoleRoutesTest")
        .by(r -> side(r, "kit.pixelsDown"));
  }

  private static Quantity across() {
    return length("strip.across", "footprint across the row", "H_{\\mathrm{s}}")
        .range(Range.above(0))
        .meaning("What one photograph covers across the row, with its long side.")
        .formula(
            "kit.pixelsAcross * kit.pixelPitch * (strip.standoff - kit.focalLength) /"
                + " kit.focalLength")
        .source(LENS)
        .checkedBy("test:HoleRoutesTest")
        .by(r -> side(r, "kit.pixelsAcross"));
  }

  private static double side(Reckoning r, String pixels) {
    return r.si(pixels) * RoomEntries.samplingAt(r, r.si("strip.standoff"));
  }

  private static Quantity length() {
    return length("strip.length", "length of the strip", "L_{\\mathrm{s}}")
        .range(Range.above(0))
        .meaning("The longest side of the object, which the row follows.")
        .formula("max(subject.height, subject.width)")
        .source("definition")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Math.max(r.si("subject.height"), r.si("subject.width")));
  }

  private static Quantity base() {
    return length("strip.base", "way from frame to frame", "B_{\\mathrm{s}}")
        .range(Range.above(0))
        .meaning("How far to move between two photographs of the row.")
        .formula("(1 - aim.stripOverlap) * strip.footprint")
        .source(FLAT)
        .checkedBy("PHO-07", "STE-08")
        .by(r -> (1 - r.si("aim.stripOverlap")) * r.si("strip.footprint"));
  }

  private static Quantity baseRatio() {
    return Entry.of("strip.baseRatio", "base to distance of the strip")
        .meaning("Way from frame to frame over the standoff.")
        .symbol("k_{B\\mathrm{s}}", Unit.ONE)
        .range(Range.above(0))
        .formula("strip.base / strip.standoff")
        .source("definition")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> r.si("strip.base") / r.si("strip.standoff"));
  }

  private static Quantity rayAngle() {
    return Entry.of("strip.rayAngle", "angle between lines of sight in the strip")
        .meaning("Angle between the lines of sight of two neighbours to a spot midway.")
        .symbol("\\gamma_{\\mathrm{strip}}", Unit.DEGREE)
        .range(Range.degrees(0, 180))
        .formula("2 * atan(strip.baseRatio / 2)")
        .source(FLAT)
        .checkedBy("STE-06", "STE-07")
        .by(r -> Strip.rayAngle(r.si("strip.baseRatio")).radians());
  }

  private static Quantity fewest() {
    return count("strip.fewest", "fewest frames in the row", "n_{\\mathrm{f}}")
        .range(Range.wholeFrom(1))
        .meaning("Frames that cover the face from end to end, the ends only once.")
        .formula(
            "if(strip.length <= strip.footprint, 1, ceil((strip.length - strip.footprint) /"
                + " strip.base) + 1)")
        .source(FLAT)
        .checkedBy("STE-08")
        .by(r -> strip(r).fewest());
  }

  private static Quantity frames() {
    return count("strip.frames", "frames in the row", "n_{\\mathrm{s}}")
        .range(Range.wholeFrom(2))
        .meaning("Frames from one end of the face in the middle of the picture to the other end.")
        .formula("ceil(strip.length / strip.base) + 1")
        .source("usual count of photographs in a line, with one to start from")
        .checkedBy("PHO-08", "PHO-10")
        .by(r -> Strip.centred(r.length("strip.length"), r.length("strip.base")));
  }

  private static Quantity twice() {
    return count("strip.twice", "frames for two of every spot", "n_{2}")
        .range(Range.wholeFrom(2))
        .meaning("Frames so that every spot, the ends too, is in at least two photographs.")
        .formula("max(2, ceil((strip.length + 2 * strip.base - strip.footprint) / strip.base) + 1)")
        .source(FLAT)
        .checkedBy("STE-09")
        .by(
            r ->
                strip(r)
                    .twice()
                    .orElseThrow(
                        () ->
                            new RefusedException(
                                "with less than half overlap some spots are in one photograph only",
                                "overlap by half or more; by two thirds is safe")));
  }

  private static Quantity imagesPerPoint() {
    return count("strip.imagesPerPoint", "frames that hold one spot", "k_{\\mathrm{s}}")
        .range(Range.wholeFrom(1))
        .meaning("How many frames of the row hold any one spot inside it, at least.")
        .formula("floor(1 / (1 - aim.stripOverlap))")
        .source(FLAT)
        .checkedBy("STE-10")
        .by(r -> Whole.down(1 / (1 - r.si("aim.stripOverlap"))));
  }

  private static Quantity rows() {
    return count("strip.rows", "rows for the whole face", "N_{\\mathrm{s}}")
        .range(Range.wholeFrom(1))
        .meaning("Rows that cover the shorter side of the face, with the same overlap.")
        .formula(
            "max(0, ceil((min(subject.height, subject.width) - strip.across) / ((1 -"
                + " aim.stripOverlap) * strip.across))) + 1")
        .source(FLAT)
        .checkedBy("test:HoleRoutesTest")
        .by(
            r -> {
              double shorter = Math.min(r.si("subject.height"), r.si("subject.width"));
              double across = r.si("strip.across");
              double step = (1 - r.si("aim.stripOverlap")) * across;
              return Math.max(0, Whole.up((shorter - across) / step)) + 1;
            });
  }

  private static Quantity photos() {
    return count("strip.photos", "photographs of the whole face", "n_{\\mathrm{face}}")
        .range(Range.wholeFrom(2))
        .meaning("Rows times frames in a row.")
        .formula("strip.rows * strip.frames")
        .source("count")
        .checkedBy("test:HoleRoutesTest", "PHO-11")
        .by(r -> r.si("strip.rows") * r.si("strip.frames"));
  }

  private static Quantity nearOverlap() {
    return Entry.of("strip.nearOverlap", "overlap on a part that stands out")
        .meaning(
            "Overlap that is left on a part that stands out of the face by a tenth of the"
                + " standoff: nearer parts overlap less.")
        .symbol("q_{\\mathrm{n}}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.decimals(0))
        .formula("max(0, 1 - strip.base / (0.9 * strip.footprint))")
        .source(FLAT)
        .checkedBy("PHO-12")
        .by(
            r -> {
              Length near = r.length("strip.footprint").times(0.9);
              return Strip.overlapOf(r.length("strip.base"), near);
            });
  }

  private static Quantity depth() {
    return Entry.of("strip.depthPrecision", "depth precision of two neighbours")
        .meaning(
            "Standard deviation of a depth from two neighbours of the row, where the standard"
                + " deviation of one picture coordinate is put in and both pictures are measured.")
        .symbol("\\sigma_{Z}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("aim.pointing * distance.samplingWanted * sqrt(2) / strip.baseRatio")
        .source("propagation of errors through depth = base times distance over parallax")
        .checkedBy("STE-03", "STE-11")
        .by(
            r -> {
              double spot = r.si("aim.pointing") * r.si("distance.samplingWanted");
              double ratio = r.si("strip.baseRatio");
              return PointPrecision.parallelDepth(new Length(spot), ratio).metres();
            });
  }

  private static Entry length(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.CENTIMETRE);
  }

  private static Entry count(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PIECE).rounded(Rounding.decimals(0));
  }
}
