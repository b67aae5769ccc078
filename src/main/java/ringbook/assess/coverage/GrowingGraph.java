package ringbook.assess.coverage;

import java.util.ArrayList;
import java.util.List;

/**
 * Which photographs hang together, for a set that grows: one more is compared with the others only
 * where it sees a patch well.
 */
public final class GrowingGraph {

  private final Seeing seeing;
  private final Tally tally;
  private final List<double[]> matchable = new ArrayList<>();

  /** Of these views by {@code seeing}, in their order. */
  public GrowingGraph(Seeing seeing, List<View> views) {
    this.seeing = seeing;
    tally = new Tally(seeing.limits(), seeing.surface().count());
    views.forEach(this::add);
  }

  private GrowingGraph(GrowingGraph from) {
    seeing = from.seeing;
    tally = from.tally.copy();
    matchable.addAll(from.matchable);
  }

  /** The same set, to grow apart. */
  public GrowingGraph copy() {
    return new GrowingGraph(this);
  }

  /** One more, behind the others. */
  public void add(View view) {
    double[] row = new double[matchable.size()];
    for (int slot = 0; slot < view.count(); slot++) {
      double area = seeing.surface().patches().area(view.patch(slot));
      tally.compare(view, slot, (a, b, alike) -> row[b] += area * alike);
    }
    matchable.add(row);
    tally.add(view);
  }

  /** The graph of all so far; the same as {@link Coverage#graph(Seeing, List)} gives. */
  public PairGraph graph() {
    double[] areas = PairSums.areas(tally.views());
    double[][] weights = new double[areas.length][areas.length];
    for (int a = 0; a < areas.length; a++) {
      double[] row = matchable.get(a);
      for (int b = 0; b < a; b++) {
        double lesser = Math.min(areas[a], areas[b]);
        weights[a][b] = lesser == 0 ? 0 : row[b] / lesser;
        weights[b][a] = weights[a][b];
      }
    }
    return new PairGraph(weights, seeing.limits().tie());
  }
}
