package ringbook.geometry;

/**
 * Answers whether triangles stand between two points. A binary tree of upright blocks over the
 * triangles, chosen by the surface area heuristic (J. D. MacDonald and K. S. Booth, Heuristics for
 * ray tracing using space subdivision, 1990, from memory), in flat arrays.
 *
 * <p><b>Ends and edges.</b> A hit counts strictly between the ends: nearer to an end than one
 * millionth of the block that holds the mesh it does not, so a ray may begin and end on the
 * surface. A ray through an edge or a corner hits. A triangle seen exactly edge-on blocks nothing.
 * Both sides of a triangle block.
 */
public final class RayTree {

  /** What a ray met first. */
  public static final int NO_TRIANGLE = -1;

  /** Part of the mesh's diagonal that is left out at both ends of a ray. */
  static final double HAIR = 1e-6;

  /** Below so many patches a grid is not worth its making. */
  private static final int FEW = 200;

  /** Sine of the angle below which an edge counts as lying in a triangle's plane. */
  private static final double FLAT = 1e-6;

  /** Triangles reach over their edges by this part of themselves, so corners are tight too. */
  static final double RIM = 1e-7;

  /**
   * The nearest hit.
   *
   * @param distance metres from the start; infinite for none
   * @param triangle its number in the mesh, or {@link #NO_TRIANGLE}
   */
  public record Hit(double distance, int triangle) {
    /** No triangle on the way. */
    public static final Hit NONE = new Hit(Double.POSITIVE_INFINITY, NO_TRIANGLE);
  }

  private final double hair;

  /** Low and high corners of the two blocks below each node: 12 numbers a node. */
  final double[] blocks;

  /** What lies below: a node, or a leaf written as {@code -1 - (first * 16 + count)}. */
  final int[] below;

  /** Corners of the triangles in the order of the leaves, 9 numbers each. */
  final double[] corners;

  /** Numbers of the triangles in the mesh, in the order of the leaves. */
  private final int[] numbers;

  RayTree(double hair, double[] blocks, int[] below, double[] corners, int[] numbers) {
    this.hair = hair;
    this.blocks = blocks;
    this.below = below;
    this.corners = corners;
    this.numbers = numbers;
  }

  /** The tree over a mesh; over an empty one nothing is ever hit. */
  public static RayTree of(Mesh mesh) {
    return new RayTreeBuilder(mesh).build();
  }

  /** How many triangles it holds. */
  public int triangles() {
    return numbers.length;
  }

  /** Metres left out at both ends of a ray. */
  public double hair() {
    return hair;
  }

  /** Whether a triangle stands between two points. */
  public boolean blocked(Vec3 from, Vec3 to) {
    return blocked(from.x(), from.y(), from.z(), to.x(), to.y(), to.z());
  }

  /** Whether a triangle stands between a and b, coordinates in metres. */
  public boolean blocked(double ax, double ay, double az, double bx, double by, double bz) {
    return numbers.length > 0
        && blocker(0, new int[RayTreeBuilder.DEEPEST + 2], ax, ay, az, bx - ax, by - ay, bz - az)
            >= 0;
  }

  /** The first triangle on the way from one point to another, its ends left out as always. */
  public Hit nearest(Vec3 from, Vec3 to) {
    Vec3 way = to.minus(from);
    double length = way.norm();
    if (!(length > 0) || numbers.length == 0) {
      return Hit.NONE;
    }
    return new NearestWalk(from, way, length).hit();
  }

  /**
   * Which patches a camera sees: those that face it and that nothing blocks. Gives exactly the
   * answers of {@link #blocked}, faster, by one {@link SightWalk} for all; where the camera is so
   * near that no {@link SightGrid} fits, ray by ray.
   *
   * @param camera the middle of the lens
   * @param patches of any surface, in any number
   * @param seen takes the answers, one a patch
   */
  public void visible(Vec3 camera, Patches patches, boolean[] seen) {
    if (numbers.length > 0 && patches.count() >= FEW && SightGrid.fits(camera, patches)) {
      SightGrid grid = new SightGrid(camera, patches);
      new SightWalk(this, grid, camera).run();
      grid.seen(seen);
    } else {
      visibleRayByRay(camera, patches, seen);
    }
  }

  /** The same by walking down the tree for every patch. */
  void visibleRayByRay(Vec3 camera, Patches patches, boolean[] seen) {
    int[] stack = new int[RayTreeBuilder.DEEPEST + 2];
    int last = -1;
    for (int i = 0; i < patches.count(); i++) {
      double dx = patches.x(i) - camera.x();
      double dy = patches.y(i) - camera.y();
      double dz = patches.z(i) - camera.z();
      seen[i] = false;
      if (dx * patches.normalX(i) + dy * patches.normalY(i) + dz * patches.normalZ(i) < 0) {
        if (last >= 0 && hits(last, camera.x(), camera.y(), camera.z(), dx, dy, dz)) {
          continue;
        }
        last = blocker(0, stack, camera.x(), camera.y(), camera.z(), dx, dy, dz);
        seen[i] = last < 0;
      }
    }
  }

