package ringbook.geometry;

/** Walks down a {@link RayTree} with the edges of its own mesh. */
final class EdgeWalk {

  /** Sine of the angle below which an edge counts as lying in a triangle's plane. */
  private static final double FLAT = 1e-6;

  private final Mesh mesh;
  private final RayTree tree;
  private final int[] first;
  private final int[] stack = new int[RayTreeBuilder.DEEPEST + 2];

  /**
   * Over a mesh.
   *
   * @param first for each point the first one in the same place
   */
  EdgeWalk(Mesh mesh, int[] first) {
    this.mesh = mesh;
    this.tree = RayTree.of(mesh);
    this.first = first;
  }

  /** Whether the edge from point a to b runs through a triangle that has neither as a corner. */
  boolean crosses(int a, int b) {
    Vec3 from = mesh.point(a);
    Vec3 way = mesh.point(b).minus(from);
    int top = 1;
    stack[0] = 0;
    while (top > 0) {
      int node = stack[--top];
      if (node < 0) {
        int leaf = -1 - node;
        for (int t = leaf >> 4; t < (leaf >> 4) + (leaf & 15); t++) {
          if (crosses(a, b, t, from, way)) {
            return true;
          }
        }
        continue;
      }
      for (int side = 0; side < 2; side++) {
        if (tree.meets(2 * node + side, from, way)) {
          stack[top++] = tree.below[3 * node + side];
        }
      }
    }
    return false;
  }

  private boolean crosses(int a, int b, int t, Vec3 from, Vec3 way) {
    int number = tree.triangles.numbers[t];
    for (int k = 0; k < 3; k++) {
      int corner = first[mesh.corner(number, k)];
      if (corner == a || corner == b) {
        return false;
      }
    }
    Vec3 normal = mesh.doubleNormal(number);
    // An edge in the triangle's own plane touches it but does not go through.
    return Math.abs(normal.dot(way)) > FLAT * normal.norm() * way.norm()
        && tree.triangles.hits(t, from.x(), from.y(), from.z(), way.x(), way.y(), way.z());
  }
}
