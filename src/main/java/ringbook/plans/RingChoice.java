package ringbook.plans;

import java.util.List;
import ringbook.assess.coverage.Limits;
import ringbook.shots.Pose;
import ringbook.units.Whole;

/**
 * Chooses rings: as few photographs as can be that leave next to nothing that rings can see; a wide
 * step from ring to ring costs the photographs that bridge it. Starts with the ring that gains most
 * for its photographs, again and again, then adds, drops and shifts rings as long as that helps.
 */
final class RingChoice {

  /** Share of what rings can see that single photographs may see to instead. Chosen by trial. */
  private static final double LEFT = 0.04;

  /** Ways from ring to ring, so that no single photograph carries the whole. */
  private static final int BRIDGES = 2;

  /** What a whole surface left out would cost, in photographs; more than any plan has. */
  private static final double DEAR = 100_000;

  private final List<RingViews> rings;
  private final int[][] byRing;
  private final double[] areas;
  private final double limit;
  private final boolean[] ringTargets;
  private double all;

  /**
   * Chooses among rings.
   *
   * @param rings by pose, then from low to high
   * @param areas of the patches
   * @param targets patches that can be seen well
   * @param limit largest step from ring to ring in radians
   */
  RingChoice(List<RingViews> rings, double[] areas, boolean[] targets, double limit) {
    this.rings = rings;
    this.areas = areas;
    this.limit = limit;
    byRing = new int[rings.size()][];
    for (int r = 0; r < byRing.length; r++) {
      byRing[r] = rings.get(r).counts(areas.length);
    }
    boolean[] every = new boolean[rings.size()];
    java.util.Arrays.fill(every, true);
    int[] counts = counts(every);
    ringTargets = new boolean[areas.length];
    for (int i = 0; i < areas.length; i++) {
      ringTargets[i] = targets[i] && counts[i] >= Limits.VIEWS;
      all += ringTargets[i] ? areas[i] : 0;
    }
  }

  boolean[] chosen() {
    boolean[] chosen = start();
    double cost = cost(chosen);
    while (true) {
      boolean[] better = best(chosen, cost);
      if (better == null) {
        return chosen;
      }
      chosen = better;
      cost = cost(chosen);
    }
  }

  /** Greedy: until next to nothing is left. */
  private boolean[] start() {
    boolean[] chosen = new boolean[rings.size()];
    while (left(chosen) > LEFT * all) {
      double before = left(chosen);
      int best = -1;
      double most = 0;
      for (int r = 0; r < chosen.length; r++) {
        if (!chosen[r] && rings.get(r).photos() > 0) {
          chosen[r] = true;
          double gain = (before - left(chosen)) / rings.get(r).photos();
          chosen[r] = false;
          if (gain > most) {
            most = gain;
            best = r;
          }
        }
      }
      if (best < 0) {
        return chosen;
      }
      chosen[best] = true;
    }
    return chosen;
  }

  /** The best neighbour, if it beats {@code cost}: one ring more, less, or in place of another. */
  private boolean[] best(boolean[] chosen, double cost) {
    boolean[] best = null;
    double least = cost - 1e-9;
    for (int on = -1; on < chosen.length; on++) {
      for (int off = -1; off < chosen.length; off++) {
        boolean adds = on >= 0 && !chosen[on] && rings.get(on).photos() > 0;
        boolean drops = off >= 0 && chosen[off];
        if ((on >= 0 && !adds) || (off >= 0 && !drops) || (on < 0 && off < 0)) {
          continue;
        }
        boolean[] trial = chosen.clone();
        if (adds) {
          trial[on] = true;
        }
        if (drops) {
          trial[off] = false;
        }
        double price = cost(trial);
        if (price < least) {
          least = price;
          best = trial;
        }
      }
    }
    return best;
  }

  /** Photographs of the rings, and a guess of how many more what they leave takes. */
  double cost(boolean[] chosen) {
    double photos = 0;
    for (int r = 0; r < chosen.length; r++) {
      photos += chosen[r] ? rings.get(r).photos() : 0;
    }
    double left = left(chosen);
    double share = all == 0 ? 0 : left / all;
    double tooMuch = Math.max(0, share - LEFT);
    // A thousandth of the surface takes about a third of a photograph: three for a patch of 1 %.
    return photos + 300 * share + DEAR * tooMuch + BRIDGES * bridges(chosen);
  }

  /** Photographs that lead from ring to ring where the step is wider than matches bear. */
  private double bridges(boolean[] chosen) {
    double bridges = 0;
    Pose pose = null;
    double last = 0;
    for (int r = 0; r < chosen.length; r++) {
      if (!chosen[r]) {
        continue;
      }
      RingShape shape = rings.get(r).shape();
      double at = shape.elevation().radians();
      if (shape.pose() == pose) {
        bridges += Math.max(0, Whole.up((at - last) / limit) - 1);
      }
      pose = shape.pose();
      last = at;
    }
    return bridges;
  }

  /** Area that fewer views than wanted see, counted by the part of the views that is missing. */
  private double left(boolean[] chosen) {
    int[] counts = counts(chosen);
    double left = 0;
    for (int i = 0; i < counts.length; i++) {
      if (ringTargets[i] && counts[i] < Limits.VIEWS) {
        left += areas[i] * (Limits.VIEWS - counts[i]) / Limits.VIEWS;
      }
    }
    return left;
  }

  private int[] counts(boolean[] chosen) {
    int[] counts = new int[areas.length];
    for (int r = 0; r < chosen.length; r++) {
      if (chosen[r]) {
        int[] more = byRing[r];
        for (int i = 0; i < counts.length; i++) {
          counts[i] += more[i];
        }
      }
    }
    return counts;
  }
}
