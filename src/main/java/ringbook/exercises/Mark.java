package ringbook.exercises;

/**
 * An answer with what it is worth.
 *
 * @param exercise the exercise it answers
 * @param answer the answer
 * @param verdict what was found
 */
public record Mark(Exercise exercise, Answer answer, Verdict verdict) {

  /** What it is worth. */
  public Credit credit() {
    return verdict instanceof Verdict.SlipMade slip
            && exercise.task() instanceof NumberTask number
            && slip.index() < number.slips().size()
        ? number.slips().get(slip.index()).worth()
        : Credit.of(verdict);
  }

  /** What to tell the learner. */
  public Feedback feedback() {
    return Feedback.of(this);
  }
}
