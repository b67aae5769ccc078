package ringbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.Place;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.units.Length;

/**
 * The judgement of an object against cases worked out by hand. What makes an object hard (shine,
 * glass, sameness, movement, thin parts) is common practice, no source.
 */
final class FitnessTest {

  private static Reckoning pot(String... changes) {
    return Reckoning.of(Scenes.with(Scenes.pot(), changes));
  }

  private static boolean holds(Reckoning reckoning, String key) {
    return reckoning.si(key) == 1;
  }

  @Test
  void the_pot_is_fit_and_a_brass_bell_or_a_glass_jar_is_not() {
    assertThat(holds(pot(), "fitness.fit")).isTrue();
    Reckoning bell = pot("subject.surface", "glossy");
    assertThat(holds(bell, "fitness.matt")).isFalse();
    assertThat(holds(bell, "fitness.opaque")).isTrue();
    assertThat(holds(bell, "fitness.fit")).isFalse();
    Reckoning jar = pot("subject.surface", "clear");
    assertThat(holds(jar, "fitness.opaque")).isFalse();
    assertThat(holds(jar, "fitness.fit")).isFalse();
    assertThat(jar.of("fitness.stepAdvised")).isInstanceOf(Outcome.Refused.class);
  }

  @Test
  void a_square_post_looks_the_same_from_four_sides() {
    assertThat(holds(pot("subject.alike", "4"), "fitness.distinct")).isFalse();
    assertThat(holds(pot(), "fitness.distinct")).isTrue();
  }

  @Test
  void a_leaf_that_moves_more_than_a_pixel_is_not_still() {
    // One pixel covers 1.6 µm (400 mm) / 4.8 mm = 0.1333 mm at the pot's near face.
    assertThat(holds(pot("subject.sway", "0.13"), "fitness.still")).isTrue();
    assertThat(holds(pot("subject.sway", "0.14"), "fitness.still")).isFalse();
    assertThat(holds(pot("subject.sway", "0.14"), "fitness.fit")).isFalse();
  }

  @Test
  void a_thin_handle_needs_as_many_pixels_as_a_detail() {
    // One pixel covers 1.6 µm (700 mm) / 4.8 mm = 0.2333 mm at the far face: 3 px are 0.7 mm.
    assertThat(pot("subject.thinnest", "1.4").si("fitness.thinPixels")).isCloseTo(6, within(0.01));
    assertThat(holds(pot("subject.thinnest", "0.71"), "fitness.thin")).isTrue();
    assertThat(holds(pot("subject.thinnest", "0.69"), "fitness.thin")).isFalse();
    assertThat(pot().of("fitness.thin")).isInstanceOf(Outcome.Refused.class);
  }

  @Test
  void a_coin_is_too_small_for_this_lens_and_the_pot_is_not() {
    Scene coin = Scenes.with(Scenes.pot(), "subject.height", "0.3", "subject.width", "3");
    assertThat(holds(Reckoning.of(coin), "fitness.size")).isFalse();
    assertThat(holds(pot(), "fitness.size")).isTrue();
  }

  @Test
  void furniture_nearer_than_the_ring_leaves_it_no_room() {
    assertThat(holds(pot(), "fitness.clear")).isTrue();
    Scene beside = SceneDraft.of(Scenes.pot()).obstacles(List.of(bench())).build();
    assertThat(holds(Reckoning.of(beside), "fitness.clear")).isFalse();
  }

  /** A bench 40 cm from the middle; the ring is 53.6 cm wide along the floor. */
  private static Place.Obstacle bench() {
    double[][] corners = {{0.4, -1}, {1, -1}, {1, 1}, {0.4, 1}};
    return new Place.Obstacle(
        "bench",
        Arrays.stream(corners)
            .map(c -> new Place.Corner(Length.ofMetres(c[0]), Length.ofMetres(c[1])))
            .toList());
  }
}
