package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** The name of a file taken apart: what each piece of it says. */
final class FileName {

  private static final double WIDTH = 560;
  private static final double BASE = 52;
  private static final double SIZE = 20;
  private static final double STEP = 34;

  private final Readings readings;
  private final SvgWriter svg;
  private final List<Piece> pieces;

  /** A piece of the name and its meaning. */
  private record Piece(String text, String says) {}

  private FileName(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    String number = "0".repeat((int) readings.si("handover.digits") - 1) + "1";
    String digits = readings.text("handover.digits");
    pieces =
        List.of(
            new Piece("YYYY-MM-DD", "the day, as ISO 8601 writes it: year, month, day"),
            new Piece("_object", "one short word for the object, without spaces"),
            new Piece("_r1", "the run: r1 is ring 1, t is over the top"),
            new Piece("_" + number, "its number, in " + digits + " digits"),
            new Piece(".jpg", "the kind of file"));
    svg = new SvgWriter(WIDTH, BASE + 30 + pieces.size() * STEP, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new FileName(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double x = 16;
    for (int i = 0; i < pieces.size(); i++) {
      Piece piece = pieces.get(i);
      double width = TextWidth.of(piece.text(), SIZE) * 1.12;
      double y = BASE + 36 + (pieces.size() - 1 - i) * STEP;
      double tick = x + Math.min(width / 2, 26);
      svg.line(new Point(x + 2, BASE + 9), new Point(x + width - 4, BASE + 9), bar(i));
      svg.line(new Point(tick, BASE + 9), new Point(tick, y - 5), Stroke.solid(Ink.FAINT, 1.2));
      svg.line(new Point(tick, y - 5), new Point(tick + 8, y - 5), Stroke.solid(Ink.FAINT, 1.2));
      Point at = new Point(x + 1, BASE);
      svg.text(new Label(piece.text(), at, Anchor.START, SIZE, Label.Weight.BOLD));
      says(piece, tick + 12, y);
      x += width;
    }
    readings.tabulate("job.runs", "job.files", "handover.digits");
    pieces.forEach(piece -> readings.row(piece.text(), piece.says()));
    return readings.figure(svg, "A file name taken apart", description());
  }

  private static Stroke bar(int piece) {
    return piece % 2 == 0 ? Stroke.solid(Ink.ACCENT, 3) : Stroke.dashed(Ink.SECOND, 3, "5 3");
  }

  /** To the right of the tick or, near the edge, to its left. */
  private void says(Piece piece, double x, double y) {
    double width = TextWidth.of(piece.says(), Label.SIZE);
    boolean fits = x + width < WIDTH - 8;
    svg.text(
        Label.of(piece.says(), new Point(fits ? x : x - 24, y), fits ? Anchor.START : Anchor.END));
  }

  private String description() {
    List<String> told = new ArrayList<>();
    StringBuilder whole = new StringBuilder();
    for (Piece piece : pieces) {
      whole.append(piece.text());
      told.add(piece.text() + ", " + piece.says());
    }
    return "The file name "
        + whole
        + " in five pieces: "
        + String.join("; ", told)
        + ". With "
        + readings.text("job.files")
        + " files the numbers need "
        + readings.text("handover.digits")
        + " digits.";
  }
}
