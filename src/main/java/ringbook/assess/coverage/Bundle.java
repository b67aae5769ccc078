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
    double chord = Alike.chord(limits.turn());
    tieSquare = chord * chord;
  }

  /** Takes up the rays of one patch. */
  void load(List<View> views, int[] of, int[] slots, int size) {
    count = 0;
    if (best.length < size + 1) {
      rays = new double[6 * size + 3];
      best = new double[2 * size + 1];
      group = new int[2 * size + 1];
    }
    sampling = Double.POSITIVE_INFINITY;
    for (int k = 0; k < size; k++) {
      more(views.get(of[k]), slots[k]);
    }
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

  /** Finds out which rays hang together, and nothing else. */
  void tie() {
    for (int a = 1; a < count; a++) {
      for (int b = 0; b < a; b++) {
        if (squaredChord(a, b) <= tieSquare) {
          join(a, b);
        }
      }
    }
    findTied();
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
    findTied();
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

  private void join(int a, int b) {
    group[root(a)] = root(b);
  }

  /** The largest group; of equal ones the one whose rays are farthest apart. */
  private void findTied() {
    tied = 0;
    double widest = 0;
    for (int k = 0; k < count; k++) {
      group[k] = root(k);
    }
    for (int root = 0; root < count; root++) {
      int size = group[root] == root ? size(root) : 0;
      if (size > 0 && size >= tied) {
        double wide = widest(root);
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

  private double widest(int root) {
    double widest = 0;
    for (int a = 0; a < count; a++) {
      for (int b = 0; group[a] == root && b < a; b++) {
        if (group[b] == root) {
          widest = Math.max(widest, squaredChord(a, b));
        }
      }
    }
    return widest;
  }
}
