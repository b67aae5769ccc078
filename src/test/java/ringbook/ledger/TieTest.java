package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;
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

  /**
   * The demo's phone: 4.8 mm and pixels of 0.0016 mm. A detail of d mm on three pixels is had up to
   * 4.8 (1 + d / 0.0048) mm, which is 100 d + 0.48 cm; the near face is 30 cm nearer.
   */
  @Test
  void a_lens_that_just_focuses_near_enough_does() {
    for (BigDecimal detail = new BigDecimal("0.75"); detail.doubleValue() < 1.5; ) {
      BigDecimal far = detail.movePointRight(2).add(new BigDecimal("0.48"));
      Reckoning r = closestFocus(far.subtract(new BigDecimal(30)), "aim.detail", detail);
      assertThat(r.yes("distance.fine")).as("%s mm", detail).isTrue();
      assertThat(r.of("distance.largest")).isInstanceOf(Outcome.Known.class);
      Reckoning strip = closestFocus(far, "aim.detail", detail);
      assertThat(strip.of("strip.standoff")).isInstanceOf(Outcome.Known.class);
      detail = detail.add(new BigDecimal("0.01"));
    }
  }

  @Test
  void a_lens_that_focuses_hardly_too_far_off_does_not() {
    BigDecimal detail = new BigDecimal("0.75");
    Reckoning r = closestFocus(new BigDecimal("45.481"), "aim.detail", detail); // 45.48 would do
    assertThat(r.yes("distance.fine")).isFalse();
    assertThat(r.of("distance.largest")).isInstanceOf(Outcome.Refused.class);
    Reckoning strip = closestFocus(new BigDecimal("75.481"), "aim.detail", detail);
    assertThat(strip.of("strip.standoff")).isInstanceOf(Outcome.Refused.class);
  }

  /** At 60° a slope takes twice as much to a pixel: twice the detail from the same place. */
  @Test
  void a_slope_that_is_just_sampled_finely_enough_is() {
    for (BigDecimal half = new BigDecimal("0.75"); half.doubleValue() < 1.5; ) {
      BigDecimal closest = half.movePointRight(2).subtract(new BigDecimal("29.52"));
      Reckoning r = closestFocus(closest, "aim.detail", half.add(half));
      assertThat(r.yes("distance.fineSlope")).as("%s mm", half).isTrue();
      half = half.add(new BigDecimal("0.01"));
    }
  }

  /** The width of 30 cm fills 4.8 mm to a share q at 4.8 (1 + 300 / (4.8 q)) mm. */
  @Test
  void a_lens_that_focuses_where_the_picture_wants_it_holds_nobody_off() {
    String[][] rows = {
      {"75", "40.48"}, {"60", "50.48"}, {"50", "60.48"}, {"40", "75.48"},
      {"80", "37.98"}, {"48", "62.98"}, {"96", "31.73"}, {"64", "47.355"}
    };
    for (String[] row : rows) {
      BigDecimal closest = new BigDecimal(row[1]);
      BigDecimal fill = new BigDecimal(row[0]);
      assertThat(closestFocus(closest, "aim.fill", fill).yes("distance.heldOff")).isFalse();
      BigDecimal farther = closest.add(new BigDecimal("0.001"));
      assertThat(closestFocus(farther, "aim.fill", fill).yes("distance.heldOff")).isTrue();
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void whoever_stands_back_as_told_finds_the_window_open(long seed) {
    Scene scene = Scenes.random(seed);
    if (Reckoning.of(scene).of("sharp.standBack") instanceof Outcome.Known back) {
      SceneDraft draft = SceneDraft.of(scene);
      NumberField closest = (NumberField) SceneField.byKey("kit.closestFocus").orElseThrow();
      draft.change(closest, Math.max(back.si(), scene.kit().lens().closestFocus().metres()));
      if (draft.faults().isEmpty()) {
        assertThat(Reckoning.of(draft.build()).yes("sharp.window")).isTrue();
      }
    }
  }

  private static Reckoning closestFocus(BigDecimal centimetres, String key, BigDecimal value) {
    return Reckoning.of(
        Scenes.with(
            Scenes.pot(),
            "kit.closestFocus",
            centimetres.toPlainString(),
            key,
            value.toPlainString()));
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
