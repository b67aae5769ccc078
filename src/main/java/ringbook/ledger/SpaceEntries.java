package ringbook.ledger;

import java.util.List;
import ringbook.units.Unit;

/** Room that is missing, and what an object needs that turns while the camera stands still. */
final class SpaceEntries {

  private static final String CIRCLE = "circumference of a circle";

  /** The disc below the object is half as wide again, so that its marks stick out. */
  private static final double DISC = 1.5;

  private SpaceEntries() {}

  static List<Quantity> entries() {
    return List.of(missing(), behind(), discDiameter(), discMark());
  }

  private static Quantity missing() {
    return Entry.of("room.missing", "room that is missing")
        .meaning(
            "How much farther the nearest wall or piece of furniture must be from the middle of the"
                + " object for the whole ring to be free; 0 where it is free.")
        .symbol("r_{\\mathrm{miss}}", Unit.CENTIMETRE)
        .range(Range.from(0))
        .formula("max(0, ring.floorDistance - room.free)")
        .source("difference of lengths")
        .checkedBy("test:SpaceRoutesTest")
        .by(r -> Math.max(0, r.si("ring.floorDistance") - r.si("room.free")));
  }

  private static Quantity behind() {
    return Entry.of("room.behind", "share of the picture that shows the room")
        .meaning(
            "What is left of the picture beside a rectangle as high and as wide as the object"
                + " turns, at the near face.")
        .symbol("q_{\\mathrm{back}}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.decimals(0))
        .formula("1 - distance.filledLong * distance.filledShort")
        .source("areas of rectangles")
        .checkedBy("test:SpaceRoutesTest")
        .by(r -> 1 - r.si("distance.filledLong") * r.si("distance.filledShort"));
  }

  private static Quantity discDiameter() {
    return Entry.of("room.discDiameter", "diameter of the disc for turning")
        .meaning("A paper disc below the object, half as wide again as the object when it turns.")
        .symbol("d_{\\mathrm{disc}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("1.5 * distance.turningWidth")
        .source("common practice, no source")
        .checkedBy("test:SpaceRoutesTest")
        .by(r -> DISC * r.si("distance.turningWidth"));
  }

  private static Quantity discMark() {
    return Entry.of("room.discMark", "way from mark to mark on the disc")
        .meaning("Along the edge of the disc, from the mark of one photograph to the next.")
        .symbol("b_{\\mathrm{disc}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("pi * room.discDiameter / ring.photos")
        .source(CIRCLE)
        .checkedBy("test:SpaceRoutesTest")
        .by(r -> Math.PI * r.si("room.discDiameter") / r.si("ring.photos"));
  }
}
