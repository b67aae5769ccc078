package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Mark;

/** Draws the mark of a single point. */
final class MarkShape {

  private static final double HALF = 3.6;

  private MarkShape() {}

  static void draw(SvgWriter svg, Point at, Mark mark) {
    Stroke edge = Stroke.solid(mark.ink(), 1.5);
    switch (mark.shape()) {
      case DOT -> svg.dot(at, 4.5, Fill.ACCENT);
      case RING -> svg.circle(at, HALF, edge, Fill.PAPER);
      case SQUARE -> svg.box(new Box(at.x(), at.y(), at.x(), at.y()).grown(HALF), edge, Fill.PAPER);
      case DIAMOND -> svg.polygon(corners(at, 0, -5, 5, 0, 0, 5, -5, 0), edge, Fill.PAPER);
      case TRIANGLE -> svg.polygon(corners(at, 0, -4.6, 4.4, 3.4, -4.4, 3.4), edge, Fill.PAPER);
      case CROSS -> {
        svg.line(at.plus(-HALF, -HALF), at.plus(HALF, HALF), edge);
        svg.line(at.plus(-HALF, HALF), at.plus(HALF, -HALF), edge);
      }
    }
  }

  private static List<Point> corners(Point at, double... xy) {
    Point[] corners = new Point[xy.length / 2];
    for (int i = 0; i < corners.length; i++) {
      corners[i] = at.plus(xy[2 * i], xy[2 * i + 1]);
    }
    return List.of(corners);
  }
}
