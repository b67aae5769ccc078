package ringbook.geometry;

/** One search of a {@link RayTree} for the nearest hit. */
final class NearestWalk {

  private final RayTree tree;
  private final Vec3 from;
  private final Vec3 way;
  private final double length;

  /** The way as far as the best hit so far. */
  private Vec3 rest;

  private double best = 1;
  private int found = RayTree.NO_TRIANGLE;

  NearestWalk(RayTree tree, Vec3 from, Vec3 to) {
    this.tree = tree;
    this.from = from;
    this.way = to.minus(from);
    this.length = way.norm();
    this.rest = way;
  }

  RayTree.Hit hit() {
    search(0);
    return found == RayTree.NO_TRIANGLE
        ? RayTree.Hit.NONE
        : new RayTree.Hit(best * length, tree.triangles.numbers[found]);
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
      if (tree.meets(2 * node + side, from, rest)) {
        search(tree.below[3 * node + side]);
      }
    }
  }

  private void triangle(int t) {
    TreeTriangles triangles = tree.triangles;
    if (triangles.passesBeside(t, from.x(), from.y(), from.z(), way.x(), way.y(), way.z())) {
      return;
    }
    double at = triangles.way(t, from.x(), from.y(), from.z(), way.x(), way.y(), way.z());
    if (at < best && triangles.between(at, way.x(), way.y(), way.z())) {
      best = at;
      found = t;
      rest = way.times(best);
    }
  }
}
