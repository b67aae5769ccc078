package ringbook.assess.coverage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The smallest set of points whose loss splits a graph (its vertex connectivity), exactly, by
 * largest flows through points that each let one unit pass (Menger 1927; Even and Tarjan 1975).
 *
 * <p>Of the first κ + 1 points at least one is outside a smallest splitting set, so it is enough to
 * send flows from each of the first points to all others until there are more of them than the
 * smallest flow found.
 */
final class Splitters {

  private final boolean[][] ties;
  private final int n;
  private final int[][] neighbours;
  private int[] next;
  private int[] previous;

  Splitters(boolean[][] ties) {
    this.ties = ties;
    n = ties.length;
    neighbours = new int[n][];
    for (int a = 0; a < n; a++) {
      int[] all = new int[n];
      int count = 0;
      for (int b = 0; b < n; b++) {
        if (ties[a][b]) {
          all[count++] = b;
        }
      }
      neighbours[a] = Arrays.copyOf(all, count);
    }
  }

  List<Integer> fewest() {
    List<Integer> best = new ArrayList<>();
    for (int i = 0; i + 1 < n; i++) {
      best.add(i);
    }
    for (int source = 0; source < n && source <= best.size(); source++) {
      for (int sink = 0; sink < n; sink++) {
        if (sink != source && !ties[source][sink]) {
          List<Integer> cut = cut(source, sink, best.size());
          best = cut.size() < best.size() ? cut : best;
        }
      }
    }
    return best;
  }

  /**
   * A smallest set between two points that are not tied; any set of {@code enough} points if it
   * would not be smaller than that.
   *
   * <p>The flow is kept as disjoint ways: {@code next} and {@code previous} of every point on one.
   */
  private List<Integer> cut(int source, int sink, int enough) {
    next = new int[n];
    previous = new int[n];
    Arrays.fill(next, -1);
    Arrays.fill(previous, -1);
    int flow = 0;
    Search search = new Search(source, sink);
    while (flow < enough && search.reaches()) {
      search.push();
      flow++;
      search = new Search(source, sink);
    }
    if (flow >= enough) {
      List<Integer> many = new ArrayList<>();
      for (int i = 0; i < enough; i++) {
        many.add(i);
      }
      return many;
    }
    return search.edge();
  }

  /**
   * A search for one more way, over points split in two: into a point, and out of it. State 2p is
   * "came in to p", state 2p + 1 "may leave p".
   */
  private final class Search {

    private final int source;
    private final int sink;
    private final int[] from = new int[2 * n];
    private final Deque<Integer> open = new ArrayDeque<>();

    Search(int source, int sink) {
      this.source = source;
      this.sink = sink;
      Arrays.fill(from, -1);
      from[2 * source + 1] = 2 * source + 1;
      open.add(2 * source + 1);
    }

    boolean reaches() {
      while (!open.isEmpty()) {
        int state = open.remove();
        int point = state / 2;
        if (state == 2 * point + 1) {
          leave(point, state);
        } else {
          turn(point, state);
        }
        if (from[2 * sink] >= 0) {
          return true;
        }
      }
      return false;
    }

    /** From the way out of a point to all neighbours; steps bear any flow, points only one unit. */
    private void leave(int point, int state) {
      if (point != source && previous[point] >= 0) {
        // Undoing the passage through the point leads back to its way in.
        visit(2 * point, state);
      }
      for (int to : neighbours[point]) {
        if (to != source) {
          visit(2 * to, state);
        }
      }
    }

    /** From the way in: through a free point, or back along the flow that comes in here. */
    private void turn(int point, int state) {
      if (previous[point] < 0) {
        visit(2 * point + 1, state);
      } else {
        int back = previous[point];
        if (back != source) {
          visit(2 * back + 1, state);
        }
      }
    }

    private void visit(int state, int by) {
      if (from[state] < 0) {
        from[state] = by;
        open.add(state);
      }
    }

    /** Adds the way found to the flow: new steps first taken, undone ones dropped. */
    void push() {
      List<int[]> taken = new ArrayList<>();
      int state = 2 * sink;
      while (state != 2 * source + 1) {
        int before = from[state];
        boolean step = state % 2 == 0 && before % 2 == 1 && state / 2 != before / 2;
        boolean undone = state % 2 == 1 && before % 2 == 0 && state / 2 != before / 2;
        if (step) {
          taken.add(new int[] {before / 2, state / 2, 1});
        } else if (undone) {
          taken.add(new int[] {state / 2, before / 2, 0});
        }
        state = before;
      }
      apply(taken);
    }

    private void apply(List<int[]> taken) {
      for (int[] step : taken) {
        if (step[2] == 0) {
          next[step[0]] = -1;
          previous[step[1]] = -1;
        }
      }
      for (int[] step : taken) {
        if (step[2] == 1) {
          if (step[0] != source) {
            next[step[0]] = step[1];
          }
          if (step[1] != sink) {
            previous[step[1]] = step[0];
          }
        }
      }
    }

    /** The points that the search came in to but could not leave: the smallest set. */
    List<Integer> edge() {
      List<Integer> edge = new ArrayList<>();
      for (int p = 0; p < n; p++) {
        if (p != source && from[2 * p] >= 0 && from[2 * p + 1] < 0) {
          edge.add(p);
        }
      }
      return edge;
    }
  }
}
