package ringbook.exercises;

/** Where an exercise comes from: the one in the book, or the one with a learner's own numbers. */
public interface ExerciseSource {

  /** Its id, the same for all its variants. */
  String id();

  /** The exercise as the site and the book print it. */
  Exercise own();

  /** Whether learners get numbers of their own. */
  boolean varies();

  /**
   * The exercise with the numbers of one learner; {@link #own} where nothing varies. The same name,
   * however it is written ({@link LearnerName}), always gives the same exercise.
   */
  Exercise forLearner(String learner);

  /**
   * The same exercise as far as judging an answer needs it: words that are only told may not be put
   * in yet, which saves most of the time.
   */
  default Exercise toJudge(String learner) {
    return forLearner(learner);
  }

  /**
   * The question of {@code exercise}, one of its variants, in plain text with the values put in, as
   * far as this source can.
   */
  default String question(Exercise exercise) {
    return exercise.ask().markdown();
  }
}
