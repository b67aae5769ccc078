package ringbook.geometry;

import java.util.Arrays;

/** Builds a {@link RayTree} from the top down, cutting where binned surface areas are smallest. */
final class RayTreeBuilder {

  /** No leaf lies deeper; from half of it on, cuts go by number alone. */
  static final int DEEPEST = 96;

  private static final int BINS = 16;
  private static final int LARGEST_LEAF = 4;

  /** A step down the tree costs as much as so many triangles. */
  private static final double STEP_COST = 2;

  /** Widening of blocks, as a part of the mesh's diagonal: good for rays 1000 times as long. */
  private static final double PAD = 1e-12;

  private final int count;
  private final Mesh mesh;

  /** Low and high corner of each triangle's block, 6 numbers. */
  private final double[] box;

  private final int[] order;
  private double[] blocks = new double[24];
  private int[] below = new int[4];
  private int nodes;

  // One cut's scratch: a block and a number for each bin, and the blocks of all bins above.
  private final double[] binBox = new double[6 * BINS];
  private final int[] binCount = new int[BINS];
  private final double[] aboveArea = new double[BINS];
  private final int[] aboveCount = new int[BINS];
  private final double[] sweep = new double[6];
  private final double[] middles = new double[6];

  RayTreeBuilder(Mesh mesh) {
    this.mesh = mesh;
    this.count = mesh.triangles();
    this.box = new double[6 * count];
    this.order = new int[count];
    for (int t = 0; t < count; t++) {
      order[t] = t;
      clear(box, 6 * t);
      for (int k = 0; k < 3; k++) {
        int p = mesh.corner(t, k);
        grow(box, 6 * t, mesh.x(p), mesh.y(p), mesh.z(p));
      }
    }
  }

