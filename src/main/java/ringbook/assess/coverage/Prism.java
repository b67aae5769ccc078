package ringbook.assess.coverage;

import java.util.List;
import ringbook.geometry.Vec3;
import ringbook.shots.Place.Corner;

/** A wall or piece of furniture: an outline in plan, standing on the floor. */
final class Prism {

  private final double[] xs;
  private final double[] ys;
  private final double height;

  /**
   * Stands an outline on the floor.
   *
   * @param height in metres
   */
  Prism(List<Corner> corners, double height) {
    xs = corners.stream().mapToDouble(c -> c.x().metres()).toArray();
    ys = corners.stream().mapToDouble(c -> c.y().metres()).toArray();
    this.height = height;
  }

  /**
   * Whether none of it comes into the box that spans a lens and the reach of an object round the
   * origin, so that it cannot come between them.
   */
  boolean isClearOf(Vec3 lens, double reach) {
    return beyond(xs, lens.x(), reach) || beyond(ys, lens.y(), reach);
  }

  private static boolean beyond(double[] all, double lens, double reach) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double one : all) {
      low = Math.min(low, one);
      high = Math.max(high, one);
    }
    return low > Math.max(lens, reach) || high < Math.min(lens, -reach);
  }

  /** Whether the straight way from a to b goes through it; positions in metres, in the room. */
  boolean blocks(Vec3 a, Vec3 b) {
    for (int i = 0; i < xs.length; i++) {
      if (throughSide(i, a, b)) {
        return true;
      }
    }
    return throughTop(a, b);
  }

  private boolean throughSide(int i, Vec3 a, Vec3 b) {
    int next = i + 1 == xs.length ? 0 : i + 1;
    double ex = xs[next] - xs[i];
    double ey = ys[next] - ys[i];
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double cross = dx * ey - dy * ex;
    if (cross == 0) {
      return false;
    }
    double ox = xs[i] - a.x();
    double oy = ys[i] - a.y();
    double way = (ox * ey - oy * ex) / cross;
    double along = (ox * dy - oy * dx) / cross;
    double z = a.z() + way * (b.z() - a.z());
    return way > 0 && way < 1 && along >= 0 && along < 1 && z >= 0 && z <= height;
  }

  private boolean throughTop(Vec3 a, Vec3 b) {
    if ((a.z() > height) == (b.z() > height)) {
      return false;
    }
    double way = (height - a.z()) / (b.z() - a.z());
    return holds(a.x() + way * (b.x() - a.x()), a.y() + way * (b.y() - a.y()));
  }

  private boolean holds(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < xs.length; i++) {
      int next = i + 1 == xs.length ? 0 : i + 1;
      boolean across = (ys[i] > y) != (ys[next] > y);
      if (across && x < xs[i] + (y - ys[i]) * (xs[next] - xs[i]) / (ys[next] - ys[i])) {
        inside = !inside;
      }
    }
    return inside;
  }
}
