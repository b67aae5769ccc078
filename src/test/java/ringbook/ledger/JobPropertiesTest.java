package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.shots.SceneField;
import ringbook.shots.SceneField.NumberField;

/** Laws of rings, poses, holes, strips and scale that hold for every scene. */
final class JobPropertiesTest {

  private static OptionalDouble si(Reckoning r, String key) {
    return r.of(key) instanceof Outcome.Known known
        ? OptionalDouble.of(known.si())
        : OptionalDouble.empty();
  }

  private static double known(Reckoning r, String key) {
    return si(r, key).orElseThrow();
  }

  /** The scene with one number changed, in SI; nothing if that is out of its range. */
  private static Reckoning with(Scene scene, String key, double si) {
    NumberField field = (NumberField) SceneField.byKey(key).orElseThrow();
    SceneDraft draft = SceneDraft.of(scene).change(field, si);
    return draft.faults().isEmpty() ? Reckoning.of(draft.build()) : null;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void rings_run_evenly_from_the_lowest_to_the_highest(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    if (si(r, "rings.count").isPresent()) {
      double steps = known(r, "rings.count") - 1;
      double spacing = known(r, "rings.spacing");
      assertThat(spacing).isLessThanOrEqualTo(known(r, "aim.ringSpacing") * (1 + 1e-8));
      assertThat(known(r, "rings.lowest") + steps * spacing)
          .isCloseTo(known(r, "rings.highest"), within(1e-9));
      assertThat(known(r, "job.photos")).isGreaterThan(known(r, "rings.photos"));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void smaller_turns_match_better_and_take_more_photographs(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning wide = Reckoning.of(scene);
    Reckoning small = with(scene, "aim.step", known(wide, "aim.step") * 0.8);
    if (small != null) {
      assertThat(known(small, "ring.photos")).isGreaterThanOrEqualTo(known(wide, "ring.photos"));
      assertThat(known(small, "pair.matchable"))
          .isGreaterThanOrEqualTo(known(wide, "pair.matchable"));
    }
    assertThat(known(wide, "pair.matchable")).isLessThanOrEqualTo(known(wide, "pair.shared"));
    assertThat(known(wide, "ring.rayAngle"))
        .isLessThanOrEqualTo(known(wide, "ring.realStep") + 1e-12);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void poses_overlap_or_lie_apart_but_not_both(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    si(r, "pose.band")
        .ifPresent(band -> assertThat(band * known(r, "pose.apart")).as("product").isZero());
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void a_wider_mouth_shows_no_less_of_a_hole(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning narrow = Reckoning.of(scene);
    Reckoning wide =
        with(scene, "subject.holeDiameter", 1.5 * known(narrow, "subject.holeDiameter"));
    assertThat(known(narrow, "hole.wallSeen"))
        .isLessThanOrEqualTo(known(narrow, "subject.holeDepth"));
    if (wide != null) {
      for (String key : new String[] {"hole.wallSeen", "hole.floorShare", "hole.floorMiddle"}) {
        assertThat(known(wide, key)).as(key).isGreaterThanOrEqualTo(known(narrow, key));
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_bar_that_is_needed_just_keeps_the_tolerance(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning r = Reckoning.of(scene);
    Reckoning longer = with(scene, "kit.barLength", known(r, "scale.barNeeded"));
    if (longer != null) {
      double tolerance = known(r, "aim.tolerance");
      assertThat(known(longer, "scale.carried")).isCloseTo(tolerance, within(1e-9 * tolerance));
    }
    double needed = known(r, "scale.barsNeeded");
    Reckoning more = with(scene, "kit.barCount", needed);
    if (more != null) {
      assertThat(known(more, "scale.carried"))
          .isLessThanOrEqualTo(known(r, "aim.tolerance") * (1 + 1e-8));
      Reckoning fewer = with(scene, "kit.barCount", needed - 1);
      if (fewer != null) {
        assertThat(known(fewer, "scale.carried")).isGreaterThan(known(r, "aim.tolerance"));
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void repeating_every_photograph_four_times_halves_the_error(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning once = with(scene, "aim.repeats", 1);
    Reckoning four = with(scene, "aim.repeats", 4);
    for (String key : new String[] {"precision.mean", "precision.ringUp", "precision.wallDepth"}) {
      si(once, key)
          .ifPresent(
              sigma ->
                  assertThat(known(four, key)).as(key).isCloseTo(sigma / 2, within(1e-9 * sigma)));
    }
  }

  /** All rings against the closed forms of the single rings, whose weights add up. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void weights_of_the_rings_add_up(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning all = Reckoning.of(scene);
    if (si(all, "precision.setUp").isEmpty()) {
      return;
    }
    double up = 0;
    double across = 0;
    for (int i = 0; i < known(all, "rings.count"); i++) {
      double elevation = known(all, "rings.lowest") + i * known(all, "rings.spacing");
      double flat = Math.cos(elevation) * Math.cos(elevation);
      up += known(all, "ring.photos") * flat;
      across += known(all, "ring.photos") * (1 - flat / 2);
    }
    double spot = known(all, "precision.spot") / Math.sqrt(known(all, "aim.repeats"));
    assertThat(known(all, "precision.setUp")).isCloseTo(spot / Math.sqrt(up), within(1e-6 * spot));
    assertThat(known(all, "precision.setAcross"))
        .isCloseTo(spot / Math.sqrt(across), within(1e-6 * spot));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void parts_that_stand_out_overlap_less(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    si(r, "strip.nearOverlap")
        .ifPresent(near -> assertThat(near).isLessThan(known(r, "aim.stripOverlap")));
  }
}
