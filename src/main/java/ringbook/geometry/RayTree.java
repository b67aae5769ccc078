package ringbook.geometry;

/**
 * Answers whether triangles stand between two points. A binary tree of upright blocks over the
 * triangles, chosen by the surface area heuristic (J. D. MacDonald and K. S. Booth, Heuristics for
 * ray tracing using space subdivision, 1990, from memory), in flat arrays. It never changes; many
 * rays one after another go faster by a {@link RayWalk}.
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

  /** Middle (x, y, z) and half size of the two blocks below each node: 12 numbers a node. */
  final double[] blocks;

  /**
   * Three numbers a node: what lies below its two sides, a node, or a leaf written as {@code -1 -
   * (first * 16 + count)}; then the axis (0 to 2) along which the first side lies lower, or 3 more
   * where it lies higher.
   */
  final int[] below;

  /** A node over several triangles around each one, by its place among the leaves. */
  final int[] around;

  final TreeTriangles triangles;

  RayTree(double[] blocks, int[] below, int[] around, TreeTriangles triangles) {
    this.blocks = blocks;
    this.below = below;
    this.around = around;
    this.triangles = triangles;
  }

  /** The tree over a mesh; over an empty one nothing is ever hit. */
  public static RayTree of(Mesh mesh) {
    return new RayTreeBuilder(mesh).build();
  }

  /** How many triangles it holds. */
  public int triangles() {
    return triangles.count();
  }

  /** Metres left out at both ends of a ray. */
  public double hair() {
    return triangles.hair;
  }

  /** Whether a triangle stands between two points. */
  public boolean blocked(Vec3 from, Vec3 to) {
    return blocked(from.x(), from.y(), from.z(), to.x(), to.y(), to.z());
  }

  /** Whether a triangle stands between a and b, coordinates in metres. */
  public boolean blocked(double ax, double ay, double az, double bx, double by, double bz) {
    return new RayWalk(this).blocked(ax, ay, az, bx, by, bz);
  }

  /** The first triangle on the way from one point to another, its ends left out as always. */
  public Hit nearest(Vec3 from, Vec3 to) {
    double length = to.minus(from).norm();
    return length > 0 && triangles() > 0 ? new NearestWalk(this, from, to).hit() : Hit.NONE;
  }

  /** Whether a place lies outside both blocks of the root, so that no surface goes round it. */
  boolean isOutside(Vec3 place) {
    return isOutside(0, place) && isOutside(6, place);
  }

  private boolean isOutside(int at, Vec3 place) {
    return Math.abs(place.x() - blocks[at]) > blocks[at + 3]
        || Math.abs(place.y() - blocks[at + 1]) > blocks[at + 4]
        || Math.abs(place.z() - blocks[at + 2]) > blocks[at + 5];
  }

  /** Whether a segment meets the block of a side of a node (number {@code 2 * node + side}). */
  boolean meets(int side, Vec3 from, Vec3 way) {
    double[] c = blocks;
    int b = 6 * side;
    double fx = Math.abs(way.x());
    double fy = Math.abs(way.y());
    double fz = Math.abs(way.z());
    double x = c[b] - (from.x() + 0.5 * way.x());
    double y = c[b + 1] - (from.y() + 0.5 * way.y());
    double z = c[b + 2] - (from.z() + 0.5 * way.z());
    return Math.abs(x) <= c[b + 3] + 0.5 * fx
        && Math.abs(y) <= c[b + 4] + 0.5 * fy
        && Math.abs(z) <= c[b + 5] + 0.5 * fz
        && Math.abs(y * way.z() - z * way.y()) <= c[b + 4] * fz + c[b + 5] * fy
        && Math.abs(z * way.x() - x * way.z()) <= c[b + 5] * fx + c[b + 3] * fz
        && Math.abs(x * way.y() - y * way.x()) <= c[b + 3] * fy + c[b + 4] * fx;
  }
}
