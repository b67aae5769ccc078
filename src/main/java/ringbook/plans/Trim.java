package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.units.Angle;

/**
 * Takes out photographs that can be spared: no target is seen less well without them, and no turn
 * along a ring grows over the limit.
 */
final class Trim {

  /** So many photographs at least must be lost before the set falls apart. */
  static final int HELD = 2;

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
    List<Candidate> kept = new ArrayList<>(chosen);
    boolean[] wells = Wellness.of(seeing, kept).wells();
    for (int k = kept.size() - 1; k >= 0; k--) {
      Candidate trial = kept.get(k);
      if (!isBetween(kept, k)) {
        kept.remove(k);
        if (!holds(trial.view(), kept, wells)) {
          kept.add(k, trial);
        }
      }
    }
    return kept;
  }

  /**
   * The same for a set that hangs together, bridges among it: what goes must leave it so, not on
   * one photograph alone.
   */
  List<Candidate> spared(List<Candidate> joined) {
    PairGraph graph = Coverage.graph(seeing, Candidate.views(joined));
    List<Candidate> kept = new ArrayList<>(joined);
    if (graph.pieces().size() != 1 || graph.splitters().size() < HELD) {
      return kept;
    }
    List<Integer> numbers = new ArrayList<>();
    for (int k = 0; k < joined.size(); k++) {
      numbers.add(k);
    }
    boolean[] wells = Wellness.of(seeing, kept).wells();
    for (int k = kept.size() - 1; k >= 0; k--) {
      if (isBetween(kept, k)) {
        continue;
      }
      Candidate trial = kept.remove(k);
      int number = numbers.remove(k);
      if (!holds(trial.view(), kept, wells) || !hangs(graph, numbers)) {
        kept.add(k, trial);
        numbers.add(k, number);
      }
    }
    return kept;
  }

  private static boolean hangs(PairGraph graph, List<Integer> numbers) {
    int n = numbers.size();
    double[][] weights = new double[n][n];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        weights[a][b] = a == b ? 0 : graph.matchable(numbers.get(a), numbers.get(b));
      }
    }
    PairGraph left = new PairGraph(weights, graph.limit());
    return left.pieces().size() == 1 && left.splitters().size() >= HELD;
  }

  private boolean holds(View gone, List<Candidate> kept, boolean[] wells) {
    Wellness seen = Wellness.of(seeing, kept);
    for (int patch : gone.wells()) {
      if (targets[patch] && wells[patch] && !seen.well(patch)) {
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
