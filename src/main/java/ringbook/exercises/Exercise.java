package ringbook.exercises;

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
    task.check(reckoning);
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
   * The way to the answer of a number question: first whatever it needs that the question does not
   * tell, last what it asks for. Empty for a choice.
   */
  public List<Working> workings() {
    return task.show(
        new Task.Cases<List<Working>>() {
          @Override
          public List<Working> number(NumberTask number) {
            return Workings.of(Exercise.this, number.quantity());
          }

          @Override
          public List<Working> choice(ChoiceTask choice) {
            return List.of();
          }
        });
  }

  /** The same exercise with another task, such as the same one in other words. */
  public Exercise with(Task other) {
    return new Exercise(id, title, ask, hint, reckoning, other);
  }
}
