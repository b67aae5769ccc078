package ringbook.assess.coverage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Which photographs hang together: each is a point, and two are tied if what they have in common
 * and can be matched reaches a limit.
 */
public final class PairGraph {

  private final double[][] weights;
  private final double limit;
  private final boolean[][] ties;

  /**
   * From all pairs.
   *
   * @param weights symmetric, matchable share of every two photographs
   * @param limit from which two are tied, above 0
   */
  public PairGraph(double[][] weights, double limit) {
    this.limit = limit;
    int n = weights.length;
    this.weights = new double[n][];
    ties = new boolean[n][n];
    for (int a = 0; a < n; a++) {
      this.weights[a] = weights[a].clone();
      for (int b = 0; b < n; b++) {
        ties[a][b] = a != b && weights[a][b] >= limit;
      }
    }
  }

  /**
   * A tie.
   *
   * @param a number of a photograph, from 0
   * @param b number of the other, below {@code a}
   * @param matchable what they have in common and can be matched
   */
  public record Tie(int a, int b, double matchable) {}

  /** From which share on two are tied. */
  public double limit() {
    return limit;
  }

  /** How many photographs. */
  public int size() {
    return ties.length;
  }

  /** Whether two are tied. */
  public boolean tied(int a, int b) {
    return ties[a][b];
  }

  /** How strongly two could be tied, whether they are or not. */
  public double matchable(int a, int b) {
    return weights[a][b];
  }

  /** How many others one is tied to. */
  public int degree(int a) {
    int degree = 0;
    for (boolean tied : ties[a]) {
      degree += tied ? 1 : 0;
    }
    return degree;
  }

  /** The sets that hang together, the largest first; one if all is well. */
  public List<List<Integer>> pieces() {
    List<List<Integer>> pieces = new ArrayList<>();
    boolean[] known = new boolean[size()];
    for (int start = 0; start < size(); start++) {
      if (!known[start]) {
        pieces.add(piece(start, known));
      }
    }
    pieces.sort((x, y) -> y.size() - x.size());
    return pieces;
  }

  private List<Integer> piece(int start, boolean[] known) {
    List<Integer> piece = new ArrayList<>();
    Deque<Integer> open = new ArrayDeque<>();
    known[start] = true;
    open.add(start);
    while (!open.isEmpty()) {
      int at = open.remove();
      piece.add(at);
      for (int next = 0; next < size(); next++) {
        if (ties[at][next] && !known[next]) {
          known[next] = true;
          open.add(next);
        }
      }
    }
    piece.sort(null);
    return piece;
  }

  /**
   * The pairs that join all photographs most strongly, one fewer than there are photographs
   * (largest spanning tree, Prim 1957), tied or not.
   */
  public List<Tie> spanningTree() {
    int n = size();
    int[] from = new int[n];
    double[] best = new double[n];
    boolean[] in = new boolean[n];
    Arrays.fill(best, -1);
    List<Tie> tree = new ArrayList<>();
    int at = 0;
    for (int step = 1; step < n; step++) {
      in[at] = true;
      for (int other = 0; other < n; other++) {
        if (!in[other] && weights[at][other] > best[other]) {
          best[other] = weights[at][other];
          from[other] = at;
        }
      }
      at = strongest(best, in);
      tree.add(new Tie(Math.max(at, from[at]), Math.min(at, from[at]), best[at]));
    }
    return tree;
  }

  /**
   * The weakest pair of the {@link #spanningTree}; empty with fewer than two photographs. If it
   * reaches the limit, all is one piece.
   */
  public Optional<Tie> weakestLink() {
    Tie weakest = null;
    for (Tie tie : spanningTree()) {
      weakest = weakest == null || tie.matchable() < weakest.matchable() ? tie : weakest;
    }
    return Optional.ofNullable(weakest);
  }

  private static int strongest(double[] best, boolean[] in) {
    int strongest = -1;
    for (int i = 0; i < best.length; i++) {
      if (!in[i] && (strongest < 0 || best[i] > best[strongest])) {
        strongest = i;
      }
    }
    return strongest;
  }

  /**
   * The fewest photographs whose loss splits the rest; none if the set is in pieces already, all
   * but one if every two are tied. An even ring tied neighbour to neighbour has two such.
   */
  public List<Integer> splitters() {
    return new Splitters(ties).fewest();
  }

  /**
   * Whether some of the photographs hang together, and still do whichever one of them is lost:
   * three at least, one piece, no splitter alone. Much quicker than {@link #splitters} (depth
   * first, by lowest points: Hopcroft and Tarjan 1973).
   *
   * @param in one a photograph: whether it counts
   */
  public boolean isHeld(boolean[] in) {
    return new Held(ties, in).isHeld();
  }

  /** The same for all of them. */
  public boolean isHeld() {
    boolean[] in = new boolean[size()];
    Arrays.fill(in, true);
    return isHeld(in);
  }

  /** Every photograph whose loss alone splits the rest; none if the set is in pieces already. */
  public List<Integer> cuts() {
    List<Integer> cuts = new ArrayList<>();
    if (pieces().size() != 1) {
      return cuts;
    }
    for (int lost = 0; lost < size() && size() > 2; lost++) {
      boolean[] known = new boolean[size()];
      known[lost] = true;
      if (piece(lost == 0 ? 1 : 0, known).size() < size() - 1) {
        cuts.add(lost);
      }
    }
    return cuts;
  }
}
