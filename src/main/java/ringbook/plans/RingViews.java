package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Station;
import ringbook.units.Angle;

/**
 * A ring with as few stations as it can have.
 *
 * @param shape where it runs
 * @param stations with what they see of the whole surface
 */
record RingViews(RingShape shape, List<Candidate> stations) {

  static RingViews of(RingShape shape, Reach reach, Angle limit, Setup setup, Seeing seeing) {
    List<Candidate> stations = new ArrayList<>();
    for (Station station : shape.stations(reach, limit)) {
      Viewpoint viewpoint = new Viewpoint(station, setup);
      stations.add(new Candidate(viewpoint, shape, seeing.look(viewpoint)));
    }
    return new RingViews(shape, stations);
  }

  /** By how many of its stations each patch is seen well. */
  int[] counts(int patches) {
    int[] counts = new int[patches];
    for (Candidate candidate : stations) {
      for (int patch : candidate.view().wells()) {
        counts[patch]++;
      }
    }
    return counts;
  }

  int photos() {
    return stations.size();
  }
}
