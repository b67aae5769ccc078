package ringbook.geometry;

/** Upright blocks in a flat array: low corner, then high corner, 6 numbers each. */
final class Blocks {

  private Blocks() {}

  /** Makes one that holds nothing yet. */
  static void clear(double[] blocks, int at) {
    for (int k = 0; k < 3; k++) {
      blocks[at + k] = Double.POSITIVE_INFINITY;
      blocks[at + 3 + k] = Double.NEGATIVE_INFINITY;
    }
  }

  /** Lets one hold a point, too. */
  static void grow(double[] blocks, int at, double x, double y, double z) {
    blocks[at] = Math.min(blocks[at], x);
    blocks[at + 1] = Math.min(blocks[at + 1], y);
    blocks[at + 2] = Math.min(blocks[at + 2], z);
    blocks[at + 3] = Math.max(blocks[at + 3], x);
    blocks[at + 4] = Math.max(blocks[at + 4], y);
    blocks[at + 5] = Math.max(blocks[at + 5], z);
  }

  /** Lets one hold another, too. */
  static void join(double[] blocks, int at, double[] others, int other) {
    for (int k = 0; k < 3; k++) {
      blocks[at + k] = Math.min(blocks[at + k], others[other + k]);
      blocks[at + 3 + k] = Math.max(blocks[at + 3 + k], others[other + 3 + k]);
    }
  }

  /** Half its surface. */
  static double area(double[] blocks, int at) {
    double x = blocks[at + 3] - blocks[at];
    double y = blocks[at + 4] - blocks[at + 1];
    double z = blocks[at + 5] - blocks[at + 2];
    return x * y + y * z + z * x;
  }
}
