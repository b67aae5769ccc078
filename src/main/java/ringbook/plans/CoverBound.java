package ringbook.plans;

import java.util.Arrays;
import java.util.List;
import ringbook.units.Num;

/**
 * A lower bound on how many stations see every patch so many times.
 *
 * <p><b>The problem.</b> Of n stations choose as few as can be, so that every one of m patches is
 * seen by at least k of those chosen. Let a(p, s) be 1 if station s sees patch p and else 0, and
 * x(s) be 1 if s is chosen and else 0. Then for every patch p the sum over s of a(p, s) x(s) is at
 * least k.
 *
 * <p><b>The bound.</b> Give every patch a weight w(p), 0 or more, so that what any one station sees
 * weighs no more than 1: for every s the sum over p of a(p, s) w(p) is at most 1. Then any choice
 * has at least k W stations, W being the sum of all weights.
 *
 * <p><b>Proof</b> (weak duality). For any choice x
 *
 * <pre>
 *   number of stations = Σs x(s)
 *                      ≥ Σs x(s) Σp a(p, s) w(p)     what a station sees weighs at most 1, x(s) ≥ 0
 *                      = Σp w(p) Σs a(p, s) x(s)     the same sum in another order
 *                      ≥ Σp w(p) k = k W             every patch is seen k times, w(p) ≥ 0
 * </pre>
 *
 * and as the number is whole, it is at least k W rounded up. Nothing is asked of x but that it is
 * not negative, so the bound holds for parts of stations too, and for taking a station twice.
 *
 * <p><b>The weights</b> are found by raising again and again the patch whose stations carry least
 * (packing by rising prices: Garg and Könemann 1998, from memory), then divided by what the
 * heaviest station sees. That division alone makes the condition true; the bound is valid however
 * well or badly the weights were found, and for any selection of the patches that have to be seen.
 * With the best weights it would be the optimum of the linear program; it comes within a tenth.
 *
 * <p><b>What it does not cover.</b> It knows only the stations it was given: stations that bridge
 * others, or are moved and focused anew later, are none of them, so a plan from elsewhere could in
 * principle have fewer. And it asks of a patch only how many stations see it, a part of what the
 * plan needs: that the views of a patch are tied and their rays far enough apart, that the
 * photographs are one chain which no single loss breaks, that turns along a ring keep to the limit,
 * that a person can say the plan. All these only make plans longer, so the bound stays true and is
 * the less sharp the more a plan pays for them.
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
