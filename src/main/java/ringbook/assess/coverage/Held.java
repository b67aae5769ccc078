package ringbook.assess.coverage;

/**
 * Looks for a point whose loss splits a graph, depth first without recursion: a point is one if
 * from a branch below it no way leads past it (Hopcroft and Tarjan 1973).
 */
final class Held {

  private static final int FEWEST = 3;

  private final boolean[][] ties;
  private final boolean[] in;
  private final int[] order;
  private final int[] lowest;
  private final int[] parent;
  private final int[] next;

  Held(boolean[][] ties, boolean[] in) {
    this.ties = ties;
    this.in = in;
    int n = ties.length;
    order = new int[n];
    lowest = new int[n];
    parent = new int[n];
    next = new int[n];
  }

  /** Three points at least, one piece, and no point whose loss splits it. */
  boolean isHeld() {
    int count = 0;
    int root = -1;
    for (int p = 0; p < in.length; p++) {
      count += in[p] ? 1 : 0;
      root = root < 0 && in[p] ? p : root;
    }
    return count >= FEWEST && walked(root) == count;
  }

  /** How many points a walk from the root comes to; less as soon as one is found that splits. */
  private int walked(int root) {
    int known = 1;
    int branches = 0;
    order[root] = 1;
    lowest[root] = 1;
    parent[root] = -1;
    int at = root;
    while (at >= 0) {
      int to = next[at]++;
      if (to == ties.length) {
        int above = parent[at];
        if (above >= 0) {
          lowest[above] = Math.min(lowest[above], lowest[at]);
          branches += above == root ? 1 : 0;
          boolean splits = above == root ? branches > 1 : lowest[at] >= order[above];
          if (splits) {
            return -1;
          }
        }
        at = above;
      } else if (in[to] && ties[at][to]) {
        if (order[to] == 0) {
          order[to] = ++known;
          lowest[to] = known;
          parent[to] = at;
          at = to;
        } else if (to != parent[at]) {
          lowest[at] = Math.min(lowest[at], order[to]);
        }
      }
    }
    return known;
  }
}
