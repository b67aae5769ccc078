package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Dimension;
import ringbook.units.Numbers;

/** Laws that hold for every entry of the ledger on every scene. */
final class MarkerPropertiesTest {

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void what_the_course_prints_is_right(long seed) {
    for (Exercise exercise : exercises(seed)) {
      assertThat(Marker.verdict(exercise, exercise.answerText()))
          .as("%s: %s", key(exercise), exercise.answerText())
          .isEqualTo(new Verdict.Right());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void twice_the_true_value_is_wrong_unless_the_course_prints_0(long seed) {
    for (Exercise exercise : exercises(seed)) {
      NumberTask task = (NumberTask) exercise.task();
      Quantity quantity = task.entry(exercise.reckoning());
      double twice = 2 * quantity.unit().fromSi(task.truth(exercise.reckoning()));
      boolean printsZero = quantity.rounding().slack(twice / 2) > Math.abs(twice / 2);
      if (!printsZero && Math.abs(twice) < 1e9) {
        String symbol = quantity.unit().symbol();
        String number = Numbers.significant(twice, 6);
        String answer = symbol.equals("f/") ? symbol + number : number + " " + symbol;
        assertThat(Marker.verdict(exercise, answer))
            .as("%s: %s for %s", key(exercise), answer, exercise.answerText())
            .isNotEqualTo(new Verdict.Right());
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void every_text_gets_a_verdict_and_feedback(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (Exercise exercise : exercises(seed)) {
      Answer answer = new Answer("", exercise.id(), scribble(random));
      Mark mark = Marker.mark(exercise, answer);
      assertThat(mark.feedback().happened()).as(answer.text()).isNotEmpty();
    }
  }

  private static String key(Exercise exercise) {
    return ((NumberTask) exercise.task()).quantity();
  }

  private static String scribble(SplittableRandom random) {
    String signs = "0123456789.,-+/eE ∞'\"°µcmfk²%\u00a0\u001b\ud83d()[]{}$abn";
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(14); i > 0; i--) {
      text.append(signs.charAt(random.nextInt(signs.length())));
    }
    return text.toString();
  }

  /** One exercise for every entry that has a number on a random scene. */
  private static List<Exercise> exercises(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    List<Exercise> exercises = new ArrayList<>();
    for (Quantity quantity : reckoning.ledger().quantities()) {
      if (reckoning.of(quantity.key()) instanceof Outcome.Known
          && quantity.unit().dimension() != Dimension.YES_NO) {
        exercises.add(Asked.number(reckoning, quantity.key()));
      }
    }
    return exercises;
  }
}
