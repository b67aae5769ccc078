package ringbook.assess.coverage;

import java.util.List;

/** Adds up, patch by patch, what every two views have in common. */
final class PairSums {

  /**
   * A view that sees less than this share of what the widest one sees is measured against this: a
   * sliver ties nothing, however well it matches.
   */
  private static final double SLIVER = 0.02;

  private final Limits limits;
  private final double[][] shared;
  private final double[][] matchable;
  private final double[] areas;

  PairSums(Limits limits, List<View> views) {
    this.limits = limits;
    int n = views.size();
    shared = new double[n][];
    matchable = new double[n][];
    areas = areas(views);
    for (int i = 0; i < n; i++) {
      shared[i] = new double[i];
      matchable[i] = new double[i];
    }
  }

  /** Square metres that what two views have in common is measured against, of each of them. */
  static double[] areas(List<View> views) {
    double[] areas = new double[views.size()];
    double widest = 0;
    for (int i = 0; i < areas.length; i++) {
      areas[i] = views.get(i).area();
      widest = Math.max(widest, areas[i]);
    }
    for (int i = 0; i < areas.length; i++) {
      areas[i] = Math.max(areas[i], SLIVER * widest);
    }
    return areas;
  }

  /** One patch that both see well; a above b. */
  void add(int a, int b, double area, double alike) {
    shared[a][b] += area;
    matchable[a][b] += area * alike;
  }

  private double over(double sum, int a, int b) {
    double lesser = Math.min(areas[a], areas[b]);
    return lesser == 0 ? 0 : sum / lesser;
  }

  PairView pair(int one, int other, Tally tally, Surface surface) {
    int a = Math.max(one, other);
    int b = Math.min(one, other);
    return new PairView(
        over(shared[a][b], a, b),
        frame(tally.views().get(a), tally.views().get(b), surface),
        over(matchable[a][b], a, b));
  }

  private static double frame(View a, View b, Surface surface) {
    double inA = 0;
    double inB = 0;
    double both = 0;
    for (int i = 0; i < surface.count(); i++) {
      double area = surface.patches().area(i);
      boolean seenByA = a.look(i).inPicture();
      boolean seenByB = b.look(i).inPicture();
      inA += seenByA ? area : 0;
      inB += seenByB ? area : 0;
      both += seenByA && seenByB ? area : 0;
    }
    double lesser = Math.min(inA, inB);
    return lesser == 0 ? 0 : both / lesser;
  }

  PairGraph graph() {
    double[][] weights = new double[areas.length][areas.length];
    for (int a = 0; a < areas.length; a++) {
      for (int b = 0; b < a; b++) {
        weights[a][b] = over(matchable[a][b], a, b);
        weights[b][a] = weights[a][b];
      }
    }
    return new PairGraph(weights, limits.tie());
  }
}
