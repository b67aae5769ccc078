package ringbook.ledger;

import java.util.List;
import ringbook.optics.Framing;
import ringbook.units.Unit;

/** How many frames it takes where the whole object in one frame is not sampled finely enough. */
final class TileEntries {

  private TileEntries() {}

  static List<Quantity> entries() {
    return List.of(
        standoff(),
        field("distance.tileFieldAcross", "across", "distance.sideAcross", "F_{\\mathrm{w}}"),
        field("distance.tileFieldUp", "up", "distance.sideUp", "F_{\\mathrm{h}}"),
        tiles("distance.tilesAcross", "across", "distance.turningWidth", "t_{\\mathrm{w}}"),
        tiles("distance.tilesUp", "up", "subject.height", "t_{\\mathrm{h}}"),
        total());
  }

  private static Quantity standoff() {
    return Entry.of("distance.tileStandoff", "standoff fine enough")
        .meaning(
            "The largest standoff that samples as finely as wanted and is not beyond the one"
                + " that fits the picture.")
        .symbol("u_{\\mathrm{t}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("min(distance.standoff, distance.largest)")
        .source("the smaller of two limits")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> Math.min(r.si("distance.standoff"), r.si("distance.largest")));
  }

  private static Quantity field(String key, String way, String side, String symbol) {
    return Entry.of(key, "field " + way + " from there")
        .meaning("How much of the near face one frame shows " + way + " from that standoff.")
        .symbol(symbol, Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula(side + " * (distance.tileStandoff - kit.focalLength) / kit.focalLength")
        .source("thin lens; textbooks of optics")
        .checkedBy("LEN-13")
        .by(
            r ->
                Framing.field(
                        r.length("kit.focalLength"),
                        r.length(side),
                        r.length("distance.tileStandoff"))
                    .metres());
  }

  private static Quantity tiles(String key, String way, String extent, String symbol) {
    String field = way.equals("up") ? "distance.tileFieldUp" : "distance.tileFieldAcross";
    return Entry.of(key, "frames " + way)
        .meaning(
            "How many overlapping frames "
                + way
                + " cover the object as finely as wanted;"
                + " 1 where one frame does.")
        .symbol(symbol, Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0))
        .formula(
            "max(0, ceil(("
                + extent
                + " - "
                + field
                + ") / ((1 - aim.stripOverlap) * "
                + field
                + "))) + 1")
        .source("strip of overlapping frames, end to end; textbooks of photogrammetry")
        .checkedBy("STE-08")
        .by(r -> Framing.frames(r.length(extent), r.length(field), r.si("aim.stripOverlap")));
  }

  private static Quantity total() {
    return Entry.of("distance.tilesTotal", "frames for one view")
        .meaning("How many frames one view of the object takes at the detail wanted.")
        .symbol("n_{\\mathrm{tile}}", Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0))
        .formula("distance.tilesAcross * distance.tilesUp")
        .source("rows times columns")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("distance.tilesAcross") * r.si("distance.tilesUp"));
  }
}
