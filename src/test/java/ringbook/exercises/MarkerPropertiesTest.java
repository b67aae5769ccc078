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
  void every_entry_can_be_asked(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (Exercise exercise : exercises(seed)) {
      whatTheCoursePrintsIsRight(exercise);
      twiceTheTrueValueIsWrongUnlessTheCoursePrints0(exercise);
      everyTextGetsAVerdictAndFeedback(exercise, scribble(random));
    }
  }

  private static void whatTheCoursePrintsIsRight(Exercise exercise) {
    assertThat(Marker.verdict(exercise, exercise.answerText()))
        .as("%s: %s", key(exercise), exercise.answerText())
        .isEqualTo(new Verdict.Right());
  }

  private static void twiceTheTrueValueIsWrongUnlessTheCoursePrints0(Exercise exercise) {
    NumberTask task = (NumberTask) exercise.task();
    Quantity quantity = task.entry(exercise.reckoning());
    double truth = quantity.unit().fromSi(task.truth(exercise.reckoning()));
    boolean printsZero = quantity.rounding().slack(truth) > Math.abs(truth);
    if (!printsZero && Math.abs(truth) < 1e9) {
      String symbol = quantity.unit().symbol();
      String number = Numbers.significant(2 * truth, 6);
      String answer = symbol.equals("f/") ? symbol + number : number + " " + symbol;
      assertThat(Marker.verdict(exercise, answer))
          .as("%s: %s for %s", key(exercise), answer, exercise.answerText())
          .isNotEqualTo(new Verdict.Right());
    }
  }

  private static void everyTextGetsAVerdictAndFeedback(Exercise exercise, String text) {
    Mark mark = Marker.mark(exercise, new Answer("", exercise.id(), text));
    assertThat(mark.verdict().label()).as(text).isNotEmpty();
    assertThat(mark.verdict().show(new FeedbackWords(mark))).as(text).isNotEmpty();
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
