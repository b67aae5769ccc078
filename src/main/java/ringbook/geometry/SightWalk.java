package ringbook.geometry;

import java.util.Arrays;

/**
 * One walk down a {@link RayTree} for all rays of a camera: a block that hides none of the patches
 * of a {@link SightGrid} is left out with all that lies below it; a leaf's triangles are held
 * against the patches that appear where its block does, and behind it.
 */
final class SightWalk {

  /** Nearer than this part of its far side, a block's place in the view is not worked out. */
  private static final double STEEPEST = 1e-3;

  private final RayTree tree;

  /** For each side of a node whether anything below it counts; null where all does. */
  private final boolean[] counts;

  private final SightGrid grid;
  private final double[] rays;
  private final double cx;
  private final double cy;
  private final double cz;
  private final double aheadX;
  private final double aheadY;
  private final double aheadZ;
  private final double rightX;
  private final double rightY;
  private final double rightZ;
  private final double upX;
  private final double upY;
  private final double upZ;
  private final double slack;

  // The block looked at last: its middle in the view, how far it reaches, least depth.
  private double middleX;
  private double middleY;
  private double reachX;
  private double reachY;
  private double near;

  /** Lists of rays that a block may hide, each after that of the block around it. */
  private int[] lists = new int[1024];

  private final RayWalk alone;

  /**
   * A walk over all triangles, or over those alone that face away.
   *
   * @param backs where the latter lie, from {@link BackFaces}; null to look at all
   */
  SightWalk(RayTree tree, SightGrid grid, Vec3 camera, boolean[] backs) {
    this.counts = backs;
    this.tree = tree;
    this.grid = grid;
    this.alone = new RayWalk(tree);
    this.rays = grid.rays();
    this.cx = camera.x();
    this.cy = camera.y();
    this.cz = camera.z();
    this.aheadX = grid.ahead.x();
    this.aheadY = grid.ahead.y();
    this.aheadZ = grid.ahead.z();
    this.rightX = grid.right.x();
    this.rightY = grid.right.y();
    this.rightZ = grid.right.z();
    this.upX = grid.up.x();
    this.upY = grid.up.y();
    this.upZ = grid.up.z();
    this.slack = SightGrid.SLACK * grid.half;
  }

  /** Marks all rays that a triangle blocks. */
  void run() {
    int[] stack = new int[RayTreeBuilder.DEEPEST + 2];
    int top = 1;
    while (top > 0) {
      int node = stack[--top];
      for (int side = 0; side < 2; side++) {
        int child = tree.below[3 * node + side];
        if (appears(node, side) && looksWide(child)) {
          stack[top++] = child;
        }
      }
    }
  }

  /** Whether a node covers too much of the view to list its rays; does all below it if not. */
  private boolean looksWide(int node) {
    int left = grid.cell(middleX - reachX);
    int to = grid.cell(middleX + reachX);
    int low = grid.cell(middleY - reachY);
    int high = grid.cell(middleY + reachY);
    if (!grid.anyDeeper(left, to, low, high, near)) {
      return false;
    }
    if (node >= 0 && (to - left) + (high - low) > FEW_CELLS) {
      return true;
    }
    narrow(node, 0, gather(left, to, low, high));
    return false;
  }

  /** Columns and rows; so many and fewer are not halved on. */
  private static final int FEW_CELLS = 6;

  private boolean appears(int node, int side) {
    return (counts == null || counts[2 * node + side]) && appears(12 * node + 6 * side);
  }

  /** Works out where a block appears; false if nothing of it lies before the patches' view. */
  private boolean appears(int at) {
    double[] b = tree.blocks;
    double mx = b[at] - cx;
    double my = b[at + 1] - cy;
    double mz = b[at + 2] - cz;
    double hx = b[at + 3];
    double hy = b[at + 4];
    double hz = b[at + 5];
    double depth = mx * aheadX + my * aheadY + mz * aheadZ;
    double thick = hx * Math.abs(aheadX) + hy * Math.abs(aheadY) + hz * Math.abs(aheadZ);
    near = depth - thick - grid.depthSlack;
    if (!(near > STEEPEST * (depth + thick))) {
      middleX = 0;
      middleY = 0;
      reachX = 2 * grid.half;
      reachY = 2 * grid.half;
      near = 0;
      return depth + thick > 0;
    }
    double over = 1 / near;
    double flat = 1 / depth;
    // For a point p of the block, x/z - X/Z is (p - m)(right - X/Z ahead)/z.
    double x = (mx * rightX + my * rightY + mz * rightZ) * flat;
    double y = (mx * upX + my * upY + mz * upZ) * flat;
    reachX =
        over
                * (hx * Math.abs(rightX - x * aheadX)
                    + hy * Math.abs(rightY - x * aheadY)
                    + hz * Math.abs(rightZ - x * aheadZ))
            + slack;
    reachY =
        over
                * (hx * Math.abs(upX - y * aheadX)
                    + hy * Math.abs(upY - y * aheadY)
                    + hz * Math.abs(upZ - y * aheadZ))
            + slack;
    middleX = x;
    middleY = y;
    return Math.abs(x) - reachX <= grid.half && Math.abs(y) - reachY <= grid.half;
  }

