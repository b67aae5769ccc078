package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import ringbook.ledger.Reckoning;

/**
 * What an exercise asks for.
 *
 * <p>A new kind is a new class here with its marking, a case in {@link Cases} and its keys in the
 * reader of exercise files; answers stay text, so answer sheets do not change.
 */
public sealed interface Task
    permits NumberTask, ChoiceTask, SeveralTask, OrderTask, PairsTask, FaultTask, PlanTask {

  /** What to do with each kind; a new kind does not compile until every use handles it. */
  interface Cases<T> {
    /** A number with its unit. */
    T number(NumberTask task);

    /** One of a few options. */
    T choice(ChoiceTask task);

    /** All options that are right. */
    T several(SeveralTask task);

    /** The order of steps. */
    T order(OrderTask task);

    /** What belongs together. */
    T pairs(PairsTask task);

    /** What is wrong in a table. */
    T fault(FaultTask task);

    /** Which photographs to take. */
    T plan(PlanTask task);
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

  /** The key of the quantity that is asked for, where a number is. */
  default Optional<String> asked() {
    return Optional.empty();
  }

  /** The key of the quantity whose working is the solution or a part of it, where there is one. */
  default Optional<String> worked() {
    return asked();
  }

  /** The keys of quantities whose right values are listed below the question. */
  default List<String> listed() {
    return List.of();
  }

  /** How far an answer may be off, as a share; empty for what the ledger's rounding gives. */
  default OptionalDouble tolerance() {
    return OptionalDouble.empty();
  }

  /**
   * Why answers that mean different things cannot be told apart on this scene; empty if they can.
   */
  default Optional<String> blur(Reckoning reckoning) {
    return Optional.empty();
  }

  /**
   * Why it cannot be shown on this scene that there is a right answer, in words; empty where there
   * is one. Takes longer than {@link #check} and {@link #blur}.
   */
  default Optional<String> unsolved(Reckoning reckoning) {
    return Optional.empty();
  }

  /** The same task, once it is known which keys of quantities the question may print. */
  default Task told(List<String> keys) {
    return this;
  }

  /**
   * The same task with what is listed in an order drawn.
   *
   * @param book whether it is for the book, where the author's order stays if it gives nothing away
   */
  default Task reordered(SeededDraw draw, boolean book) {
    return this;
  }

  /** What {@code written}, which is not blank, is worth as an answer. */
  Verdict judge(String written, Reckoning reckoning);
}
