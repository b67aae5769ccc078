package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.shots.Scene;
import ringbook.units.Unit;

final class LedgerTest {

  private static final Ledger LEDGER = Ledger.standard();

  @Test
  void every_entry_is_complete() {
    List<String> faults = new ArrayList<>();
    for (Quantity quantity : LEDGER.quantities()) {
      if (quantity.name().isEmpty()
          || quantity.meaning().isEmpty()
          || quantity.symbol().isEmpty()
          || quantity.source().isEmpty()) {
        faults.add(quantity.key());
      }
      for (String input : quantity.inputs()) {
        if (LEDGER.find(input).isEmpty()) {
          faults.add(quantity.key() + " uses the unknown " + input);
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void formula_and_method_give_the_same_number(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    for (Quantity quantity : LEDGER.quantities()) {
      if (quantity.formula().isPresent()
          && reckoning.of(quantity.key()) instanceof Outcome.Known known) {
        double byFormula =
            quantity.formula().get().value(key -> ((Outcome.Known) reckoning.of(key)).si());
        if (byFormula != known.si()) {
          assertThat(byFormula)
              .as(quantity.key())
              .isCloseTo(known.si(), within(1e-9 * Math.abs(known.si()) + 1e-15));
        }
      }
    }
  }

  @Test
  void an_entry_without_a_range_is_refused() {
    Entry bare = Entry.of("ring.new", "new").symbol("x", Unit.METRE).formula("1m");
    assertThatIllegalStateException()
        .isThrownBy(() -> bare.by(r -> 1))
        .withMessage("ring.new states no range");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void every_number_lies_in_its_range(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    for (Quantity quantity : LEDGER.quantities()) {
      if (reckoning.of(quantity.key()) instanceof Outcome.Known known) {
        assertThat(quantity.range().holds(known.si()))
            .as("%s is %s: %s", quantity.key(), quantity.range().text(quantity.unit()), known.si())
            .isTrue();
      }
    }
  }

  @Test
  void methods_read_what_the_formula_says() {
    List<Scene> scenes =
        List.of(
            Scenes.pot(),
            Scenes.potWithLensCamera(),
            Scenes.random(1),
            Scenes.random(2),
            Scenes.random(3));
    for (Quantity quantity : LEDGER.quantities()) {
      Set<String> read = new TreeSet<>();
      for (Scene scene : scenes) {
        Reckoning reckoning = Reckoning.of(scene);
        reckoning.of(quantity.key());
        read.addAll(reckoning.readsOf(quantity.key()));
      }
      assertThat(new TreeSet<>(quantity.inputs()))
          .as("inputs of " + quantity.key())
          .containsAll(read);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void every_scene_gives_a_number_or_a_reason(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    for (String key : LEDGER.keys()) {
      assertThatCode(() -> reckoning.of(key)).as(key).doesNotThrowAnyException();
      if (reckoning.of(key) instanceof Outcome.Refused refused) {
        assertThat(refused.reason()).as(key).isNotEmpty();
      }
    }
  }
}