  /** Lists the rays of some cells that the block may hide; gives how many. */
  private int gather(int left, int to, int low, int high) {
    int found = 0;
    for (int row = low; row <= high; row++) {
      // Rays lie row by row, so the cells of one row follow each other.
      int first = grid.first(left, row);
      int end = grid.end(to, row);
      room(found + end - first + 1);
      for (int i = first; i < end; i++) {
        int at = SightGrid.STRIDE * i;
        lists[found] = at;
        found += mayHide(at) ? 1 : 0;
      }
    }
    return found;
  }

  // Without shortcuts: a wrong guess of the processor costs more than all three comparisons.
  @SuppressWarnings("ShortCircuitBoolean")
  private boolean mayHide(int at) {
    return (rays[at + 5] > near)
        & (Math.abs(rays[at + 3] - middleX) <= reachX)
        & (Math.abs(rays[at + 4] - middleY) <= reachY);
  }

  private void room(int wanted) {
    if (wanted > lists.length) {
      lists = Arrays.copyOf(lists, 2 * wanted);
    }
  }

  /** So many rays and fewer go on alone. */
  private static final int FEW_RAYS = 3;

  private void oneByOne(int node, int from, int end) {
    for (int i = from; i < end; i++) {
      int at = lists[i];
      if (alone.blocker(node, cx, cy, cz, rays[at], rays[at + 1], rays[at + 2]) >= 0) {
        rays[at + 5] = 0;
      }
    }
  }

  /** Goes on below a block with the rays listed from one place to another. */
  private void narrow(int node, int from, int end) {
    if (from == end) {
      return;
    }
    if (node < 0) {
      int leaf = -1 - node;
      int last = (leaf >> 4) + (leaf & 15);
      for (int t = leaf >> 4; t < last; t++) {
        triangle(t, from, end);
      }
      return;
    }
    if (end - from <= FEW_RAYS && counts == null) {
      oneByOne(node, from, end);
      return;
    }
    room(2 * end - from + 1);
    for (int side = 0; side < 2; side++) {
      if (appears(node, side)) {
        int found = end;
        for (int i = from; i < end; i++) {
          int at = lists[i];
          lists[found] = at;
          found += mayHide(at) ? 1 : 0;
        }
        narrow(tree.below[3 * node + side], end, found);
      }
    }
  }

  /** The same products as {@link TreeTriangles} forms for every ray, the planes formed once. */
  private void triangle(int t, int from, int end) {
    TreeTriangles triangles = tree.triangles;
    double[] c = triangles.corners;
    int k = 9 * t;
    double x0 = c[k] - cx;
    double y0 = c[k + 1] - cy;
    double z0 = c[k + 2] - cz;
    double x1 = c[k + 3] - cx;
    double y1 = c[k + 4] - cy;
    double z1 = c[k + 5] - cz;
    double x2 = c[k + 6] - cx;
    double y2 = c[k + 7] - cy;
    double z2 = c[k + 8] - cz;
    double nx = (y1 - y0) * (z2 - z0) - (z1 - z0) * (y2 - y0);
    double ny = (z1 - z0) * (x2 - x0) - (x1 - x0) * (z2 - z0);
    double nz = (x1 - x0) * (y2 - y0) - (y1 - y0) * (x2 - x0);
    double height = nx * x0 + ny * y0 + nz * z0;
    if (counts != null && height < 0) {
      return;
    }
    double ux = y1 * z2 - z1 * y2;
    double uy = z1 * x2 - x1 * z2;
    double uz = x1 * y2 - y1 * x2;
    double vx = y2 * z0 - z2 * y0;
    double vy = z2 * x0 - x2 * z0;
    double vz = x2 * y0 - y2 * x0;
    double wx = y0 * z1 - z0 * y1;
    double wy = z0 * x1 - x0 * z1;
    double wz = x0 * y1 - y0 * x1;
    for (int i = from; i < end; i++) {
      int at = lists[i];
      double dx = rays[at];
      double dy = rays[at + 1];
      double dz = rays[at + 2];
      double u = ux * dx + uy * dy + uz * dz;
      double v = vx * dx + vy * dy + vz * dz;
      double w = wx * dx + wy * dy + wz * dz;
      // An edge-on triangle gives a way without a number or without end, which is no hit.
      if (!TreeTriangles.beside(u, v, w)) {
        double way = height / (nx * dx + ny * dy + nz * dz);
        if (triangles.between(way, dx, dy, dz) || isHidden(way, dx, dy, dz)) {
          rays[at + 5] = 0;
        }
      }
    }
  }

  /** Whether a ray that meets a back at its very end, where none is expected, is blocked. */
  private boolean isHidden(double way, double dx, double dy, double dz) {
    return counts != null
        && tree.triangles.atEnd(way, dx, dy, dz)
        && alone.blocker(0, cx, cy, cz, dx, dy, dz) >= 0;
  }
}
