package ringbook.course;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringbook.exercises.VariedExercise;

/** Tries the variants of an exercise before anybody gets one. */
final class VariantTrial {

  private static final int TRIALS = 20;
  private static final int FEWEST = 3;

  private VariantTrial() {}

  /**
   * What is wrong.
   *
   * @param message what was found
   * @param help how to mend it
   */
  record Fault(String message, String help) {}

  /** What an author has to mend, if anything. */
  static Optional<Fault> of(VariedExercise exercise) {
    if (!exercise.varies()) {
      return exercise
          .statedFault()
          .map(
              reason ->
                  new Fault(
                      "this scene makes no good question: " + reason,
                      "change the scene, or add 'vary:' so that another variant can be taken"));
    }
    Map<String, Integer> reasons = new TreeMap<>();
    int usable = 0;
    for (int i = 0; i < TRIALS; i++) {
      Optional<String> reason = exercise.trial(i);
      reason.ifPresent(words -> reasons.merge(words, 1, Integer::sum));
      usable += reason.isEmpty() ? 1 : 0;
    }
    return usable >= FEWEST
        ? Optional.empty()
        : Optional.of(
            new Fault(
                "of "
                    + TRIALS
                    + " variants drawn, only "
                    + usable
                    + " can be used: "
                    + most(reasons),
                "change the ranges, 'where:' or 'sensible:'"));
  }

  private static String most(Map<String, Integer> reasons) {
    return reasons.entrySet().stream()
        .filter(entry -> reasons.size() == 1 || !entry.getKey().equals(VariedExercise.SAME))
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse("");
  }
}
