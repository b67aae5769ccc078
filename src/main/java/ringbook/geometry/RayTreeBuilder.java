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
  private static final double PAD = 2e-12;

  /** The same as a part of the block, for the rims of its triangles. */
  private static final double WIDER = 1 + 10 * TreeTriangles.RIM;

  /** So many triangles at least lie below the node where the next ray begins. */
  private static final int NEIGHBOURS = 8;

  private final int count;
  private final Mesh mesh;

  /** Low and high corner of each triangle's block, 6 numbers. */
  private final double[] box;

  private final int[] order;

  /** Low and high corners of the blocks while the tree grows. */
  private double[] blocks = new double[24];

  private int[] below = new int[6];
  private final int[] around;
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
    this.around = new int[count];
    for (int t = 0; t < count; t++) {
      order[t] = t;
      Blocks.clear(box, 6 * t);
      for (int k = 0; k < 3; k++) {
        int p = mesh.corner(t, k);
        Blocks.grow(box, 6 * t, mesh.x(p), mesh.y(p), mesh.z(p));
      }
    }
  }

  RayTree build() {
    if (count == 0) {
      TreeTriangles none = new TreeTriangles(0, new double[0], order);
      return new RayTree(new double[0], new int[0], around, none);
    }
    // The root is a node even over one triangle; its other side then holds nothing.
    int root = node();
    if (count == 1) {
      leafBlock(0, 0, 1);
      leafBlock(6, 0, 1);
      below[0] = leaf(0, 1);
      below[1] = leaf(0, 0);
    } else {
      divide(root, 0, count, 0, root);
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
    double diagonal = mesh.bounds().diagonal();
    for (int node = 0; node < nodes; node++) {
      toMiddles(12 * node, PAD * diagonal);
      toMiddles(12 * node + 6, PAD * diagonal);
      below[3 * node + 2] = lowerSide(12 * node);
    }
    return new RayTree(
        Arrays.copyOf(blocks, 12 * nodes),
        Arrays.copyOf(below, 3 * nodes),
        around,
        new TreeTriangles(RayTree.HAIR * diagonal, corners, order));
  }

  /** Turns corners into middle and half, widened so that no walk misses what lies on the faces. */
  private void toMiddles(int at, double pad) {
    for (int k = at; k < at + 3; k++) {
      double low = blocks[k];
      double high = blocks[k + 3];
      blocks[k] = 0.5 * (low + high);
      blocks[k + 3] = 0.5 * WIDER * (high - low) + pad;
    }
  }

  /** The axis along which the middles of a node's two blocks differ most; 3 more if they fall. */
  private int lowerSide(int at) {
    int axis = 0;
    double most = 0;
    for (int k = 0; k < 3; k++) {
      double step = blocks[at + 6 + k] - blocks[at + k];
      if (Math.abs(step) > most) {
        most = Math.abs(step);
        axis = step < 0 ? k + 3 : k;
      }
    }
    return axis;
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

  private void divide(int node, int from, int to, int depth, int home) {
    int middle = cut(from, to, depth);
    side(node, 0, from, middle, depth, home);
    side(node, 1, middle, to, depth, home);
  }

  private void side(int node, int side, int from, int to, int depth, int home) {
    leafBlock(12 * node + 6 * side, from, to);
    boolean small = to - from <= LARGEST_LEAF;
    if (to - from == 1 || (small && !worthCutting(from, to))) {
      below[3 * node + side] = leaf(from, to - from);
      Arrays.fill(around, from, to, home);
    } else {
      int child = node();
      below[3 * node + side] = child;
      divide(child, from, to, depth + 1, to - from >= NEIGHBOURS ? child : home);
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
    Blocks.clear(sweep, 0);
    for (int i = from; i < to; i++) {
      Blocks.join(sweep, 0, box, 6 * order[i]);
    }
    return Blocks.area(sweep, 0);
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
    Blocks.clear(middles, 0);
    for (int i = from; i < to; i++) {
      int b = 6 * order[i];
      Blocks.grow(
          middles, 0, box[b] + box[b + 3], box[b + 1] + box[b + 4], box[b + 2] + box[b + 5]);
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
      Blocks.clear(binBox, 6 * b);
      binCount[b] = 0;
    }
    for (int i = from; i < to; i++) {
      int b = bin(order[i], axis);
      Blocks.join(binBox, 6 * b, box, 6 * order[i]);
      binCount[b]++;
    }
    Blocks.clear(sweep, 0);
    int number = 0;
    for (int b = BINS - 1; b > 0; b--) {
      Blocks.join(sweep, 0, binBox, 6 * b);
      number += binCount[b];
      aboveArea[b] = number == 0 ? 0 : Blocks.area(sweep, 0);
      aboveCount[b] = number;
    }
    return sweptCut(axis);
  }

  private Cut sweptCut(int axis) {
    int best = 1;
    double least = Double.POSITIVE_INFINITY;
    Blocks.clear(sweep, 0);
    int number = 0;
    for (int b = 1; b < BINS; b++) {
      Blocks.join(sweep, 0, binBox, 6 * (b - 1));
      number += binCount[b - 1];
      double cost =
          (number == 0 ? 0 : number * Blocks.area(sweep, 0)) + aboveCount[b] * aboveArea[b];
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
    Blocks.clear(blocks, at);
    for (int i = from; i < to; i++) {
      Blocks.join(blocks, at, box, 6 * order[i]);
    }
  }
}
