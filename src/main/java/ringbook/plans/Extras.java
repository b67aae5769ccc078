package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Limits;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Tally;
import ringbook.assess.coverage.View;

/**
 * Chooses single photographs for patches that are not yet seen well: always the one that brings
 * most patches nearer to that. Gains only shrink as more is chosen, so an old gain is an upper
 * limit and most need not be worked out again.
 */
final class Extras {

  /** What a patch with all views but the last is worth against one that is seen well. */
  private static final double NEARLY = 0.5;

  private final Tally tally;
  private final List<View> pool;
  private final boolean[] wanted;

  /** What each patch is worth now; of one that does not count, all it can be. */
  private final double[] credits;

  /** What each view of the pool brings at most. */
  private final double[] gains;

  private Extras(Tally tally, List<View> pool, boolean[] wanted) {
    this.tally = tally;
    this.pool = pool;
    this.wanted = wanted;
    credits = new double[wanted.length];
    for (int i = 0; i < credits.length; i++) {
      credits[i] = wanted[i] ? credit(tally.state(i)) : 1;
    }
    gains = new double[pool.size()];
    for (int k = 0; k < gains.length; k++) {
      gains[k] = limit(pool.get(k));
    }
  }

  /**
   * Numbers of the views to add, in the order of choice.
   *
   * @param start what is seen already
   * @param pool views to choose from, of the same patches
   * @param wanted which patches count
   */
  static List<Integer> choose(Tally start, List<View> pool, boolean[] wanted) {
    return new Extras(start.copy(), pool, wanted).chosen();
  }

  private List<Integer> chosen() {
    List<Integer> chosen = new ArrayList<>();
    while (true) {
      int best = next();
      if (best < 0) {
        return chosen;
      }
      View view = pool.get(best);
      tally.add(view);
      for (int patch : view.wells()) {
        credits[patch] = wanted[patch] ? credit(tally.state(patch)) : 1;
      }
      gains[best] = 0;
      chosen.add(best);
    }
  }

  private double limit(View view) {
    double gain = 0;
    for (int patch : view.wells()) {
      gain += 1 - credits[patch];
    }
    return gain;
  }

  private int next() {
    boolean[] fresh = new boolean[gains.length];
    while (true) {
      int best = -1;
      for (int k = 0; k < gains.length; k++) {
        if (gains[k] > 1e-9 && (best < 0 || gains[k] > gains[best])) {
          best = k;
        }
      }
      if (best < 0 || fresh[best]) {
        return best;
      }
      fresh[best] = true;
      gains[best] = Math.min(gains[best], gain(pool.get(best)));
    }
  }

  private double gain(View view) {
    double gain = 0;
    int[] wells = view.wells();
    for (int slot = 0; slot < wells.length; slot++) {
      double before = credits[wells[slot]];
      gain += before < 1 ? credit(tally.with(view, slot)) - before : 0;
    }
    return gain;
  }

  /** From 0 for a patch nobody sees to 1 for one that is seen well. */
  private static double credit(Tally.State patch) {
    if (patch.count() == 0) {
      return 0;
    }
    if (patch.patchClass() == PatchClass.WELL) {
      return 1;
    }
    double some =
        Math.min(Limits.VIEWS, patch.count()) * 0.2 + Math.min(Limits.VIEWS, patch.tied()) * 0.8;
    return NEARLY * some / Limits.VIEWS;
  }
}
