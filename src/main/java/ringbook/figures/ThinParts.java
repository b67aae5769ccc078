package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * A thin part as pixels see it: one pixel wide, as wide as a detail must be, and as wide as the
 * thinnest part of the object. Each pixel is a square filled by the share that the part covers.
 */
final class ThinParts {

  private static final double WIDTH = 560;
  private static final double SIDE = 153;
  private static final int CELLS = 9;
  private static final int MOST_CELLS = 45;
  private static final double DRAWN = 8;
  private static final double PANEL = 184;
  private static final double TOP = 34;
  private static final int FINE = 6;
  private static final double FULL = 0.98;
  private static final double SEEN = 0.02;

  /** Bars reach a little into the next row, so that no hairline shows between them. */
  private static final double JOIN = 0.4;

  /** How much the part leans, as a slope; upright ones would hit or miss whole columns. */
  private static final double LEAN = 0.22;

  /** The part lies between two columns, as it may well do. */
  private static final double SHIFT = 0.5;

  private final Readings readings;
  private final SvgWriter svg;

  private ThinParts(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TOP + SIDE + 46, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new ThinParts(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double wanted = readings.si("aim.pixelsPerDetail");
    boolean stated = readings.known("fitness.thinPixels");
    double own = stated ? readings.si("fitness.thinPixels") : 2 * wanted;
    panel(0, "one pixel", 1, readings.text("distance.samplingFar"));
    panel(1, pixels(wanted) + ": wanted", wanted, readings.text("fitness.thinnestShown"));
    String last = stated ? pixels(own) + ": its thinnest" : "twice the wanted";
    panel(2, last, own, stated ? readings.text("subject.thinnest") : pixels(own));
    readings.tabulate(
        "distance.samplingFar",
        "aim.pixelsPerDetail",
        "fitness.thinnestShown",
        "subject.thinnest",
        "fitness.thinPixels",
        "fitness.thin");
    return readings.figure(svg, "A thin part as pixels see it", description(stated));
  }

  private static String pixels(double count) {
    return Numbers.significant(count, 2) + "\u00a0" + Unit.PIXEL.symbol();
  }

  private void panel(int number, String name, double width, String size) {
    double middle = WIDTH / 2 + (number - 1) * PANEL;
    int cells = (int) Math.min(MOST_CELLS, Math.max(CELLS, Math.ceil(1.6 * width)));
    Grid grid = new Grid(new Point(middle - SIDE / 2, TOP), cells, width);
    Point corner = grid.corner();
    svg.box(
        new Box(corner.x(), corner.y(), corner.x() + SIDE, corner.y() + SIDE),
        Stroke.solid(Ink.FAINT, 1),
        Fill.PAPER);
    for (int row = 0; row < cells; row++) {
      row(grid, row);
    }
    edges(grid);
    svg.text(Label.of(name, new Point(middle, TOP - 12), Anchor.MIDDLE).bold());
    svg.text(Label.of(size, new Point(middle, TOP + SIDE + 24), Anchor.MIDDLE));
  }

  /** Full pixels side by side as one bar, others by the share that is covered. */
  private void row(Grid grid, int row) {
    int from = 0;
    for (int column = 0; column <= grid.cells(); column++) {
      double share = column < grid.cells() ? grid.covered(column, row) : 0;
      if (share < FULL) {
        fill(grid, from, column, row);
        from = column + 1;
        if (share > SEEN) {
          part(grid, column, row, share);
        }
      }
    }
    for (int column = 0; column < grid.cells() && grid.cell() >= DRAWN; column++) {
      svg.box(grid.box(column, column + 1, row), Stroke.solid(Ink.FAINT, 0.5), Fill.NONE);
    }
  }

  private void fill(Grid grid, int from, int to, int row) {
    if (from < to) {
      Box bar = grid.box(from, to, row);
      Box joined = new Box(bar.left(), bar.top(), bar.right(), bar.bottom() + JOIN);
      svg.box(joined, null, Fill.ACCENT);
    }
  }

  private void part(Grid grid, int column, int row, double share) {
    Box cell = grid.box(column, column + 1, row);
    double half = grid.cell() / 2 * Math.sqrt(share);
    Point middle = new Point(cell.middleX(), cell.middleY());
    svg.box(
        new Box(middle.x() - half, middle.y() - half, middle.x() + half, middle.y() + half),
        null,
        Fill.ACCENT);
  }

  /** The true edges of the part, over the pixels. */
  private void edges(Grid grid) {
    for (double side : new double[] {-0.5, 0.5}) {
      double half = grid.cells() / 2.0;
      double across = SHIFT + side * grid.width() * Math.sqrt(1 + LEAN * LEAN);
      if (Math.abs(across) + half * LEAN <= half) {
        Point middle = grid.corner().plus((half + across) * grid.cell(), SIDE / 2);
        svg.line(
            middle.plus(-SIDE / 2 * LEAN, -SIDE / 2),
            middle.plus(SIDE / 2 * LEAN, SIDE / 2),
            Stroke.solid(Ink.INK, 1.4));
      }
    }
  }

  /** So many pixels each way, with a part so many pixels wide across them. */
  private record Grid(Point corner, int cells, double width) {

    double cell() {
      return SIDE / cells;
    }

    Box box(int from, int to, int row) {
      return new Box(
          corner.x() + from * cell(),
          corner.y() + row * cell(),
          corner.x() + to * cell(),
          corner.y() + (row + 1) * cell());
    }

    /** Share of a pixel that a leaning strip of so many pixels covers, by counting fine points. */
    double covered(int column, int row) {
      int hits = 0;
      for (int i = 0; i < FINE; i++) {
        for (int j = 0; j < FINE; j++) {
          double x = column + (i + 0.5) / FINE - cells / 2.0 - SHIFT;
          double y = row + (j + 0.5) / FINE - cells / 2.0;
          double away = Math.abs(x - LEAN * y) / Num.hypot(1, LEAN);
          hits += away <= width / 2 ? 1 : 0;
        }
      }
      return (double) hits / (FINE * FINE);
    }
  }

  private String description(boolean stated) {
    return "A leaning part on a grid of pixels, in three widths; each square is filled by the share"
        + " that the part covers. One pixel wide, "
        + readings.text("distance.samplingFar")
        + " at the far face, no pixel is filled: the part drowns. From "
        + readings.text("aim.pixelsPerDetail")
        + ", "
        + readings.text("fitness.thinnestShown")
        + ", there are full pixels with an edge on either side. "
        + (stated
            ? "The thinnest part of the object spans " + readings.text("fitness.thinPixels") + "."
            : "How thin the object gets is not stated; twice that width is shown beside it.");
  }
}
