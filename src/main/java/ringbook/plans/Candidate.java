package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;

/**
 * A station the planner may take, with what it sees.
 *
 * @param viewpoint where, and how the camera is set
 * @param ring the ring it stands on; a close-up has one of its own
 * @param view what it sees of the whole surface
 */
record Candidate(Viewpoint viewpoint, RingShape ring, View view) {

  /** Identity is enough, and quick: every candidate is made once. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return viewpoint.hashCode();
  }

  static List<View> views(List<Candidate> candidates) {
    List<View> views = new ArrayList<>();
    candidates.forEach(candidate -> views.add(candidate.view()));
    return views;
  }
}
