package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.shots.Scene;
import ringbook.units.Decimal;

/** A formula shown with its numbers comes to the result that is shown behind it. */
final class PutInTest {

  private int formulas;

  @Test
  void the_numbers_of_the_group_come_to_their_results() {
    assertThat(wrong(Scenes.pot())).isEmpty();
    assertThat(formulas).isGreaterThan(150);
  }

  @Test
  void a_result_that_rounded_numbers_would_miss_gets_more_of_their_digits() {
    String line = Working.of(Reckoning.of(Scenes.pot()), "job.day").numbers().get().text();
    String result = Reckoning.of(Scenes.pot()).text("job.day");
    assertThat(line + " = " + result).isEqualTo("t_d = 3 · 20.4\u00a0min = 61\u00a0min");
  }

  /** The rest are numbers that cancel out or have more digits before the point than are printed. */
  @Test
  void nearly_all_numbers_of_any_scene_come_to_their_results() {
    int missed = 0;
    for (long seed = 0; seed < 100; seed++) {
      missed += wrong(Scenes.random(seed)).size();
    }
    assertThat((double) missed / formulas).isLessThan(0.015);
  }

  private List<String> wrong(Scene scene) {
    List<String> wrong = new ArrayList<>();
    Reckoning reckoning = Reckoning.of(scene);
    for (Quantity quantity : reckoning.ledger().quantities()) {
      Working working = Working.of(reckoning, quantity.key());
      if (working.numbers().isPresent()
          && reckoning.of(quantity.key()) instanceof Outcome.Known result) {
        formulas++;
        String found = quantity.number(asPrinted(reckoning, quantity));
        if (!found.equals(quantity.number(result.si()))) {
          wrong.add(working.numbers().get().text() + " is " + found);
        }
      }
    }
    return wrong;
  }

  private static double asPrinted(Reckoning reckoning, Quantity quantity) {
    Formula formula = quantity.formula().orElseThrow();
    PutIn in = new PutIn(reckoning, quantity, formula);
    return formula.value(
        key -> {
          Quantity input = reckoning.ledger().get(key);
          OptionalDouble read = Decimal.parse(in.number(key));
          return input.rounding().isPlain() && read.isPresent()
              ? input.unit().toSi(read.getAsDouble())
              : ((Outcome.Known) reckoning.of(key)).si();
        });
  }
}
