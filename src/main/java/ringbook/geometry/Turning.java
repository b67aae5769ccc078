package ringbook.geometry;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * The surface that an outline makes when it is turned round the vertical axis. Going along the
 * outline the outside lies to the right where the axis is on the left. Rows of points get as many
 * sides as their radius asks for, so that all triangles are about as large.
 */
final class Turning {

  private static final int FEWEST_SIDES = 12;

  /** Height of a triangle of equal sides, over its side. */
  private static final double ROW = Math.sqrt(3) / 2;

  private record Row(double radius, double height, String part) {}

  private final double edge;
  private final List<Row> rows = new ArrayList<>();

  /** Begins the outline at a point. */
  Turning(Length edge, double radius, double height) {
    this.edge = edge.metres();
    rows.add(new Row(radius, height, ""));
  }

  /** Goes on in a straight line, in as many steps as the edge asks for. */
  Turning line(double radius, double height, String part) {
    Row from = rows.get(rows.size() - 1);
    double length = Num.hypot(radius - from.radius(), height - from.height());
    int steps = steps(length);
    for (int i = 1; i <= steps; i++) {
      double t = (double) i / steps;
      rows.add(
          i == steps
              ? new Row(radius, height, part)
              : new Row(
                  from.radius() + t * (radius - from.radius()),
                  from.height() + t * (height - from.height()),
                  part));
    }
    return this;
  }

  /** Goes on by one step to a point, for curved outlines. */
  Turning to(double radius, double height, String part) {
    rows.add(new Row(radius, height, part));
    return this;
  }

  int steps(double length) {
    return Math.max(1, (int) Math.ceil(length / (ROW * edge)));
  }

  /** The surface; an outline that ends where it began is joined up. */
  Mesh mesh() {
    MeshDraft draft = new MeshDraft();
    Row first = rows.get(0);
    int[] begin = ring(draft, first);
    int[] below = begin;
    for (int i = 1; i < rows.size(); i++) {
      Row row = rows.get(i);
      boolean back =
          i == rows.size() - 1 && row.radius() == first.radius() && row.height() == first.height();
      int[] above = back ? begin : ring(draft, row);
      band(draft, below, above, draft.part(row.part()));
      below = above;
    }
    return draft.mesh();
  }

  private int[] ring(MeshDraft draft, Row row) {
    double round = 2 * Math.PI * row.radius();
    int quarter = Math.max(FEWEST_SIDES / 4, (int) Math.ceil(round / edge / 4));
    int sides = row.radius() == 0 ? 1 : 4 * quarter; // so that it is as wide as it should be
    int[] ring = new int[sides];
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * i / sides;
      ring[i] =
          draft.point(row.radius() * Num.cos(angle), row.radius() * Num.sin(angle), row.height());
    }
    return ring;
  }

  /** Triangles between two rows, always going on in the row that lags behind. */
  private static void band(MeshDraft draft, int[] a, int[] b, int part) {
    if (a.length == 1 && b.length == 1) {
      return; // along the axis
    }
    int stepsA = a.length == 1 ? 0 : a.length;
    int stepsB = b.length == 1 ? 0 : b.length;
    int i = 0;
    int j = 0;
    while (i < stepsA || j < stepsB) {
      boolean lower =
          j == stepsB || (i < stepsA && (long) (i + 1) * stepsB <= (long) (j + 1) * stepsA);
      int fromA = a[i % a.length];
      int fromB = b[j % b.length];
      if (lower) {
        i++;
        draft.triangle(fromA, a[i % a.length], fromB, part);
      } else {
        j++;
        draft.triangle(fromA, b[j % b.length], fromB, part);
      }
    }
  }
}
