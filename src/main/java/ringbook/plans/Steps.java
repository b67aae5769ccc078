package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Angle;

/**
 * How far apart the stations of a row or ring are: one step, and gaps where there is none for a
 * while.
 *
 * @param step the usual turn from one to the next, in radians
 * @param gaps where it is wider, in radians: from the last station before to the first behind, the
 *     widest last; for a row, the one outside of it among them
 * @param areEven whether all other steps are alike
 */
record Steps(double step, List<double[]> gaps, boolean areEven) {

  /** Differences of a step that nobody notices. */
  private static final double ALIKE = Angle.ofDegrees(1).radians();

  /** Gaps that a person can bear in mind. */
  private static final int MOST_GAPS = 2;

  private static final double FULL = 2 * Math.PI;

  /** Of stations at one height, at least one. */
  static Steps of(List<Candidate> members) {
    List<Double> turns = Arc.turns(members);
    int n = turns.size();
    double least = FULL;
    for (int i = 0; i < n; i++) {
      least = Math.min(least, ahead(turns, i));
    }
    List<double[]> gaps = new ArrayList<>();
    double sum = 0;
    int steps = 0;
    for (int i = 0; i < n; i++) {
      double ahead = ahead(turns, i);
      if (ahead > least + ALIKE) {
        gaps.add(new double[] {turns.get(i), turns.get(i) + ahead});
      } else {
        sum += ahead;
        steps++;
      }
    }
    gaps.sort((a, b) -> Double.compare(a[1] - a[0], b[1] - b[0]));
    boolean few = gaps.size() <= MOST_GAPS && (n == 1 || steps >= gaps.size());
    return new Steps(sum / Math.max(1, steps), List.copyOf(gaps), few);
  }

  private static double ahead(List<Double> turns, int i) {
    boolean last = i + 1 == turns.size();
    return last ? turns.get(0) + FULL - turns.get(i) : turns.get(i + 1) - turns.get(i);
  }
}
