package ringbook.course.typeset;

import java.awt.Shape;
import java.awt.geom.PathIterator;

/**
 * Writes an outline as the data of an SVG path, in whole units: one {@code M} with where it begins,
 * then relative steps, which are the same wherever the outline stands.
 */
public final class PathText {

  private static final String MARKS = "MLQCZ";
  private static final int[] POINTS = {1, 1, 2, 3, 0};

  private final StringBuilder out = new StringBuilder();
  private long x;
  private long y;
  private long startX;
  private long startY;

  private PathText() {}

  /** The data of a path with the outline of {@code shape}, each number rounded to a whole. */
  public static String of(Shape shape) {
    PathText text = new PathText();
    double[] points = new double[6];
    for (PathIterator steps = shape.getPathIterator(null); !steps.isDone(); steps.next()) {
      text.step(steps.currentSegment(points), points);
    }
    return text.out.toString();
  }

  private void step(int kind, double[] points) {
    if (kind == PathIterator.SEG_CLOSE) {
      out.append('z');
      x = startX;
      y = startY;
      return;
    }
    if (kind == PathIterator.SEG_LINETO
        && Math.round(points[0]) == x
        && Math.round(points[1]) == y) {
      return;
    }
    char mark = MARKS.charAt(kind);
    out.append(out.length() == 0 ? mark : Character.toLowerCase(mark));
    long fromX = x;
    long fromY = y;
    for (int i = 0; i < POINTS[kind]; i++) {
      x = Math.round(points[2 * i]);
      y = Math.round(points[2 * i + 1]);
      number(x - fromX, i > 0);
      number(y - fromY, true);
    }
    if (kind == PathIterator.SEG_MOVETO) {
      startX = x;
      startY = y;
    }
  }

  /** A minus sign parts two numbers as well as a blank does. */
  private void number(long number, boolean after) {
    if (after && number >= 0) {
      out.append(' ');
    }
    out.append(number);
  }
}