  /** The place among the leaves of any triangle below a node that blocks; -1 for none. */
  int blocker(
      int root, int[] stack, double ax, double ay, double az, double dx, double dy, double dz) {
    double ix = 1 / dx;
    double iy = 1 / dy;
    double iz = 1 / dz;
    // Where the nearer face of each pair is kept in a block.
    int nx = ix < 0 ? 3 : 0;
    int ny = iy < 0 ? 4 : 1;
    int nz = iz < 0 ? 5 : 2;
    double[] b = blocks;
    int top = 0;
    int node = root;
    while (true) {
      if (node < 0) {
        int leaf = -1 - node;
        int end = (leaf >> 4) + (leaf & 15);
        for (int t = leaf >> 4; t < end; t++) {
          if (hits(t, ax, ay, az, dx, dy, dz)) {
            return t;
          }
        }
        if (top == 0) {
          return -1;
        }
        node = stack[--top];
      } else {
        int l = 12 * node;
        double inLeft =
            Math.max(
                Math.max((b[l + nx] - ax) * ix, (b[l + ny] - ay) * iy),
                Math.max((b[l + nz] - az) * iz, 0));
        double outLeft =
            Math.min(
                Math.min((b[l + 3 - nx] - ax) * ix, (b[l + 5 - ny] - ay) * iy),
                Math.min((b[l + 7 - nz] - az) * iz, 1));
        int r = l + 6;
        double inRight =
            Math.max(
                Math.max((b[r + nx] - ax) * ix, (b[r + ny] - ay) * iy),
                Math.max((b[r + nz] - az) * iz, 0));
        double outRight =
            Math.min(
                Math.min((b[r + 3 - nx] - ax) * ix, (b[r + 5 - ny] - ay) * iy),
                Math.min((b[r + 7 - nz] - az) * iz, 1));
        int near = inLeft <= inRight ? 0 : 1;
        // NaN, along a face of the block, counts as a meeting.
        boolean left = !(inLeft > outLeft);
        boolean right = !(inRight > outRight);
        if (left && right) {
          stack[top++] = below[2 * node + 1 - near];
          node = below[2 * node + near];
        } else if (left) {
          node = below[2 * node];
        } else if (right) {
          node = below[2 * node + 1];
        } else if (top == 0) {
          return -1;
        } else {
          node = stack[--top];
        }
      }
    }
  }

  /**
   * Whether the ray meets a block before {@code most} of its way. Where a ray runs along a face of
   * the block the comparison is with NaN, which Math.max and Math.min hand on and which then counts
   * as a meeting.
   */
  private boolean meets(
      int at, double ax, double ay, double az, double ix, double iy, double iz, double most) {
    double x0 = (blocks[at] - ax) * ix;
    double x1 = (blocks[at + 3] - ax) * ix;
    double y0 = (blocks[at + 1] - ay) * iy;
    double y1 = (blocks[at + 4] - ay) * iy;
    double z0 = (blocks[at + 2] - az) * iz;
    double z1 = (blocks[at + 5] - az) * iz;
    double in = Math.max(Math.max(Math.min(x0, x1), Math.min(y0, y1)), Math.min(z0, z1));
    double out = Math.min(Math.min(Math.max(x0, x1), Math.max(y0, y1)), Math.max(z0, z1));
    return !(Math.max(in, 0) > Math.min(out, most));
  }

  /** The same for a side of a node and the way from a point, up to {@code most} of it. */
  private boolean meets(int node, int side, Vec3 from, Vec3 way, double most) {
    int at = 12 * node + 6 * side;
    double ix = 1 / way.x();
    double iy = 1 / way.y();
    double iz = 1 / way.z();
    return meets(at, from.x(), from.y(), from.z(), ix, iy, iz, most);
  }

  /** Whether the edge from point a to b runs through a triangle that has neither as a corner. */
  boolean crosses(Mesh mesh, int[] first, int a, int b) {
    Vec3 from = mesh.point(a);
    Vec3 way = mesh.point(b).minus(from);
    int[] stack = new int[RayTreeBuilder.DEEPEST + 2];
    int top = 1;
    while (top > 0) {
      int node = stack[--top];
      if (node < 0) {
        int leaf = -1 - node;
        for (int t = leaf >> 4; t < (leaf >> 4) + (leaf & 15); t++) {
          if (crosses(mesh, first, new int[] {a, b}, t, from, way)) {
            return true;
          }
        }
        continue;
      }
      for (int side = 0; side < 2; side++) {
        if (meets(node, side, from, way, 1)) {
          stack[top++] = below[2 * node + side];
        }
      }
    }
    return false;
  }

  private boolean crosses(Mesh mesh, int[] first, int[] ends, int t, Vec3 from, Vec3 way) {
    int number = numbers[t];
    for (int k = 0; k < 3; k++) {
      int corner = first[mesh.corner(number, k)];
      if (corner == ends[0] || corner == ends[1]) {
        return false;
      }
    }
    Vec3 normal = mesh.doubleNormal(number);
    // An edge in the triangle's own plane touches it but does not go through.
    return Math.abs(normal.dot(way)) > FLAT * normal.norm() * way.norm()
        && hits(t, from.x(), from.y(), from.z(), way.x(), way.y(), way.z());
  }

