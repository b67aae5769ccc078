package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.optics.Kit;
import ringbook.optics.Lens;
import ringbook.optics.Sensor;
import ringbook.shots.Aim;
import ringbook.shots.Scene;
import ringbook.shots.Subject;
import ringbook.units.Dimension;
import ringbook.units.Length;

/** Laws of standing, framing, sampling and sharpness that hold for every scene. */
final class DistancePropertiesTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-6);

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void everything_twice_as_large_stands_twice_as_far(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning one = Reckoning.of(scene);
    Reckoning two = Reckoning.of(scaled(scene, 2));
    for (Quantity quantity : Ledger.standard().quantities()) {
      if (quantity.key().startsWith("distance.") && known(one, quantity.key())) {
        double factor = quantity.unit().dimension() == Dimension.LENGTH ? 2 : 1;
        assertThat(si(two, quantity.key()))
            .as(quantity.key())
            .isCloseTo(factor * si(one, quantity.key()), CLOSE);
      }
    }
    assertThat(si(two, "sharp.open")).isCloseTo(si(one, "sharp.open"), CLOSE);
    assertThat(si(two, "sharp.closed")).isGreaterThan(si(one, "sharp.closed"));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_object_never_fills_more_than_wanted(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    double fill = si(r, "aim.fill");
    double fullest = Math.max(si(r, "distance.filledLong"), si(r, "distance.filledShort"));
    assertThat(fullest).isLessThanOrEqualTo(fill * (1 + 1e-9));
    if (si(r, "distance.heldOff") == 0) {
      assertThat(fullest).isCloseTo(fill, CLOSE);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void farther_parts_are_sampled_more_coarsely(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    assertThat(si(r, "distance.samplingNear")).isLessThan(si(r, "distance.samplingMiddle"));
    assertThat(si(r, "distance.samplingMiddle")).isLessThan(si(r, "distance.samplingFar"));
    boolean fine = si(r, "distance.fine") == 1;
    if (known(r, "distance.largest")) {
      boolean within = si(r, "distance.standoff") <= si(r, "distance.largest") * (1 + 1e-9);
      assertThat(within || !fine).isTrue();
    } else {
      assertThat(fine).isFalse();
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void both_ends_of_the_depth_are_blurred_alike(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    double near = si(r, "sharp.blurNearPixels");
    assertThat(si(r, "sharp.blurFarPixels")).isCloseTo(near, Percentage.withPercentage(1e-4));
    if (si(r, "sharp.window") == 1) {
      assertThat(near).isLessThanOrEqualTo(si(r, "aim.blurLimit") * (1 + 1e-6));
      assertThat(si(r, "sharp.airyPixels"))
          .isLessThanOrEqualTo(si(r, "aim.diffractionLimit") * (1 + 1e-9));
      assertThat(si(r, "sharp.slices")).isEqualTo(1);
      assertThat(si(r, "sharp.standBack")).isEqualTo(si(r, "distance.standoff"));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_f_number_to_set_is_one_the_lens_has(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    for (String key : new String[] {"sharp.fNumber", "sharp.dial"}) {
      assertThat(si(r, key))
          .as(key)
          .isBetween(si(r, "kit.widest") * (1 - 1e-9), si(r, "kit.narrowest") * (1 + 1e-9));
    }
  }

  @Test
  void both_kits_of_the_demo_hold_the_pot_sharp() {
    Reckoning phone = Reckoning.of(Scenes.pot());
    assertThat(si(phone, "sharp.window")).isEqualTo(1);
    assertThat(si(phone, "sharp.fNumber")).isEqualTo(1.8);
    Reckoning camera = Reckoning.of(Scenes.potWithLensCamera());
    assertThat(si(camera, "sharp.window")).isEqualTo(1);
    assertThat(si(camera, "sharp.fNumber")).isCloseTo(8, within(0.5));
    assertThat(si(camera, "sharp.dial")).isEqualTo(8);
  }

  @Test
  void without_a_window_there_are_ways_out() {
    Reckoning r = Reckoning.of(Scenes.with(Scenes.potWithLensCamera(), "aim.blurLimit", "1"));
    assertThat(si(r, "sharp.window")).isEqualTo(0);
    assertThat(si(r, "sharp.standBack")).isGreaterThan(si(r, "distance.standoff"));
    assertThat(si(r, "sharp.slices")).isGreaterThan(1);
    assertThat(si(r, "sharp.depthHad")).isLessThan(si(r, "sharp.far") - si(r, "sharp.near"));
    double would = si(r, "sharp.coarser");
    Scene coarser = Scenes.with(r.scene(), "aim.blurLimit", Double.toString(would * 1.0001));
    assertThat(si(Reckoning.of(coarser), "sharp.window")).isEqualTo(1);
  }

  private static Scene scaled(Scene scene, double k) {
    Sensor sensor = scene.kit().sensor();
    Lens lens = scene.kit().lens();
    Kit kit =
        new Kit(
            scene.kit().name(),
            new Sensor(
                sensor.width().times(k),
                sensor.height().times(k),
                sensor.pixelsAcross(),
                sensor.pixelsDown()),
            new Lens(
                lens.focalLength().times(k),
                lens.widest(),
                lens.narrowest(),
                lens.closestFocus().times(k)),
            scene.kit().basis(),
            scene.kit().details());
    Subject subject = scene.subject();
    Subject large =
        new Subject(
            subject.name(),
            subject.outline(),
            subject.height().times(k),
            subject.width().times(k),
            subject.depth().times(k),
            subject.surface(),
            subject.details());
    return new Scene(kit, large, scene.place(), scaled(scene.aim(), k));
  }

  private static Aim scaled(Aim aim, double k) {
    Length detail = aim.detail().times(k);
    return new Aim(
        detail,
        aim.pixelsPerDetail(),
        aim.fill(),
        aim.hold(),
        aim.sharpShare(),
        aim.blurLimit(),
        aim.diffractionLimit(),
        aim.elevation(),
        aim.step(),
        aim.stepLimit(),
        aim.incidenceLimit(),
        aim.decay(),
        aim.lengths(),
        aim.details());
  }

  private static boolean known(Reckoning r, String key) {
    return r.of(key) instanceof Outcome.Known;
  }

  private static double si(Reckoning r, String key) {
    return ((Outcome.Known) r.of(key)).si();
  }
}
