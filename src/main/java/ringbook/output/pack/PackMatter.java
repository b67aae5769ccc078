package ringbook.output.pack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.course.ComposedExercise;
import ringbook.ledger.Reckoning;
import ringbook.shots.ShotPlan;

/**
 * What the pack needs beside the page model.
 *
 * @param reckoning the numbers of the group
 * @param plan the photographs to take; empty where the scene allows none
 * @param own gives the exercises with the numbers of one learner, by id
 * @param learners who gets sheets with the name on them, by name; may be empty
 */
public record PackMatter(
    Reckoning reckoning, Optional<ShotPlan> plan, OwnExercises own, List<String> learners) {

  public PackMatter {
    learners = List.copyOf(learners);
  }

  /** Gives learners numbers of their own. */
  @FunctionalInterface
  public interface OwnExercises {

    /** All exercises with the numbers of {@code learner}, by id. */
    Map<String, ComposedExercise> of(String learner);
  }
}
