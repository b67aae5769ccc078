package ringbook.course.compose;

import java.util.List;
import ringbook.course.compose.StockTable.Column;
import ringbook.ledger.Reckoning;

/** The tables that lessons and pages at the back can place by name. */
final class StockTables {

  /** Shares of the frame: from as near as the frame allows to far away. */
  private static final List<Double> FILLS =
      List.of(100.0, 90.0, 75.0, 60.0, 50.0, 40.0, 30.0, 20.0);

  private static final List<StockTable> ALL =
      List.of(
          new StockTable(
              "step-count",
              "aim.step",
              List.of(5.0, 10.0, 15.0, 20.0, 30.0, 72.0),
              Column.of("ring.photos", "pair.shared", "pair.alike", "pair.matchable")),
          new StockTable(
              "ring-counts",
              "aim.step",
              List.of(5.0, 6.0, 7.5, 8.0, 9.0, 10.0, 12.0, 15.0, 18.0, 20.0, 24.0, 30.0),
              Column.of(
                  "ring.photos", "ring.chord", "ring.rayAngle", "pair.matchable", "rings.photos")),
          new StockTable(
              "distances",
              "aim.fill",
              FILLS,
              Column.of(
                  "distance.standoff",
                  "distance.samplingNear",
                  "distance.samplingFar",
                  "sharp.nearLimit",
                  "sharp.farLimit",
                  "sharp.depth")),
          new StockTable(
              "f-numbers",
              "aim.sharpShare",
              List.of(25.0, 50.0, 75.0, 100.0),
              Column.of(
                  "sharp.far",
                  "sharp.focus",
                  "sharp.open",
                  "sharp.closed",
                  "sharp.fNumber",
                  "sharp.window")),
          new StockTable(
              "f-numbers-further",
              "aim.fill",
              FILLS,
              Column.of(
                  "distance.standoff",
                  "sharp.open",
                  "sharp.closed",
                  "sharp.fNumber",
                  "sharp.window")),
          new StockTable(
              "hand-times",
              "kit.equivalent",
              List.of(16.0, 20.0, 24.0, 28.0, 35.0, 50.0, 70.0, 105.0, 135.0),
              List.of(
                  new Column("motion.byTremor", "aim.motionBlur", 0.5),
                  new Column("motion.byTremor", "aim.motionBlur", 1),
                  new Column("motion.byTremor", "aim.motionBlur", 2),
                  new Column("motion.rule", "", 0))),
          new StockTable(
              "moving-times",
              "aim.fill",
              FILLS,
              Column.of(
                  "distance.samplingNear",
                  "motion.byTremor",
                  "motion.byTurntable",
                  "motion.byWalking")),
          new StockTable(
              "lamp-times",
              "aim.usualTime",
              List.of(
                  1 / 12.5, 1 / 15.0, 1 / 20.0, 1 / 25.0, 1 / 30.0, 1 / 40.0, 1 / 50.0, 1 / 60.0,
                  1 / 80.0, 1 / 100.0, 1 / 120.0, 1 / 125.0, 1 / 250.0),
              List.of(
                  new Column("flicker.usualPulses", "place.mains", 50),
                  new Column("flicker.usualSafe", "place.mains", 50),
                  new Column("flicker.usualPulses", "place.mains", 60),
                  new Column("flicker.usualSafe", "place.mains", 60))));

  private StockTables() {}

  static List<String> names() {
    return ALL.stream().map(StockTable::name).toList();
  }

  /** The table with its caption, as XHTML. */
  static String write(String name, String caption, Reckoning reckoning) {
    StockTable table = ALL.stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    return table.write(caption, reckoning);
  }
}
