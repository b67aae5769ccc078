package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.ledger.Formula;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.problems.Position;

/**
 * Who goes on with printed numbers. The pot is 36.44 cm tall here; with the digits of a distance it
 * prints as 36.4 cm.
 */
final class PrintedNumbersTest {

  private static final Reckoning POT =
      Reckoning.of(Scenes.with(Scenes.pot(), "subject.height", "36.44"));

  private static final String LIKE = "distance.standoff";

  private final PrintedNumbers printed = new PrintedNumbers(POT);

  private void print(String... keys) {
    for (String key : keys) {
      boolean height = key.equals("subject.height");
      printed.add(key, POT.ledger().get(height ? LIKE : key));
    }
  }

  private Spread of(String formula) {
    return printed.of(Formula.of(formula));
  }

  private static double si(String key) {
    return ((Outcome.Known) POT.of(key)).si();
  }

  /** As somebody reads it from the page, in metres. */
  private static double readCentimetres(String key) {
    return Double.parseDouble(POT.text(key).replace("\u00a0cm", "")) / 100;
  }

  private static void assertSpread(Spread spread, double one, double... others) {
    double low = one;
    double high = one;
    for (double other : others) {
      low = Math.min(low, other);
      high = Math.max(high, other);
    }
    assertThat(spread.low()).isCloseTo(low, within(1e-12));
    assertThat(spread.high()).isCloseTo(high, within(1e-12));
  }

  @Test
  void a_printed_number_is_put_in_as_printed_and_as_it_is() {
    print("subject.height");
    assertSpread(of("2 * subject.height"), 0.728, 0.7288);
    assertSpread(of("1m - subject.height"), 0.636, 0.6356);
  }

  @Test
  void what_is_not_printed_is_what_it_is() {
    print("subject.width");
    assertThat(of("2 * subject.height").isPoint()).isTrue();
  }

  @Test
  void a_number_that_is_not_printed_is_worked_out_from_those_that_are() {
    print("distance.standoff", "distance.turningWidth");
    assertThat(readCentimetres("distance.standoff")).isNotEqualTo(si("distance.standoff"));
    double far = readCentimetres("distance.standoff") + 0.3;
    assertSpread(of("2 * distance.far"), 2 * far, 2 * si("distance.far"));
  }

  @Test
  void a_printed_number_may_also_be_worked_out_anew() {
    print("distance.far");
    double shown = readCentimetres("distance.far");
    assertSpread(of("10 * distance.far"), 10 * shown, 10 * si("distance.far"));
    PrintedNumbers more = new PrintedNumbers(POT);
    for (String key : List.of("distance.far", "distance.standoff", "distance.turningWidth")) {
      more.add(key, POT.ledger().get(key));
    }
    more.add("distance.standoff", POT.ledger().get("scale.longest")); // printed twice
    double far = readCentimetres("distance.standoff") + 0.3;
    assertSpread(
        more.of(Formula.of("10 * distance.far")), 10 * shown, 10 * far, 10 * si("distance.far"));
  }

  /** Two rounded factors, each at either end: the product has four corners. */
  @Test
  void roundings_add_up() {
    print("subject.height", "distance.standoff");
    double u = readCentimetres("distance.standoff");
    assertSpread(
        of("subject.height / distance.standoff"),
        0.364 / u,
        0.3644 / u,
        0.364 / si("distance.standoff"),
        0.3644 / si("distance.standoff"));
  }

  @Test
  void somebody_may_go_back_from_a_printed_result() {
    printed.add(Formula.of("2 * subject.height"), POT.ledger().get(LIKE));
    assertSpread(printed.back("subject.height"), 0.3644, 0.3645); // 72.9 cm are printed
    assertThat(printed.back("subject.width").isPoint()).isTrue();
    print("handover.storage");
    double all = Double.parseDouble(POT.text("handover.storage").replace("\u00a0GB", "")) * 1e9;
    double one = si("job.storage") / si("handover.storage") * all;
    assertThat(printed.back("job.storage").with(one)).isEqualTo(printed.back("job.storage"));
    assertThat(printed.back("job.storage").isPoint()).isFalse();
  }

  @Test
  void nobody_goes_back_where_something_else_is_missing() {
    print("distance.far");
    assertThat(printed.back("distance.standoff").isPoint()).isTrue();
    print("distance.turningWidth");
    double back = readCentimetres("distance.far") - 0.3;
    assertSpread(printed.back("distance.standoff"), back, si("distance.standoff"));
  }

