package ringbook.course.compose;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Ways to the right value of each line that may be wrong in a fault exercise, from what is printed:
 * {@code t.asked(1)} is the first number of the question, {@code t.item(2)} that of the second
 * line. First the lesson's own way, then others that a reader may see in the table.
 */
final class FaultSolvers {

  private static final double FULL_FRAME = Math.hypot(36e-3, 24e-3);
  private static final double TURN = 2 * Math.PI;

  /** The right value, in the units of {@link PrintedTable}. */
  @FunctionalInterface
  interface Way {
    double value(PrintedTable table);
  }

  /** By exercise and line, as in {@code choose-fault 4}. */
  static final Map<String, List<Way>> BY_LINE = new TreeMap<>();

  private FaultSolvers() {}

  private static void mend(String line, Way... ways) {
    BY_LINE.put(line, List.of(ways));
  }

  static {
    // pixel near and far, pixels wanted, thinnest shown, tongue, pixels across it
    mend("choose-fault 4", t -> t.item(3) * t.item(2));
    mend("choose-fault 6", t -> t.item(5) / t.item(2));
    // width, height, diagonal, focal length, crop factor, same view
    mend("camera-fault 3", t -> Math.hypot(t.item(1), t.item(2)), t -> FULL_FRAME / t.item(5));
    mend(
        "camera-fault 6",
        t -> t.item(4) * t.item(5),
        t -> t.item(4) * FULL_FRAME / t.item(3),
        t -> t.item(4) * FULL_FRAME / Math.hypot(t.item(1), t.item(2)));
    // height, width, focal length; standoff, far face, pixel near and far
    mend("distance-sheet 2", t -> t.item(1) + t.asked(2));
    mend(
        "distance-sheet 4", // by the thin lens, and by "twice as far, twice as coarse"
        t -> t.item(3) * (t.item(2) - t.asked(3)) / (t.item(1) - t.asked(3)),
        t -> t.item(3) * t.item(2) / t.item(1));
    // from, to, focus, pixel, blur limit, spot
    mend(
        "focus-fault 3",
        t -> 2 * t.item(1) * t.item(2) / (t.item(1) + t.item(2)),
        t -> 2 / (1 / t.item(1) + 1 / t.item(2)));
    mend("focus-fault 6", t -> t.item(5) * t.item(4));
    // photographs; photographs 2, 3, 5, 10, the last
    mend("ring-table 3", t -> 4 * TURN / t.asked(1), t -> 4 * t.item(1), t -> 2 * t.item(2));
    mend("ring-table 4", t -> 9 * TURN / t.asked(1), t -> 9 * t.item(1));
    mend(
        "ring-table 5",
        t -> (t.asked(1) - 1) * TURN / t.asked(1),
        t -> TURN - t.item(1),
        t -> (t.asked(1) - 1) * t.item(1));
    // distance, middle, lowest, highest; rings, spacing, height, floor, top
    mend("heights-plan 2", t -> (t.asked(4) - t.asked(3)) / (t.item(1) - 1));
    mend("heights-plan 4", t -> t.asked(1) * Math.cos(t.asked(4)));
    mend("heights-plan 5", t -> t.asked(2) + t.asked(1));
    // along the floor, person, photographs, owl; standing, free floor, disc, mark, turn
    mend("room-plan 1", t -> t.asked(1) + t.asked(2), t -> t.item(2) / 2);
    mend("room-plan 3", t -> 1.5 * t.asked(4), t -> t.item(4) * t.asked(3) / Math.PI);
    mend("room-plan 4", t -> Math.PI * t.item(3) / t.asked(3), t -> t.item(3) / 2 * t.item(5));
    // width, depth, limit; angle for the wall, deepest, middle of the floor, floor hidden
    mend("hole-table 1", t -> Math.PI / 2 - t.asked(3), t -> Math.atan(t.asked(1) / t.item(2)));
    mend("hole-table 2", t -> t.asked(1) / Math.tan(t.item(1)));
    mend(
        "hole-table 3",
        t -> Math.atan(t.asked(1) / 2 / t.asked(2)),
        t -> Math.atan(Math.tan(t.item(4)) / 2));
    // lowest, highest, spacing, lowest turned, band, rings, a ring, top, photographs
    mend("under-fault 4", t -> -t.item(1));
    mend("under-fault 5", t -> 2 * Math.min(-t.item(1), t.item(2)));
    mend("under-fault 9", t -> t.item(6) * t.item(7) + t.item(8));
    // longest, bar, bars, error from one, from all, carried
    mend("size-fault 5", t -> t.item(4) / Math.sqrt(t.item(3)), t -> t.item(6) / t.item(1));
    mend(
        "size-fault 6",
        t -> t.item(5) * t.item(1),
        t -> t.item(4) / Math.sqrt(t.item(3)) * t.item(1));
    // rings, a ring, in all rings, in all, seconds, shooting, session
    mend("day-sheet 3", t -> t.item(1) * t.item(2));
    mend("day-sheet 6", t -> t.item(4) * t.item(5), t -> t.item(7) / 3);
    mend("day-sheet 7", t -> 3 * t.item(6), t -> 3 * t.item(4) * t.item(5));
    // photographs, turn, across one, across two, pixel, blur limit, smear
    mend("leave-fault 3", t -> 2 * t.item(2), t -> 2 * TURN / t.item(1), t -> t.item(4) * 2 / 3);
    mend("leave-fault 4", t -> 3 * t.item(2), t -> 3 * TURN / t.item(1), t -> t.item(3) * 3 / 2);
    mend("leave-fault 7", t -> t.item(6) * t.item(5));
    // photographs, slates, files, a file, one copy, three copies
    mend("over-fault 3", t -> t.item(1) + t.item(2));
    mend("over-fault 5", t -> t.item(1) * t.item(4), t -> t.item(6) / 3);
    mend("over-fault 6", t -> 3 * t.item(5), t -> 3 * t.item(1) * t.item(4));
    // a ring, rings, in all rings, top, spare, in all, along the floor, person, room
    mend("own-card 3", t -> t.item(2) * t.item(1));
    mend("own-card 6", t -> Math.ceil((t.item(3) + t.item(4)) * (1 + t.item(5)) - 1e-9));
    mend("own-card 9", t -> t.item(7) + t.item(8));
  }
}
