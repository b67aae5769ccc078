package ringbook.exercises;

/** Marks answers: the one way from a learner's text to a verdict. */
public final class Marker {

  private Marker() {}

  /**
   * The mark of {@code answer}.
   *
   * @throws IllegalArgumentException if the answer belongs to another exercise
   */
  public static Mark mark(Exercise exercise, Answer answer) {
    if (!exercise.id().equals(answer.exercise())) {
      throw new IllegalArgumentException(
          "an answer to '" + answer.exercise() + "' does not answer '" + exercise.id() + "'");
    }
    return new Mark(exercise, answer, verdict(exercise, answer.text()));
  }

  /** What was found in {@code text} as an answer to {@code exercise}; never fails. */
  public static Verdict verdict(Exercise exercise, String text) {
    String written = Plain.trimmed(text);
    return written.isEmpty()
        ? new Verdict.Blank()
        : exercise.task().judge(written, exercise.reckoning());
  }
}