  /** 2.7 times 36.44 is 98.39, and 2.7 times 36.4 is 98.28; one step of the last digit is 0.1. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "b 98.4 cm, right",
    "b 98.28 cm, right",
    "b 98.19 cm, right",
    "b 98.48 cm, right",
    "b 98.17 cm, 'found, value wrong'",
    "b 98.5 cm, 'found, value wrong'",
    "b 97 cm, 'found, value wrong'",
  })
  void the_right_value_may_be_worked_out_from_the_table(String answer, String label) {
    FaultTask task = fault("subject.height", "2.7 * subject.height", "5 * subject.height");
    assertThat(task.blur(POT)).isEmpty();
    assertThat(task.judge(answer, POT).label()).isEqualTo(label);
  }

  @Test
  void a_table_without_the_rounded_number_forgives_nothing_more() {
    FaultTask task = fault("subject.width", "2.7 * subject.height", "5 * subject.height");
    assertThat(task.judge("b 98.3 cm", POT).label()).isEqualTo("right");
    assertThat(task.judge("b 98.28 cm", POT).label()).isEqualTo("found, value wrong");
  }

  /** 40.449 cm print as 40.4: 2.43 times as much is 98.29, or 98.17 from print. */
  @Test
  void the_question_tells_numbers_too() {
    Reckoning near = Reckoning.of(Scenes.with(Scenes.pot(), "subject.width", "29.977"));
    assertThat(near.text("distance.standoff")).isEqualTo("40.4\u00a0cm");
    FaultTask task = fault("subject.width", "2.43 * distance.standoff", "5 * subject.height");
    Exercise open = Asked.exercise(near, task);
    Exercise told = Asked.asking(open, "The lens is ${distance.standoff} from the pot.");
    assertThat(Marker.verdict(open, "b 98.17 cm").label()).isEqualTo("found, value wrong");
    assertThat(Marker.verdict(told, "b 98.17 cm")).isEqualTo(new Verdict.Right());
  }

  /** 98.60 and 98.40 are apart, and so are 99 and 98; from print the right value is 98.49. */
  @Test
  void a_wrong_value_that_the_rounding_would_hide_is_told() {
    String right = "2.7058 * subject.height";
    String wrong = "2.7004 * subject.height";
    assertThat(fault("subject.width", right, wrong).blur(POT)).isEmpty();
    assertThat(fault("subject.height", right, wrong).blur(POT))
        .contains("fault 1 cannot be seen: 98.4\u00a0cm passes for right");
  }

  @Test
  void a_stated_tolerance_holds_for_the_right_value() {
    FaultTask strict = fault("subject.height", "2.7 * subject.height", "5 * subject.height");
    FaultTask wide =
        new FaultTask(strict.items(), strict.faults(), 0, true, OptionalDouble.of(0.02), List.of());
    assertThat(strict.judge("b 96.4 cm", POT).label()).isEqualTo("found, value wrong");
    assertThat(wide.judge("b 96.4 cm", POT)).isEqualTo(new Verdict.Right());
    assertThat(wide.judge("b 96.2 cm", POT).label()).isEqualTo("found, value wrong");
    FaultTask near = fault("subject.height", "2.7 * subject.height", "2.66 * subject.height");
    FaultTask blurred =
        new FaultTask(near.items(), near.faults(), 0, true, OptionalDouble.of(0.02), List.of());
    assertThat(near.blur(POT)).isEmpty();
    assertThat(blurred.blur(POT)).isPresent();
  }

  /** 36.44 by 36.4 rounds up to 2, 36.4 by 36.4 to 1: who goes by the page is right. */
  @Test
  void a_count_may_jump_with_the_rounding() {
    FaultTask task =
        new FaultTask(
            List.of(
                item("height", "subject.height", LIKE),
                item("boards", "ceil(subject.height / 36.4mm) + 10", "ring.photos"),
                item("table", "place.tableHeight", "place.tableHeight")),
            List.of(new FaultTask.Fault(1, Formula.of("40"), words("So."))),
            0,
            true);
    assertThat(task.blur(POT)).isEmpty();
    assertThat(task.judge("b 20", POT)).isEqualTo(new Verdict.Right());
    assertThat(task.judge("b 21", POT)).isEqualTo(new Verdict.Right());
    assertThat(task.judge("b 19", POT).label()).isEqualTo("found, value wrong");
    assertThat(task.judge("b 22", POT).label()).isEqualTo("found, value wrong");
  }

  private static FaultTask fault(String told, String right, String wrong) {
    return new FaultTask(
        List.of(
            item("told", told, LIKE),
            item("asked", right, LIKE),
            item("table", "place.tableHeight", "place.tableHeight")),
        List.of(new FaultTask.Fault(1, Formula.of(wrong), words("So."))),
        0,
        true);
  }

  private static FaultTask.Item item(String name, String value, String like) {
    return new FaultTask.Item(words(name), Formula.of(value), like);
  }

  private static Wording words(String text) {
    return new Wording(text, Position.ofFile("test"));
  }
}
