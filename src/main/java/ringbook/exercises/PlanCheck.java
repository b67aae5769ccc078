package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;

/**
 * A plan held against its scene.
 *
 * @param photos how many it takes
 * @param loose how many of those that can be taken are not in the largest set that hangs together
 * @param shown share of what can be seen at all that it shows well, 0 to 1
 * @param lacks what it lacks besides economy, the first to be told first
 * @param coverage what its photographs see, those that can be taken; empty if none can
 */
public record PlanCheck(
    int photos, int loose, double shown, List<Lack> lacks, Optional<Coverage> coverage) {

  /**
   * One thing that is lacking.
   *
   * @param kind what sort
   * @param words one or two sentences to the learner
   */
  public record Lack(PlanLack kind, String words) {}

  public PlanCheck {
    lacks = List.copyOf(lacks);
  }

  /** Whether it lacks nothing. */
  public boolean passes() {
    return lacks.isEmpty();
  }
}
