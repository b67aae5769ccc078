package ringbook.geometry;

/**
 * Asks a {@link RayTree} about one ray after another. It begins where the last ray was blocked, so
 * that rays to neighbouring points from one place go fastest; the answers are the same in any
 * order. Not for several threads at once.
 */
public final class RayWalk {

  private final RayTree tree;
  private final int[] stack = new int[RayTreeBuilder.DEEPEST + 2];

  /** Place among the leaves of what blocked the last ray; -1 where nothing did. */
  private int last = -1;

  /** A walk down a tree, which other walks may use at the same time. */
  public RayWalk(RayTree tree) {
    this.tree = tree;
  }

  /** Whether a triangle stands between a and b, coordinates in metres. */
  public boolean blocked(double ax, double ay, double az, double bx, double by, double bz) {
    if (tree.triangles() == 0) {
      return false;
    }
    if (last >= 0) {
      last = blocker(tree.around[last], ax, ay, az, bx - ax, by - ay, bz - az);
    }
    if (last < 0) {
      last = blocker(0, ax, ay, az, bx - ax, by - ay, bz - az);
    }
    return last >= 0;
  }

  /**
   * The place among the leaves of any triangle below a node that stands on the way (d) from a point
   * (a); -1 for none. Block and ray are kept by their middles and halves, and apart if they are so
   * along an axis or, seen along an axis, across the ray: most blocks are told by one short
   * comparison, none needs a division.
   */
  int blocker(int root, double ax, double ay, double az, double dx, double dy, double dz) {
    double mx = ax + 0.5 * dx;
    double my = ay + 0.5 * dy;
    double mz = az + 0.5 * dz;
    double fx = Math.abs(dx);
    double fy = Math.abs(dy);
    double fz = Math.abs(dz);
    double ex = 0.5 * fx;
    double ey = 0.5 * fy;
    double ez = 0.5 * fz;
    // A bit for each axis and way: set where the ray meets the second side first.
    int second = (dx < 0 ? 1 : 8) | (dy < 0 ? 2 : 16) | (dz < 0 ? 4 : 32);
    double[] c = tree.blocks;
    int[] below = tree.below;
    TreeTriangles triangles = tree.triangles;
    int top = 0;
    int node = root;
    while (true) {
      if (node < 0) {
        int leaf = -1 - node;
        int end = (leaf >> 4) + (leaf & 15);
        for (int t = leaf >> 4; t < end; t++) {
          if (triangles.hits(t, ax, ay, az, dx, dy, dz)) {
            return t;
          }
        }
        if (top == 0) {
          return -1;
        }
        node = stack[--top];
        continue;
      }
      int b = 12 * node;
      double x = c[b] - mx;
      double y = c[b + 1] - my;
      double z = c[b + 2] - mz;
      double hx = c[b + 3];
      double hy = c[b + 4];
      double hz = c[b + 5];
      boolean first =
          Math.abs(x) <= hx + ex
              && Math.abs(y) <= hy + ey
              && Math.abs(z) <= hz + ez
              && Math.abs(y * dz - z * dy) <= hy * fz + hz * fy
              && Math.abs(z * dx - x * dz) <= hz * fx + hx * fz
              && Math.abs(x * dy - y * dx) <= hx * fy + hy * fx;
      x = c[b + 6] - mx;
      y = c[b + 7] - my;
      z = c[b + 8] - mz;
      hx = c[b + 9];
      hy = c[b + 10];
      hz = c[b + 11];
      boolean other =
          Math.abs(x) <= hx + ex
              && Math.abs(y) <= hy + ey
              && Math.abs(z) <= hz + ez
              && Math.abs(y * dz - z * dy) <= hy * fz + hz * fy
              && Math.abs(z * dx - x * dz) <= hz * fx + hx * fz
              && Math.abs(x * dy - y * dx) <= hx * fy + hy * fx;
      int k = 3 * node;
      if (first && other) {
        int near = second >> below[k + 2] & 1;
        stack[top++] = below[k + 1 - near];
        node = below[k + near];
      } else if (first) {
        node = below[k];
      } else if (other) {
        node = below[k + 1];
      } else if (top == 0) {
        return -1;
      } else {
        node = stack[--top];
      }
    }
  }
}
