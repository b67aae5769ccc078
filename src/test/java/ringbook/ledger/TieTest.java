package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.units.Whole;

/** Numbers that are equal on paper and a hair apart in binary count as equal. */
final class TieTest {

  @Test
  void seven_turns_of_a_forty_second_are_sixty_degrees() {
    double seven = 7 * (2 * Math.PI / 42);
    assertThat(seven).isGreaterThan(Math.PI / 3); // a hair above in binary
    assertThat(Formula.of("7 * (2 * pi / 42) <= pi / 3").value(key -> 0)).isEqualTo(1);
    assertThat(Formula.of("pi / 3 >= 7 * (2 * pi / 42)").value(key -> 0)).isEqualTo(1);
    assertThat(Formula.of("7 * (2 * pi / 42) > pi / 3").value(key -> 0)).isZero();
  }

  @Test
  void a_turn_at_its_limit_keeps_to_it() {
    for (String step : new String[] {"15", "2.88", "1.44", "14.4"}) {
      Reckoning r =
          Reckoning.of(Scenes.with(Scenes.pot(), "aim.step", step, "aim.stepLimit", step));
      assertThat(r.yes("room.closes")).as(step).isTrue();
    }
  }

  @Test
  void forgives_a_hair_and_no_more() {
    assertThat(Whole.atMost(1 + 1e-12, 1)).isTrue();
    assertThat(Whole.atMost(1 + 1e-6, 1)).isFalse();
    assertThat(Whole.atMost(Double.POSITIVE_INFINITY, 1)).isFalse();
    assertThat(Whole.atMost(1, Double.POSITIVE_INFINITY)).isTrue();
    assertThat(Whole.atMost(-1, -1 - 1e-12)).isTrue();
  }
}