  RayTree build() {
    if (count == 0) {
      return new RayTree(0, new double[0], new int[0], new double[0], new int[0]);
    }
    // The root is a node even over one leaf; its other side then holds nothing.
    int root = node();
    if (count <= 1) {
      leafBlock(12 * root, 0, count);
      below[0] = leaf(0, count);
      clear(blocks, 6);
      below[1] = leaf(0, 0);
    } else {
      divide(root, 0, count, 0);
    }
    double[] corners = new double[9 * count];
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < 3; k++) {
        int p = mesh.corner(order[i], k);
        corners[9 * i + 3 * k] = mesh.x(p);
        corners[9 * i + 3 * k + 1] = mesh.y(p);
        corners[9 * i + 3 * k + 2] = mesh.z(p);
      }
    }
    pad(PAD * mesh.bounds().diagonal());
    return new RayTree(
        RayTree.HAIR * mesh.bounds().diagonal(),
        Arrays.copyOf(blocks, 12 * nodes),
        Arrays.copyOf(below, 2 * nodes),
        corners,
        order);
  }

  /** Widens all blocks so that rounding in the walk never misses what lies on their faces. */
  private void pad(double by) {
    for (int i = 0; i < 12 * nodes; i++) {
      blocks[i] += i % 6 < 3 ? -by : by;
    }
  }

  private int node() {
    if (12 * nodes == blocks.length) {
      blocks = Arrays.copyOf(blocks, 2 * blocks.length);
      below = Arrays.copyOf(below, 2 * below.length);
    }
    return nodes++;
  }

  private static int leaf(int first, int size) {
    return -1 - (first * 16 + size);
  }

  private void divide(int node, int from, int to, int depth) {
    int middle = cut(from, to, depth);
    side(node, 0, from, middle, depth);
    side(node, 1, middle, to, depth);
  }

  private void side(int node, int side, int from, int to, int depth) {
    leafBlock(12 * node + 6 * side, from, to);
    boolean small = to - from <= LARGEST_LEAF;
    if (to - from == 1 || (small && !worthCutting(from, to))) {
      below[2 * node + side] = leaf(from, to - from);
    } else {
      int child = node();
      below[2 * node + side] = child;
      divide(child, from, to, depth + 1);
    }
  }

  /** Whether two halves would be cheaper than one leaf of a few triangles. */
  private boolean worthCutting(int from, int to) {
    double whole = area(from, to);
    int axis = longestAxis(from, to);
    double best = bestCut(from, to, axis).cost();
    return STEP_COST * whole + best < (to - from) * whole;
  }

  private double area(int from, int to) {
    clear(sweep, 0);
    for (int i = from; i < to; i++) {
      join(sweep, 0, box, 6 * order[i]);
    }
    return area(sweep, 0);
  }

  /** Cuts the range in two, reorders it, and says where the second half begins. */
  private int cut(int from, int to, int depth) {
    int axis = longestAxis(from, to);
    if (depth < DEEPEST / 2 && middles[3 + axis] > middles[axis]) {
      Cut cut = bestCut(from, to, axis);
      for (int other = 0; to - from <= 64 && other < 3; other++) {
        Cut next = other == axis ? cut : bestCut(from, to, other);
        cut = next.cost() < cut.cost() ? next : cut;
      }
      int middle = partition(from, to, cut);
      if (middle > from && middle < to) {
        return middle;
      }
    }
    return (from + to) / 2;
  }

  private record Cut(int axis, int bin, double cost) {}

  private int longestAxis(int from, int to) {
    clear(middles, 0);
    for (int i = from; i < to; i++) {
      int b = 6 * order[i];
      grow(middles, 0, box[b] + box[b + 3], box[b + 1] + box[b + 4], box[b + 2] + box[b + 5]);
    }
    int axis = 0;
    for (int k = 1; k < 3; k++) {
      if (middles[3 + k] - middles[k] > middles[3 + axis] - middles[axis]) {
        axis = k;
      }
    }
    return axis;
  }

  private int bin(int triangle, int axis) {
    double low = middles[axis];
    double span = middles[3 + axis] - low;
    double at = box[6 * triangle + axis] + box[6 * triangle + 3 + axis] - low;
    return Math.min(BINS - 1, (int) (BINS * (at / span)));
  }

  private Cut bestCut(int from, int to, int axis) {
    if (!(middles[3 + axis] > middles[axis])) {
      return new Cut(axis, 0, Double.POSITIVE_INFINITY);
    }
    for (int b = 0; b < BINS; b++) {
      clear(binBox, 6 * b);
      binCount[b] = 0;
    }
    for (int i = from; i < to; i++) {
      int b = bin(order[i], axis);
      join(binBox, 6 * b, box, 6 * order[i]);
      binCount[b]++;
    }
    clear(sweep, 0);
    int number = 0;
    for (int b = BINS - 1; b > 0; b--) {
      join(sweep, 0, binBox, 6 * b);
      number += binCount[b];
      aboveArea[b] = number == 0 ? 0 : area(sweep, 0);
      aboveCount[b] = number;
    }
    return sweptCut(axis);
  }

  private Cut sweptCut(int axis) {
    int best = 1;
    double least = Double.POSITIVE_INFINITY;
    clear(sweep, 0);
    int number = 0;
    for (int b = 1; b < BINS; b++) {
      join(sweep, 0, binBox, 6 * (b - 1));
      number += binCount[b - 1];
      double cost = (number == 0 ? 0 : number * area(sweep, 0)) + aboveCount[b] * aboveArea[b];
      if (number > 0 && aboveCount[b] > 0 && cost < least) {
        least = cost;
        best = b;
      }
    }
    return new Cut(axis, best, least);
  }

  private int partition(int from, int to, Cut cut) {
    int i = from;
    int j = to;
    while (i < j) {
      if (bin(order[i], cut.axis()) < cut.bin()) {
        i++;
      } else {
        j--;
        int swap = order[i];
        order[i] = order[j];
        order[j] = swap;
      }
    }
    return i;
  }

  private void leafBlock(int at, int from, int to) {
    clear(blocks, at);
    for (int i = from; i < to; i++) {
      join(blocks, at, box, 6 * order[i]);
    }
  }

  private static void clear(double[] boxes, int at) {
    for (int k = 0; k < 3; k++) {
      boxes[at + k] = Double.POSITIVE_INFINITY;
      boxes[at + 3 + k] = Double.NEGATIVE_INFINITY;
    }
  }

  private static void grow(double[] boxes, int at, double x, double y, double z) {
    boxes[at] = Math.min(boxes[at], x);
    boxes[at + 1] = Math.min(boxes[at + 1], y);
    boxes[at + 2] = Math.min(boxes[at + 2], z);
    boxes[at + 3] = Math.max(boxes[at + 3], x);
    boxes[at + 4] = Math.max(boxes[at + 4], y);
    boxes[at + 5] = Math.max(boxes[at + 5], z);
  }

  private static void join(double[] boxes, int at, double[] others, int other) {
    for (int k = 0; k < 3; k++) {
      boxes[at + k] = Math.min(boxes[at + k], others[other + k]);
      boxes[at + 3 + k] = Math.max(boxes[at + 3 + k], others[other + 3 + k]);
    }
  }

  private static double area(double[] boxes, int at) {
    double x = boxes[at + 3] - boxes[at];
    double y = boxes[at + 4] - boxes[at + 1];
    double z = boxes[at + 5] - boxes[at + 2];
    return x * y + y * z + z * x;
  }
}
