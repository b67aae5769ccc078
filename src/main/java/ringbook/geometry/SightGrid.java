package ringbook.geometry;

/**
 * Patches that face one camera, as points in the cells of a plane before it. Above the cells lies a
 * pyramid of ever coarser ones; each knows how deep its deepest patch lies, so that four looks tell
 * whether anything in some part of the view can be hidden by a thing at a given depth.
 */
final class SightGrid {

  /** Farther away than the patches' ball by this factor, or the view is too wide for a plane. */
  private static final double NEAREST = 1.15;

  /** Cells along a side: a power of two, at most two to this. */
  private static final int MOST_LEVELS = 9;

  /** Numbers kept for a ray: the way to the patch (x, y, z), right, up, depth. */
  static final int STRIDE = 6;

  /** Reserve for rounding, as a part of the view's width or depth. */
  static final double SLACK = 1e-6;

  private final Vec3 camera;
  final Vec3 ahead;
  final Vec3 right;
  final Vec3 up;

  /** The view reaches from -half to half, at depth 1. */
  final double half;

  /** Reserve for rounding, metres of depth. */
  final double depthSlack;

  private final double scale;
  private final int levels;

  /** The rays, cell by cell; a hidden one gets depth 0. */
  private double[] rays;

  /** The patch of each ray. */
  private int[] numbers;

  private final int[] start;

  /** Depth of the deepest patch of each cell, then of each four cells, and so on. */
  private final double[] deepest;

  /** Where each level of the pyramid begins. */
  private final int[] levelAt;

  /** Whether the camera stands far enough outside the patches. */
  static boolean fits(Vec3 camera, Patches patches) {
    Bounds block = patches.bounds();
    return camera.minus(block.middle()).norm() > NEAREST * block.diagonal() / 2;
  }

  /**
   * The grid of some patches.
   *
   * @param which their numbers, all facing the camera
   * @param number how many of {@code which}
   */
  SightGrid(Vec3 camera, Patches patches, int[] which, int number) {
    this.camera = camera;
    Bounds block = patches.bounds();
    Vec3 way = block.middle().minus(camera);
    double distance = way.norm();
    double radius = block.diagonal() / 2;
    this.ahead = way.unit();
    Vec3 side = Math.abs(ahead.z()) < 0.9 ? Vec3.UP : new Vec3(1, 0, 0);
    this.right = ahead.cross(side).unit();
    this.up = right.cross(ahead);
    this.half = 1.0001 * radius / Math.sqrt((distance - radius) * (distance + radius));
    this.depthSlack = SLACK * (distance + radius);
    int wanted = 1;
    while (wanted < MOST_LEVELS && (1 << (2 * wanted)) < number * FINENESS) {
      wanted++;
    }
    this.levels = wanted;
    this.scale = (1 << levels) / (2 * half);
    this.start = new int[(1 << (2 * levels)) + 1];
    this.levelAt = new int[levels + 2];
    for (int level = 0; level <= levels; level++) {
      levelAt[level + 1] = levelAt[level] + (1 << (2 * (levels - level)));
    }
    this.deepest = new double[levelAt[levels + 1]];
    place(patches, which, number);
    buildPyramid();
  }

  /** Cells for each patch, before the number is rounded up to a power of four. */
  private static final double FINENESS = 0.5;

  /** Works out where each patch appears, and sorts the rays by cells. */
  private void place(Patches patches, int[] which, int number) {
    double[] found = new double[STRIDE * number];
    int[] cells = new int[number];
    for (int i = 0; i < number; i++) {
      double dx = patches.x(which[i]) - camera.x();
      double dy = patches.y(which[i]) - camera.y();
      double dz = patches.z(which[i]) - camera.z();
      int at = STRIDE * i;
      double depth = dx * ahead.x() + dy * ahead.y() + dz * ahead.z();
      double over = 1 / depth;
      found[at] = dx;
      found[at + 1] = dy;
      found[at + 2] = dz;
      found[at + 3] = (dx * right.x() + dy * right.y() + dz * right.z()) * over;
      found[at + 4] = (dx * up.x() + dy * up.y() + dz * up.z()) * over;
      found[at + 5] = depth;
      int cell = (cell(found[at + 4]) << levels) + cell(found[at + 3]);
      deepest[cell] = Math.max(deepest[cell], depth);
      start[cell]++;
      cells[i] = cell;
    }
    sort(found, which, cells);
  }

  private void sort(double[] found, int[] patch, int[] cells) {
    int sum = 0;
    for (int cell = 0; cell < start.length; cell++) {
      sum += start[cell];
      start[cell] = sum;
    }
    rays = new double[found.length];
    numbers = new int[cells.length];
    for (int i = cells.length - 1; i >= 0; i--) {
      int to = --start[cells[i]];
      numbers[to] = patch[i];
      for (int k = 0; k < STRIDE; k++) {
        rays[STRIDE * to + k] = found[STRIDE * i + k];
      }
    }
  }

  private void buildPyramid() {
    for (int level = 1; level <= levels; level++) {
      int side = 1 << (levels - level);
      int fine = levelAt[level - 1];
      for (int row = 0; row < side; row++) {
        for (int col = 0; col < side; col++) {
          int a = fine + 4 * side * row + 2 * col;
          int b = a + 2 * side;
          deepest[levelAt[level] + row * side + col] =
              Math.max(Math.max(deepest[a], deepest[a + 1]), Math.max(deepest[b], deepest[b + 1]));
        }
      }
    }
  }

  /** The column or row of a place in the view; the nearest one for a place outside. */
  int cell(double at) {
    return Math.max(0, Math.min((1 << levels) - 1, (int) ((at + half) * scale)));
  }

  /** Whether a patch in these columns and rows may lie deeper than a depth. */
  boolean anyDeeper(int left, int to, int low, int high, double depth) {
    int size = Math.max(to - left, high - low);
    int level = 0;
    while (size >> level > 0) {
      level++;
    }
    int at = levelAt[level];
    int bits = levels - level;
    int below = at + (low >> level << bits);
    int above = at + (high >> level << bits);
    return deepest[below + (left >> level)] > depth
        || deepest[below + (to >> level)] > depth
        || deepest[above + (left >> level)] > depth
        || deepest[above + (to >> level)] > depth;
  }

  double[] rays() {
    return rays;
  }

  /** The first ray of a cell. */
  int first(int col, int row) {
    return start[(row << levels) + col];
  }

  /** The first ray after those of a cell. */
  int end(int col, int row) {
    return start[(row << levels) + col + 1];
  }

  /** Marks the patches that were not hidden. */
  void mark(boolean[] seen) {
    for (int i = 0; i < numbers.length; i++) {
      seen[numbers[i]] = rays[STRIDE * i + 5] > 0;
    }
  }
}
