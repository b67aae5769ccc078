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
 * @param focus the runs that must be focused elsewhere than usual for it to pass, with the distance
 *     in words: "ring C at 38 cm"
 * @param coverage what its photographs see, those that can be taken; empty if none can
 */
public record PlanCheck(
    int photos,
    int loose,
    double shown,
    List<Lack> lacks,
    List<String> focus,
    Optional<Coverage> coverage) {

  /**
   * One thing that is lacking.
   *
   * @param kind what sort
   * @param words one or two sentences to the learner
   */
  public record Lack(PlanLack kind, String words) {}

  public PlanCheck {
    lacks = List.copyOf(lacks);
    focus = List.copyOf(focus);
  }

  /** Where the lens must be focused, in a sentence; empty where the usual distance will do. */
  public String focusWords() {
    return focus.isEmpty()
        ? ""
        : "Focus "
            + String.join(", ", focus)
            + "; at the usual distance too much of it is blurred.";
  }

  /** Whether it lacks nothing. */
  public boolean passes() {
    return lacks.isEmpty();
  }
}
