package ringbook.exercises;

import ringbook.ledger.Reckoning;

/**
 * Marks answers to one exercise: the one way from a learner's text to a verdict. Whoever marks many
 * answers to the same exercise keeps its marker, so that what all of them need is worked out once.
 * Not for use by several threads.
 */
public final class Marker {

  private final Exercise exercise;
  private final Judge judge;

  private Marker(Exercise exercise, Judge judge) {
    this.exercise = exercise;
    this.judge = judge;
  }

  @FunctionalInterface
  private interface Judge {
    Verdict judge(String written);
  }

  /** A marker of answers to {@code exercise}. */
  public static Marker of(Exercise exercise) {
    Reckoning reckoning = exercise.reckoning();
    return new Marker(
        exercise,
        exercise.task() instanceof NumberTask number
            ? new NumberJudge(number, reckoning)::judge
            : written -> exercise.task().judge(written, reckoning));
  }

  /**
   * The mark of {@code answer}.
   *
   * @throws IllegalArgumentException if the answer belongs to another exercise
   */
  public static Mark mark(Exercise exercise, Answer answer) {
    return of(exercise).mark(answer);
  }

  /**
   * The mark of {@code answer}.
   *
   * @throws IllegalArgumentException if the answer belongs to another exercise
   */
  public Mark mark(Answer answer) {
    if (!exercise.id().equals(answer.exercise())) {
      throw new IllegalArgumentException(
          "an answer to '" + answer.exercise() + "' does not answer '" + exercise.id() + "'");
    }
    return new Mark(exercise, answer, verdict(answer.text()));
  }

  /** What was found in {@code text} as an answer to {@code exercise}; never fails. */
  public static Verdict verdict(Exercise exercise, String text) {
    return of(exercise).verdict(text);
  }

  /** What was found in {@code text} as an answer to the exercise; never fails. */
  public Verdict verdict(String text) {
    String written = Plain.trimmed(text);
    return written.isEmpty() ? new Verdict.Blank() : judge.judge(written);
  }
}
