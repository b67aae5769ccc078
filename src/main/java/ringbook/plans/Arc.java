package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Angle;

/**
 * The least arc on the floor that holds some stations.
 *
 * @param from where it begins, in radians, against the clock
 * @param width to its end, in radians
 */
record Arc(double from, double width) {

  private static final double FULL = 2 * Math.PI;

  /** Stations with a gap no wider go all round. */
  private static final double GAP = Angle.ofDegrees(100).radians();

  static Arc of(List<Candidate> members) {
    List<Double> turns = turns(members);
    double widest = -1;
    double from = 0;
    for (int i = 0; i < turns.size(); i++) {
      boolean last = i + 1 == turns.size();
      double next = last ? turns.get(0) + FULL : turns.get(i + 1);
      if (next - turns.get(i) > widest + 1e-9) {
        widest = next - turns.get(i);
        from = next;
      }
    }
    return new Arc(from, FULL - widest);
  }

  /** Directions from 0 up to a whole turn, rising. */
  static List<Double> turns(List<Candidate> members) {
    List<Double> turns = new ArrayList<>();
    for (Candidate one : members) {
      double full = Bunch.azimuth(one) / FULL;
      turns.add((full - Math.floor(full)) * FULL);
    }
    turns.sort(null);
    return turns;
  }

  boolean isRound() {
    return FULL - width <= GAP;
  }
}
