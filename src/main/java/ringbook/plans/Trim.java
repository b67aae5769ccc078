package ringbook.plans;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Tally;
import ringbook.assess.coverage.View;
import ringbook.units.Angle;

/**
 * Takes out photographs that can be spared: no target is seen less well without them, and no turn
 * along a ring grows over the limit.
 */
final class Trim {

  private final Seeing seeing;
  private final boolean[] targets;
  private final Angle stepLimit;

  Trim(Seeing seeing, boolean[] targets, Angle stepLimit) {
    this.seeing = seeing;
    this.targets = targets;
    this.stepLimit = stepLimit;
  }

  /** What is left, tried from the last added to the first. */
  List<Candidate> trimmed(List<Candidate> chosen) {
    return left(chosen, null, List.of());
  }

  /**
   * The same for a set that hangs together, bridges among it: what goes must leave it so, not on
   * one photograph alone.
   */
  List<Candidate> spared(List<Candidate> joined) {
    return spared(joined, List.of());
  }

  /** The same, but some stay whether they are needed or not. */
  List<Candidate> spared(List<Candidate> joined, List<Candidate> stay) {
    PairGraph graph = Coverage.graph(seeing, Candidate.views(joined));
    return graph.isHeld() ? left(joined, graph, stay) : new ArrayList<>(joined);
  }

  /**
   * What is left.
   *
   * @param graph of all, which has to hold; null if that does not matter
   * @param stay some that are not tried
   */
  List<Candidate> left(List<Candidate> all, PairGraph graph, List<Candidate> stay) {
    Set<Candidate> staying = new LinkedHashSet<>(stay);
    List<Candidate> kept = new ArrayList<>(all);
    Tally tally = Wellness.of(seeing, kept).tally();
    boolean[] wells = new Wellness(tally).wells();
    boolean[] in = new boolean[all.size()];
    Arrays.fill(in, true);
    for (int k = kept.size() - 1; k >= 0; k--) {
      if (staying.contains(kept.get(k))
          || isBetween(kept, k)
          || !isNeedless(kept.get(k).view(), k, tally, wells)) {
        continue;
      }
      in[k] = false;
      if (graph == null || graph.isHeld(in)) {
        kept.remove(k);
        tally = Wellness.of(seeing, kept).tally();
      } else {
        in[k] = true;
      }
    }
    return kept;
  }

  /** Whether all that is seen well is seen well without it, view {@code number} of the tally. */
  private boolean isNeedless(View view, int number, Tally tally, boolean[] wells) {
    for (int patch : view.wells()) {
      boolean counts = targets[patch] && wells[patch];
      if (counts && tally.without(patch, number).patchClass() != PatchClass.WELL) {
        return false;
      }
    }
    return true;
  }

  /** Whether its neighbours on the ring would be farther apart than the limit without it. */
  private boolean isBetween(List<Candidate> kept, int k) {
    Candidate one = kept.get(k);
    double at = one.viewpoint().station().azimuth().radians();
    double full = 2 * Math.PI;
    double before = full;
    double after = full;
    int others = 0;
    for (Candidate other : kept) {
      if (!other.equals(one) && other.ring().equals(one.ring())) {
        others++;
        double turn = other.viewpoint().station().azimuth().radians() - at;
        turn -= full * Math.floor(turn / full);
        after = Math.min(after, turn);
        before = Math.min(before, full - turn);
      }
    }
    double step = one.ring().step(stepLimit).radians() * (1 + 1e-6);
    // At the end of a row its neighbour on the other side is farther than a step already.
    return others > 1 && before <= step && after <= step && before + after > step;
  }
}
