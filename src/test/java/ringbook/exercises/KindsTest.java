package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import ringbook.Scenes;
import ringbook.ledger.Formula;
import ringbook.ledger.Reckoning;
import ringbook.problems.Position;

/** Questions with parts: several right, an order, pairs, a fault. */
final class KindsTest {

  /** Options b and d are right. */
  private static final Task SEVERAL =
      new SeveralTask(
          List.of(
              option("one", false),
              option("two", true),
              option("three", false),
              option("four", true)));

  /** The right order is b d a c. */
  private static final Task ORDER =
      new OrderTask(
          List.of(words("First."), words("second"), words("third"), words("fourth")),
          List.of(2, 0, 3, 1),
          words("It is so."));

  /** The right pairs are 1c 2a 3b; d belongs to nothing. */
  private static final Task PAIRS =
      new PairsTask(
          List.of(pair("one", "eins"), pair("two", "zwei"), pair("three", "drei")),
          List.of(words("vier")),
          List.of(1, 2, 0, 3));

  /** The pot: 36 cm tall, 30 cm across, on a table of 74 cm. The line b is wrong: it says 60 cm. */
  private static final Task FAULT = fault(false);

  private static final Task MEND = fault(true);

  private static Task fault(boolean mend) {
    return new FaultTask(
        List.of(
            item("height", "subject.height"),
            item("width", "subject.width"),
            item("table", "place.tableHeight")),
        List.of(new FaultTask.Fault(1, Formula.of("2 * subject.width"), words("It is doubled."))),
        0,
        mend);
  }

  private static FaultTask.Item item(String name, String key) {
    return new FaultTask.Item(words(name), Formula.of(key), key);
  }

  private static ChoiceTask.Option option(String text, boolean right) {
    return new ChoiceTask.Option(words(text), right, words("Reason for " + text + "."));
  }

  private static PairsTask.Pair pair(String left, String right) {
    return new PairsTask.Pair(words(left), words(right), words(left + " is " + right + "."));
  }

  private static Wording words(String text) {
    return new Wording(text, Position.ofFile("test"));
  }

  private static Mark mark(Task task, String answer) {
    Exercise exercise = Asked.exercise(Reckoning.of(Scenes.pot()), task);
    return Marker.mark(exercise, new Answer("Nora", exercise.id(), answer));
  }

  private static Task task(String kind) {
    return switch (kind) {
      case "several" -> SEVERAL;
      case "order" -> ORDER;
      case "pairs" -> PAIRS;
      case "fault" -> FAULT;
      default -> MEND;
    };
  }

  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvFileSource(resources = "kinds.csv", numLinesToSkip = 1)
  void finds_what_a_learner_did(String kind, String answer, String label, String credit) {
    Mark mark = mark(task(kind), answer);
    assertThat(mark.verdict().label()).isEqualTo(label);
    assertThat(mark.credit().text()).isEqualTo(credit);
    assertThat(mark.feedback().happened()).isNotBlank();
    assertThat(mark.feedback().working()).isNotEmpty();
    assertThat(mark.feedback().next().isEmpty()).isEqualTo(label.equals("right"));
  }

  @Test
  void feedback_tells_reasons() {
    assertThat(mark(SEVERAL, "a, b").feedback().happened())
        .isEqualTo("Not a. Reason for one. Also d. Reason for four.");
    assertThat(mark(ORDER, "b a d c").feedback().happened())
        .isEqualTo(
            "Nearly: two steps side by side must change places. Step d (second) comes before step a"
                + " (third).");
    assertThat(mark(ORDER, "c a d b").feedback().happened())
        .startsWith("Two steps side by side must change places 6 times until the order is right.");
    assertThat(mark(PAIRS, "1c 2b 3a").feedback().happened())
        .isEqualTo("1 of the 3 pairs is right. For 2: two is zwei. For 3: three is drei.");
    assertThat(mark(PAIRS, "1c 2a").feedback().happened())
        .isEqualTo("2 of the 3 pairs are right. Some numbers have no letter yet.");
    assertThat(mark(PAIRS, "1a 2a").feedback().happened())
        .isEqualTo(
            "1 of the 3 pairs is right. For 1: one is eins. Some numbers have no letter yet.");
    assertThat(mark(PAIRS, "1b").feedback().happened()).startsWith("None of the 3 pairs is right.");
    assertThat(mark(MEND, "b").feedback().happened())
        .isEqualTo("You found it: It is doubled. Its right value is missing.");
    assertThat(mark(FAULT, "c").feedback().happened())
        .isEqualTo("Line c (table) is right as it stands.");
  }

  /** Kendall's rank correlation as a general-purpose statistics library has it. */
  @Test
  void an_order_is_worth_its_rank_correlation() {
    int n = 5;
    SeededDraw draw = SeededDraw.of("rank correlation");
    double[] right = {0, 1, 2, 3, 4};
    List<Integer> shown = List.of(0, 1, 2, 3, 4);
    List<Wording> steps = new ArrayList<>();
    shown.forEach(i -> steps.add(words("step " + i)));
    OrderTask task = new OrderTask(steps, shown, words("So."));
    for (int i = 0; i < 200; i++) {
      List<Integer> order = draw.order(n);
      double[] ranks = order.stream().mapToDouble(Integer::doubleValue).toArray();
      double tau = new KendallsCorrelation().correlation(right, ranks);
      Verdict verdict = task.judge(Letters.list(order), Reckoning.of(Scenes.pot()));
      double expected = Math.max(0, Math.floor(4 * tau + 1e-9) / 4);
      assertThat(Credit.of(verdict).share()).isCloseTo(expected, within(1e-12));
    }
  }

  @Test
  void a_fault_that_passes_for_right_is_told() {
    FaultTask blurred =
        new FaultTask(
            List.of(
                item("h", "subject.height"),
                item("w", "subject.width"),
                item("t", "place.tableHeight")),
            List.of(new FaultTask.Fault(0, Formula.of("subject.height * 1.01"), words("So."))),
            0,
            false);
    assertThat(blurred.blur(Reckoning.of(Scenes.pot()))).isPresent();
    assertThat(FAULT.blur(Reckoning.of(Scenes.pot()))).isEmpty();
  }

  @Test
  void typical_slips_change_the_formula() {
    assertThat(TypicalSlip.HALF_THE_ANGLE.way("q", "a.b * sin(a.bc) + a.b", "a.b"))
        .contains("(a.b / 2) * sin(a.bc) + (a.b / 2)");
    assertThat(TypicalSlip.FORGOT_TO_ROUND_UP.way("q", "ceil(360deg / aim.step)", ""))
        .contains("floor(360deg / aim.step)");
    assertThat(TypicalSlip.FORGOT_TO_ROUND_UP.way("q", "360deg / aim.step", "")).isEmpty();
    assertThat(TypicalSlip.FROM_THE_FAR_FACE.way("distance.standoff", "", ""))
        .contains("distance.standoff + distance.turningWidth");
    for (TypicalSlip slip : TypicalSlip.values()) {
      assertThat(TypicalSlip.labelled(slip.label())).contains(slip);
      assertThat(slip.says("focal length")).endsWith(".").doesNotContain("NAME");
    }
  }
}
