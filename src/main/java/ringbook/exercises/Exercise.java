package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;

/**
 * A question with the scene it is asked about.
 *
 * @param id as in answer sheets, such as {@code distance-owl}; unique in the course
 * @param title a few words, plain text
 * @param ask the question
 * @param hint a nudge towards the answer, where the author gave one
 * @param reckoning the quantities of the exercise's own scene
 * @param task what is asked for
 */
public record Exercise(
    String id, String title, Wording ask, Optional<Wording> hint, Reckoning reckoning, Task task) {

  /** The exercise, once it is certain that it can be answered. */
  public Exercise {
    task = task.told(ask.keys());
    task.check(reckoning);
  }

  /** The quantities as its words tell them: as finely as sums need it, which a plan does not. */
  public Reckoning asked() {
    return task instanceof PlanTask ? reckoning : reckoning.forQuestions();
  }

  /** What an answer looks like, for people: {@code a length, with its unit}. */
  public String answerHint() {
    return task.answerHint(reckoning);
  }

  /** The right answer in a few words, as the author's wording has it. */
  public String answerText() {
    return task.answerText(reckoning);
  }

  /**
   * The way to a number that is asked for: first whatever it needs that the question does not tell,
   * last the number itself. Empty where nothing is to be worked out.
   */
  public List<Working> workings() {
    return task.worked().map(key -> Workings.of(this, key)).orElse(List.of());
  }

  /** What is listed below the question, in plain lines: options, steps, pairs or items. */
  public List<String> listed() {
    return task.show(new ListedLines(this));
  }

  /** How the right answer comes about, in plain lines. */
  public List<String> solution() {
    return task.show(new SolutionLines(this));
  }

  /** What may be the keys of quantities that its words show. */
  List<String> keys() {
    List<String> keys = new ArrayList<>(ask.keys());
    hint.ifPresent(words -> keys.addAll(words.keys()));
    task.worded(
        words -> {
          keys.addAll(words.keys());
          return words;
        });
    return keys;
  }

  /** The same exercise over another scene, or over its own with lengths told otherwise. */
  public Exercise on(Reckoning other) {
    return new Exercise(id, title, ask, hint, other, task);
  }

  /** The same exercise with another task, such as the same one in other words. */
  public Exercise with(Task other) {
    return new Exercise(id, title, ask, hint, reckoning, other);
  }
}