  private boolean hits(int t, double ax, double ay, double az, double dx, double dy, double dz) {
    return !passesBeside(t, ax, ay, az, dx, dy, dz) && standsBetween(t, ax, ay, az, dx, dy, dz);
  }

  /**
   * Whether the line of a ray passes beside a triangle. The three products are those of the edges'
   * planes through the start; two triangles at one edge get exactly opposite ones, so that no ray
   * slips between them.
   */
  private boolean passesBeside(
      int t, double ax, double ay, double az, double dx, double dy, double dz) {
    double[] c = corners;
    int k = 9 * t;
    double x0 = c[k] - ax;
    double y0 = c[k + 1] - ay;
    double z0 = c[k + 2] - az;
    double x1 = c[k + 3] - ax;
    double y1 = c[k + 4] - ay;
    double z1 = c[k + 5] - az;
    double x2 = c[k + 6] - ax;
    double y2 = c[k + 7] - ay;
    double z2 = c[k + 8] - az;
    double u = (y1 * z2 - z1 * y2) * dx + (z1 * x2 - x1 * z2) * dy + (x1 * y2 - y1 * x2) * dz;
    double v = (y2 * z0 - z2 * y0) * dx + (z2 * x0 - x2 * z0) * dy + (x2 * y0 - y2 * x0) * dz;
    double w = (y0 * z1 - z0 * y1) * dx + (z0 * x1 - x0 * z1) * dy + (x0 * y1 - y0 * x1) * dz;
    return beside(u, v, w);
  }

  /** Whether the three products differ in sign, or would but for {@link #RIM}. */
  static boolean beside(double u, double v, double w) {
    double sum = Math.abs(u + v + w);
    // Most lines pass clearly beside, and sums of amounts tell so faster than extremes do.
    if (Math.abs(u) + Math.abs(v) + Math.abs(w) > CLEARLY * sum) {
      return true;
    }
    double rim = RIM * sum;
    return Math.min(Math.min(u, v), w) < -rim && Math.max(Math.max(u, v), w) > rim;
  }

  /** Products of one sign but for {@link #RIM} have amounts of at most 1 + 4 RIM of their sum. */
  private static final double CLEARLY = 1 + 10 * RIM;

  /** Whether a triangle that the line meets lies between the ends of the ray. */
  boolean standsBetween(int t, double ax, double ay, double az, double dx, double dy, double dz) {
    double way = way(t, ax, ay, az, dx, dy, dz);
    // Written so that NaN is no hit.
    if (!(way > 0 && way < 1)) {
      return false;
    }
    double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    return way * length > hair && (1 - way) * length > hair;
  }

  /** The part of the way at which a ray meets a triangle's plane; NaN if never. */
  private double way(int t, double ax, double ay, double az, double dx, double dy, double dz) {
    double[] c = corners;
    int k = 9 * t;
    double x0 = c[k] - ax;
    double y0 = c[k + 1] - ay;
    double z0 = c[k + 2] - az;
    double x1 = c[k + 3] - ax;
    double y1 = c[k + 4] - ay;
    double z1 = c[k + 5] - az;
    double x2 = c[k + 6] - ax;
    double y2 = c[k + 7] - ay;
    double z2 = c[k + 8] - az;
    double nx = (y1 - y0) * (z2 - z0) - (z1 - z0) * (y2 - y0);
    double ny = (z1 - z0) * (x2 - x0) - (x1 - x0) * (z2 - z0);
    double nz = (x1 - x0) * (y2 - y0) - (y1 - y0) * (x2 - x0);
    double slope = nx * dx + ny * dy + nz * dz;
    return slope == 0 ? Double.NaN : (nx * x0 + ny * y0 + nz * z0) / slope;
  }

  /** One search for the nearest hit. */
  private final class NearestWalk {
    private final Vec3 from;
    private final Vec3 way;
    private final double length;
    private double best = 1;
    private int found = NO_TRIANGLE;

    NearestWalk(Vec3 from, Vec3 way, double length) {
      this.from = from;
      this.way = way;
      this.length = length;
    }

    Hit hit() {
      search(0);
      return found == NO_TRIANGLE ? Hit.NONE : new Hit(best * length, numbers[found]);
    }

    private void search(int node) {
      if (node < 0) {
        int leaf = -1 - node;
        for (int t = leaf >> 4; t < (leaf >> 4) + (leaf & 15); t++) {
          triangle(t);
        }
        return;
      }
      for (int side = 0; side < 2; side++) {
        if (meets(node, side, from, way, best)) {
          search(below[2 * node + side]);
        }
      }
    }

    private void triangle(int t) {
      if (passesBeside(t, from.x(), from.y(), from.z(), way.x(), way.y(), way.z())) {
        return;
      }
      double at = way(t, from.x(), from.y(), from.z(), way.x(), way.y(), way.z());
      if (at < best && at * length > hair && (1 - at) * length > hair) {
        best = at;
        found = t;
      }
    }
  }
}
