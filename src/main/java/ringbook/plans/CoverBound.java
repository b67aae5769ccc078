package ringbook.plans;

import java.util.Arrays;
import java.util.List;
import ringbook.units.Num;

/**
 * A lower bound on how many stations see every patch so many times.
 *
 * <p>The least number x of stations is at least the optimum of the linear program "sum of x least,
 * with sum of x over the stations that see a patch at least k, x not negative", and that is at
 * least k times the sum of any weights of patches of which no station sees more than 1 in all (weak
 * duality). Such weights are found by raising again and again the patch whose stations carry least
 * (packing by rising prices: Garg and Könemann 1998, from memory), then scaled down by the heaviest
 * station. So the bound is valid however well the weights were found.
 */
final class CoverBound {

  private static final double RISE = 0.1;
  private static final int MOST_STEPS = 60_000;

  private final int[][] seers;
  private final int[][] seen;

  /**
   * For patches and stations by number.
   *
   * @param seers for each patch the stations that see it; not empty
   * @param stations how many there are
   */
  CoverBound(List<int[]> seers, int stations) {
    this.seers = seers.toArray(new int[0][]);
    int[] counts = new int[stations];
    for (int[] of : this.seers) {
      for (int s : of) {
        counts[s]++;
      }
    }
    seen = new int[stations][];
    for (int s = 0; s < stations; s++) {
      seen[s] = new int[counts[s]];
      counts[s] = 0;
    }
    for (int p = 0; p < this.seers.length; p++) {
      for (int s : this.seers[p]) {
        seen[s][counts[s]++] = p;
      }
    }
  }

  /** The largest sum of weights found: the bound on x for k = 1, before rounding up. */
  double weight() {
    int patches = seers.length;
    if (patches == 0) {
      return 0;
    }
    double[] price = new double[seen.length];
    Arrays.fill(price, 1);
    double[] cost = new double[patches];
    for (int p = 0; p < patches; p++) {
      cost[p] = seers[p].length;
    }
    double[] load = new double[seen.length];
    double sum = 0;
    double best = 0;
    double heaviest = 0;
    for (int step = 1; step <= MOST_STEPS; step++) {
      int p = cheapest(cost);
      sum++;
      for (int s : seers[p]) {
        load[s]++;
        heaviest = Math.max(heaviest, load[s]);
        double more = price[s] * RISE;
        price[s] += more;
        for (int other : seen[s]) {
          cost[other] += more;
        }
      }
      best = Math.max(best, sum / heaviest);
      if (heaviest * RISE * RISE > 2 * logOf(seen.length)) {
        return best;
      }
    }
    return best;
  }

  private static double logOf(int stations) {
    return Num.log(stations + 2.0);
  }

  private static int cheapest(double[] cost) {
    int best = 0;
    for (int p = 1; p < cost.length; p++) {
      if (cost[p] < cost[best]) {
        best = p;
      }
    }
    return best;
  }

  /** The bound itself: at least so many stations for {@code views} views of every patch. */
  int stations(int views) {
    return (int) Math.ceil(views * weight() - 1e-9);
  }
}
