package ringbook.geometry;

/**
 * The triangles of a {@link RayTree} in the order of its leaves, and whether a ray meets one. Ends,
 * edges and sides count as the tree says.
 */
final class TreeTriangles {

  /** Triangles reach over their edges by this part of themselves, so corners are tight too. */
  static final double RIM = 1e-7;

  /** Products of one sign but for {@link #RIM} have amounts of at most 1 + 4 RIM of their sum. */
  private static final double CLEARLY = 1 + 10 * RIM;

  /** Metres left out at both ends of a ray. */
  final double hair;

  /** Corners, 9 numbers a triangle. */
  final double[] corners;

  /** Their numbers in the mesh. */
  final int[] numbers;

  TreeTriangles(double hair, double[] corners, int[] numbers) {
    this.hair = hair;
    this.corners = corners;
    this.numbers = numbers;
  }

  int count() {
    return numbers.length;
  }

  /** Whether the triangle in a place among the leaves stands on the way (d) from a point (a). */
  boolean hits(int t, double ax, double ay, double az, double dx, double dy, double dz) {
    if (passesBeside(t, ax, ay, az, dx, dy, dz)) {
      return false;
    }
    return between(way(t, ax, ay, az, dx, dy, dz), dx, dy, dz);
  }

  /**
   * Whether the line of a ray passes beside a triangle. The three products are those of the edges'
   * planes through the start; two triangles at one edge get exactly opposite ones, so that no ray
   * slips between them.
   */
  boolean passesBeside(int t, double ax, double ay, double az, double dx, double dy, double dz) {
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

  /** Whether a part of a ray's way lies between its ends; NaN does not. */
  boolean between(double way, double dx, double dy, double dz) {
    if (!(way > 0 && way < 1)) {
      return false;
    }
    double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    return way * length > hair && (1 - way) * length > hair;
  }

  /** Whether a part of a ray's way lies at its end, but for a hair. */
  boolean atEnd(double way, double dx, double dy, double dz) {
    return Math.abs(1 - way) * Math.sqrt(dx * dx + dy * dy + dz * dz) <= hair;
  }

  /** The part of the way at which a ray meets a triangle's plane; NaN if never. */
  double way(int t, double ax, double ay, double az, double dx, double dy, double dz) {
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
}
