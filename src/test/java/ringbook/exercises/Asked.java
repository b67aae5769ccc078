package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.ledger.Formula;
import ringbook.ledger.Reckoning;
import ringbook.problems.Position;
import ringbook.shots.Scene;

/** Exercises for tests. */
public final class Asked {

  private static final Position NOWHERE = Position.ofFile("test");

  private Asked() {}

  /** Asks for {@code quantity} on {@code scene}, judged by the ledger's rounding. */
  public static Exercise number(Scene scene, String quantity) {
    return number(scene, quantity, OptionalDouble.empty());
  }

  /** Asks for {@code quantity} on {@code scene} with a tolerance stated. */
  public static Exercise number(Scene scene, String quantity, OptionalDouble tolerance) {
    return exercise(Reckoning.of(scene), new NumberTask(quantity, tolerance));
  }

  /** A choice; the right option's text begins with {@code +}. */
  public static Exercise choice(Scene scene, String... texts) {
    List<ChoiceTask.Option> options =
        List.of(texts).stream()
            .map(
                text ->
                    new ChoiceTask.Option(
                        words(text.startsWith("+") ? text.substring(1) : text),
                        text.startsWith("+"),
                        words("Reason for " + text + ".")))
            .toList();
    return exercise(Reckoning.of(scene), new ChoiceTask(options));
  }

  /** Asks for {@code quantity} with one slip foreseen. */
  static Exercise withSlips(Scene scene, String quantity, String... ways) {
    List<Slip> slips =
        List.of(ways).stream()
            .map(way -> new Slip(Formula.of(way), words("You took " + way + ".")))
            .toList();
    return exercise(Reckoning.of(scene), new NumberTask(quantity, OptionalDouble.empty(), slips));
  }

  /** Asks for {@code quantity} where the scene has been reckoned already. */
  static Exercise number(Reckoning reckoning, String quantity) {
    return exercise(reckoning, new NumberTask(quantity, OptionalDouble.empty()));
  }

  /** The same exercise with another question. */
  static Exercise asking(Exercise exercise, String question) {
    return new Exercise(
        exercise.id(),
        exercise.title(),
        words(question),
        exercise.hint(),
        exercise.reckoning(),
        exercise.task());
  }

  static Exercise exercise(Reckoning reckoning, Task task) {
    return new Exercise("asked", "Asked", words("How much?"), Optional.empty(), reckoning, task);
  }

  private static Wording words(String markdown) {
    return new Wording(markdown, NOWHERE);
  }
}
