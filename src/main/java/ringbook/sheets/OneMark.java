package ringbook.sheets;

import ringbook.exercises.Credit;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;

/** A mark and where it comes from. */
public final class OneMark {

  private final int exercise;
  private final Mark mark;
  private final boolean ownNumbers;
  private final ExerciseSource source;
  private Mark worded;

  OneMark(int exercise, Mark mark, boolean ownNumbers, ExerciseSource source) {
    this.exercise = exercise;
    this.mark = mark;
    this.ownNumbers = ownNumbers;
    this.source = source;
  }

  /** The place of the exercise in the course, from 0. */
  public int exercise() {
    return exercise;
  }

  /** The mark. Of an exercise with a learner's own numbers, the words are not put in yet. */
  public Mark mark() {
    return mark;
  }

  /** Whether it answers the learner's own numbers, or else those of the course. */
  public boolean ownNumbers() {
    return ownNumbers;
  }

  /** The mark with all words put in; that takes long, so it is done only when asked for. */
  public Mark worded() {
    if (worded == null) {
      worded =
          ownNumbers
              ? new Mark(source.forLearner(mark.answer().learner()), mark.answer(), mark.verdict())
              : mark;
    }
    return worded;
  }

  /** What to tell the learner. */
  public Feedback feedback() {
    return worded().feedback();
  }

  /** Whether something was handed in. */
  public boolean answered() {
    return !mark.answer().text().isEmpty();
  }

  /** Whether it is worth the whole point. */
  public boolean right() {
    return mark.credit().equals(Credit.FULL);
  }
}
