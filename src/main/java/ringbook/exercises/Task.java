package ringbook.exercises;

import java.util.function.UnaryOperator;
import ringbook.ledger.Reckoning;

/**
 * What an exercise asks for.
 *
 * <p>A new kind (several right options, an order, pairs, a fault to find, a plan to build) is a new
 * record here with its marking, a case in {@link Cases} and its keys in the reader of exercise
 * files; answers stay text, so answer sheets do not change.
 */
public sealed interface Task permits NumberTask, ChoiceTask {

  /** What to do with each kind; a new kind does not compile until every use handles it. */
  interface Cases<T> {
    /** A number with its unit. */
    T number(NumberTask task);

    /** One of a few options. */
    T choice(ChoiceTask task);
  }

  /** Hands this task to the case it belongs to. */
  <T> T show(Cases<T> cases);

  /**
   * Makes sure that it can be answered.
   *
   * @throws IllegalArgumentException otherwise
   */
  void check(Reckoning reckoning);

  /** See {@link Exercise#answerHint}. */
  String answerHint(Reckoning reckoning);

  /** See {@link Exercise#answerText}. */
  String answerText(Reckoning reckoning);

  /** The same task with every wording changed. */
  Task worded(UnaryOperator<Wording> change);

  /** What {@code written}, which is not blank, is worth as an answer. */
  Verdict judge(String written, Reckoning reckoning);
}
