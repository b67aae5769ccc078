package ringbook.geometry;

/**
 * Which triangles of a closed surface face away from a camera.
 *
 * <p>On the way between two points outside, a line goes into the body as often as out of it. So
 * where anything stands between a camera and a patch, both outside, there is a triangle among it
 * that faces away from the camera, and the others need not be looked at: nothing of the surface
 * around the patch itself is left.
 */
final class BackFaces {

  private final int[] below;

  /** Normal of each triangle, and how far its plane lies from the origin along it. */
  private final double[] planes;

  BackFaces(RayTree tree) {
    this.below = tree.below;
    this.planes = new double[4 * tree.triangles()];
    double[] c = tree.triangles.corners;
    for (int t = 0; t < tree.triangles(); t++) {
      Vec3 first = new Vec3(c[9 * t], c[9 * t + 1], c[9 * t + 2]);
      Vec3 second = new Vec3(c[9 * t + 3], c[9 * t + 4], c[9 * t + 5]);
      Vec3 third = new Vec3(c[9 * t + 6], c[9 * t + 7], c[9 * t + 8]);
      Vec3 normal = second.minus(first).cross(third.minus(first));
      planes[4 * t] = normal.x();
      planes[4 * t + 1] = normal.y();
      planes[4 * t + 2] = normal.z();
      planes[4 * t + 3] = normal.dot(first);
    }
  }

  /** For each side of each node whether a triangle below it faces away. */
  boolean[] from(Vec3 camera) {
    boolean[] away = new boolean[below.length / 3 * 2];
    // A node comes before those below it.
    for (int node = below.length / 3 - 1; node >= 0; node--) {
      for (int side = 0; side < 2; side++) {
        int child = below[3 * node + side];
        away[2 * node + side] =
            child < 0 ? leaf(-1 - child, camera) : away[2 * child] || away[2 * child + 1];
      }
    }
    return away;
  }

  private boolean leaf(int leaf, Vec3 camera) {
    double x = camera.x();
    double y = camera.y();
    double z = camera.z();
    for (int at = (leaf >> 4) << 2; at < ((leaf >> 4) + (leaf & 15)) << 2; at += 4) {
      if (planes[at] * x + planes[at + 1] * y + planes[at + 2] * z <= planes[at + 3]) {
        return true;
      }
    }
    return false;
  }
}
