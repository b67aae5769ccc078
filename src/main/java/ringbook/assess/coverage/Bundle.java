package ringbook.assess.coverage;

import java.util.Arrays;
import java.util.List;
import ringbook.units.Angle;

/**
 * The rays of all views that see one patch well, compared two by two. Used again for patch after
 * patch; holds the last one's results.
 */
final class Bundle {

  /** Told of every two views of the patch. */
  @FunctionalInterface
  interface Pairs {
    /**
     * Two views of it.
     *
     * @param a number of the first view
     * @param b number of the second, below {@code a}
     * @param alike share of the look that survives the turn between them
     */
    void pair(int a, int b, double alike);
  }

  /** A little more than the squared chord of {@link Limits#RAYS}. */
  private static final double WIDE = 1.01 * square(Alike.chord(Limits.RAYS));

  private final Angle decay;
  private Alike alike;
  private final double tieSquare;
  private int count;
  private double[] rays = new double[48];
  private double[] best = new double[16];
  private int[] group = new int[16];

  double matchable;
  double shortest;
  double longest;
  double tiedLongest;
  int tied;
  double sampling;

  Bundle(Limits limits) {
    decay = limits.decay();
    tieSquare = square(Alike.chord(limits.turn()));
  }

  private static double square(double chord) {
    return chord * chord;
  }

  /** Takes up the rays of one patch. */
  void load(List<View> views, int[] of, int[] slots, int size) {
    count = 0;
    room(size);
    sampling = Double.POSITIVE_INFINITY;
    for (int k = 0; k < size; k++) {
      more(views.get(of[k]), slots[k]);
    }
  }

  private void room(int size) {
    if (best.length < size + 1) {
      rays = new double[6 * size + 3];
      best = new double[2 * size + 1];
      group = new int[2 * size + 1];
    }
  }

  /** Takes up the rays of one patch but for those of one view; says how many that are. */
  int loadBut(int number, List<View> views, int[] of, int[] slots, int size) {
    load(views, of, slots, 0);
    room(size);
    for (int k = 0; k < size; k++) {
      if (of[k] != number) {
        more(views.get(of[k]), slots[k]);
      }
    }
    return count;
  }

  /** Takes up one ray more than were loaded. */
  void more(View view, int slot) {
    for (int axis = 0; axis < 3; axis++) {
      rays[3 * count + axis] = view.ray(slot, axis);
    }
    sampling = Math.min(sampling, view.sampling(slot));
    group[count] = count;
    count++;
  }

  /**
   * Finds out which rays hang together, and nothing else; {@link #tiedLongest} only as far as it
   * decides whether a patch is seen well.
   */
  void tie() {
    int parts = 1;
    for (int a = 1; a < count; a++) {
      parts++;
      // As soon as all rays so far are one group, the others need not be compared with this one.
      for (int b = a - 1; b >= 0 && parts > 1; b--) {
        if (squaredChord(a, b) <= tieSquare && join(a, b)) {
          parts--;
        }
      }
    }
    findTied(WIDE);
  }

  /** Compares all rays; {@code of} numbers the views they belong to. */
  void compare(int[] of, Pairs pairs) {
    if (alike == null) {
      alike = new Alike(decay);
    }
    Arrays.fill(best, 0, count, 0);
    shortest = Double.POSITIVE_INFINITY;
    longest = 0;
    for (int a = 1; a < count; a++) {
      for (int b = 0; b < a; b++) {
        double square = squaredChord(a, b);
        double chord = Math.sqrt(square);
        double share = alike.at(chord);
        shortest = Math.min(shortest, chord);
        longest = Math.max(longest, chord);
        best[a] = Math.max(best[a], share);
        best[b] = Math.max(best[b], share);
        if (square <= tieSquare) {
          join(a, b);
        }
        pairs.pair(of[a], of[b], share);
      }
    }
    matchable = 0;
    for (int k = 0; k < count; k++) {
      matchable += best[k];
    }
    findTied(Double.POSITIVE_INFINITY);
  }

  /** Compares the ray taken up last, of view {@code number}, with all others. */
  void compareLast(int[] of, int number, Pairs pairs) {
    if (alike == null) {
      alike = new Alike(decay);
    }
    int last = count - 1;
    for (int b = 0; b < last; b++) {
      pairs.pair(number, of[b], alike.at(Math.sqrt(squaredChord(last, b))));
    }
  }

  private double squaredChord(int a, int b) {
    double x = rays[3 * a] - rays[3 * b];
    double y = rays[3 * a + 1] - rays[3 * b + 1];
    double z = rays[3 * a + 2] - rays[3 * b + 2];
    return x * x + y * y + z * z;
  }

  private int root(int k) {
    int at = k;
    while (group[at] != at) {
      group[at] = group[group[at]];
      at = group[at];
    }
    return at;
  }

  /** Whether they were in two groups until now. */
  private boolean join(int a, int b) {
    int from = root(a);
    int to = root(b);
    group[from] = to;
    return from != to;
  }

  /**
   * The largest group; of equal ones the one whose rays are farthest apart.
   *
   * @param enough squared chord beyond which it does not matter how far
   */
  private void findTied(double enough) {
    tied = 0;
    double widest = 0;
    for (int k = 0; k < count; k++) {
      group[k] = root(k);
    }
    for (int root = 0; root < count; root++) {
      int size = group[root] == root ? size(root) : 0;
      if (size > 0 && size >= tied) {
        double wide = widest(root, enough);
        widest = size > tied ? wide : Math.max(widest, wide);
        tied = size;
      }
    }
    tiedLongest = Math.sqrt(widest);
  }

  private int size(int root) {
    int size = 0;
    for (int k = 0; k < count; k++) {
      size += group[k] == root ? 1 : 0;
    }
    return size;
  }

  private double widest(int root, double enough) {
    double widest = 0;
    for (int a = 0; a < count && widest <= enough; a++) {
      for (int b = 0; group[a] == root && b < a; b++) {
        if (group[b] == root) {
          widest = Math.max(widest, squaredChord(a, b));
        }
      }
    }
    return widest;
  }
}
