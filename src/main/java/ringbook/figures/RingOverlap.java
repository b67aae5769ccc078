package ringbook.figures;

import java.util.List;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairView;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Numbers;

/**
 * What every station of a ring has in common with the others on the object itself: with its
 * neighbour, the next but one, and so on, as the mean over the whole ring. Stations from which
 * something in the room hides the whole object do not count: nobody takes those photographs.
 */
final class RingOverlap {

  private static final int FARTHEST = 12;

  private RingOverlap() {}

  static ChartModel of(Reckoning reckoning) {
    SeenScene seen = new SeenScene(reckoning, 600);
    Coverage coverage = seen.coverage(seen.ring());
    int photos = coverage.views().size();
    int far = Math.max(1, Math.min(FARTHEST, photos / 2));
    Axis across = Ticks.between("stations apart", 0, far + 1, far > 6 ? 2 : 1);
    Axis up = Ticks.between("share of what a photograph sees well, %", 0, 100, 20);
    ChartDraft chart = new ChartDraft(across, up);
    double needed = 100 * coverage.graph().limit();
    chart.rule(
        Along.UP,
        needed,
        "needed to be tied " + percent(needed),
        Stroke.dashed(Ink.FAINT, 1.4, "4 3"));
    String words = "";
    for (int apart = 1; apart <= far; apart++) {
      double[] mean = mean(coverage, apart);
      chart.mark(apart, mean[0], apart == 1 ? percent(mean[0]) : "", Shape.SQUARE, Ink.SECOND);
      chart.mark(apart, mean[1], apart <= 2 ? percent(mean[1]) : "", Shape.DOT, Ink.ACCENT);
      chart.row(String.valueOf(apart), percent(mean[0]), percent(mean[1]), percent(mean[2]));
      words += apart == 1 ? percent(mean[0]) + " shared, " + percent(mean[1]) + " matchable" : "";
    }
    chart.key(0.55 * (far + 1), 94, "both could see it", Shape.SQUARE);
    chart.key(0.55 * (far + 1), 86, "can be matched", Shape.DOT);
    return chart.model(
        "What each station of the ring shares with the others",
        "Marks fall from neighbour to neighbour. Next neighbours: "
            + words
            + ". Two stations count as tied from "
            + percent(needed)
            + " matchable on.",
        List.of("Stations apart", "Shared", "Matchable", "Least matchable"));
  }

  /** Mean shared, mean matchable and least matchable of all pairs so far apart, in percent. */
  private static double[] mean(Coverage coverage, int apart) {
    int photos = coverage.views().size();
    double[] found = {0, 0, 100};
    int pairs = 0;
    for (int i = 0; i < photos; i++) {
      int other = (i + apart) % photos;
      if (coverage.views().get(i).count() > 0 && coverage.views().get(other).count() > 0) {
        PairView pair = other == i ? new PairView(1, 1, 1) : coverage.pair(i, other);
        found[0] += 100 * pair.shared();
        found[1] += 100 * pair.matchable();
        found[2] = Math.min(found[2], 100 * pair.matchable());
        pairs++;
      }
    }
    return pairs == 0 ? new double[3] : new double[] {found[0] / pairs, found[1] / pairs, found[2]};
  }

  private static String percent(double value) {
    return Numbers.fixed(value, 0) + "\u00a0%";
  }
}
