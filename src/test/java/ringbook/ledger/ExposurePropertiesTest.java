package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.shots.Scene;

/** Laws of light, movement and flicker, and what is refused with what reason. */
final class ExposurePropertiesTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-6);

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void aperture_and_time_make_up_light_and_speed(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    double close = si(r, "light.closeStops");
    double setting = si(r, "light.apertureValue") + close + si(r, "light.timeValue");
    double light = si(r, "light.brightnessValue") + si(r, "light.speedValue");
    assertThat(Math.abs(setting - light)).isLessThan(1e-9);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_iso_to_set_is_one_the_camera_has(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    assertThat(si(r, "motion.iso"))
        .isBetween(si(r, "kit.baseIso") * (1 - 1e-9), si(r, "kit.highestIso") * (1 + 1e-9));
    if (si(r, "motion.tripod") == 0) {
      assertThat(si(r, "motion.time")).isLessThanOrEqualTo(si(r, "motion.byTremor"));
      assertThat(si(r, "motion.handBlur")).isLessThanOrEqualTo(si(r, "aim.motionBlur"));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void a_flicker_safe_time_is_whole_pulses_and_not_longer(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    if (r.of("flicker.time") instanceof Outcome.Known safe) {
      double pulses = safe.si() * si(r, "flicker.pulses");
      assertThat(pulses).isCloseTo(Math.rint(pulses), CLOSE);
      assertThat(pulses).isGreaterThan(0.5);
      assertThat(safe.si()).isLessThanOrEqualTo(si(r, "motion.time") * (1 + 1e-9));
    } else {
      assertThat(si(r, "flicker.during")).isLessThan(1);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_mark_on_the_dial_is_less_than_a_third_stop_shorter(long seed) {
    Reckoning r = Reckoning.of(Scenes.random(seed));
    assertThat(si(r, "motion.dialTime"))
        .isBetween(
            si(r, "motion.time") / Math.cbrt(2) * (1 - 1e-9), si(r, "motion.time") * (1 + 1e-9));
    assertThat(si(r, "motion.dialIso") * si(r, "motion.dialTime"))
        .isCloseTo(si(r, "motion.iso") * si(r, "motion.time"), CLOSE);
  }

  @Test
  void twice_the_light_halves_the_time() {
    Reckoning one = Reckoning.of(Scenes.pot());
    Reckoning two = Reckoning.of(Scenes.with(Scenes.pot(), "place.illuminance", "1000"));
    assertThat(si(two, "light.timeBase")).isCloseTo(si(one, "light.timeBase") / 2, CLOSE);
    assertThat(si(two, "light.timeHighest")).isCloseTo(si(one, "light.timeHighest") / 2, CLOSE);
    assertThat(si(two, "light.luxByHand")).isCloseTo(si(one, "light.luxByHand"), CLOSE);
  }

  @Test
  void one_stop_of_stabiliser_doubles_the_hand_held_time() {
    Reckoning one = Reckoning.of(Scenes.pot());
    Reckoning two = Reckoning.of(Scenes.with(Scenes.pot(), "kit.stabiliser", "1"));
    assertThat(si(two, "motion.byTremor")).isCloseTo(2 * si(one, "motion.byTremor"), CLOSE);
  }

  @Test
  void the_lamp_distance_for_even_light_gives_half_a_stop() {
    double even = si(Reckoning.of(Scenes.pot()), "light.evenDistance");
    Scene moved = Scenes.with(Scenes.pot(), "place.lampDistance", Double.toString(even * 100));
    assertThat(si(Reckoning.of(moved), "light.lampSpread")).isCloseTo(0.5, CLOSE);
  }

  @Test
  void refuses_a_lamp_inside_the_object() {
    Scene inside = Scenes.with(Scenes.pot(), "place.lampDistance", "10");
    assertThat(Reckoning.of(inside).of("light.lampSpread"))
        .isEqualTo(
            new Outcome.Refused(
                "The lamp, 10\u00a0cm from the middle of the object, would stand inside it.",
                "Move it to 180\u00a0cm for even light."));
  }

  @Test
  void refuses_a_flicker_safe_time_in_bright_light() {
    Scene bright = Scenes.with(Scenes.pot(), "place.illuminance", "20000");
    assertThat(Reckoning.of(bright).of("flicker.time"))
        .isEqualTo(
            new Outcome.Refused(
                "The time to set is shorter than one pulse of the lamps.",
                "Photograph in daylight, or set 1/100\u00a0s and a tripod."));
  }

  @Test
  void refuses_a_standoff_for_detail_out_of_reach() {
    Scene fine = Scenes.with(Scenes.pot(), "aim.detail", "0.1");
    assertThat(Reckoning.of(fine).of("distance.largest"))
        .isEqualTo(
            new Outcome.Refused(
                "Even at its closest focus, 8\u00a0cm, this lens does not sample the far face"
                    + " finely enough.",
                "From there it shows a detail of 0.38\u00a0mm. Ask for that, or take a longer"
                    + " lens."));
  }

  @Test
  void refuses_slices_where_the_open_aperture_already_spreads_too_widely() {
    Scene strict = Scenes.with(Scenes.pot(), "aim.diffractionLimit", "1");
    String reason =
        "Even at its widest aperture, f/1.8, this lens spreads every point over more than"
            + " 1\u00a0px.";
    for (String key : new String[] {"sharp.slices", "sharp.coarser"}) {
      assertThat(Reckoning.of(strict).of(key))
          .isEqualTo(new Outcome.Refused(reason, "Accept a diffraction disc of 1.6\u00a0px."));
    }
  }

  @Test
  void following_the_advice_helps() {
    Scene detail = Scenes.with(Scenes.pot(), "aim.detail", "0.38");
    assertThat(Reckoning.of(detail).of("distance.largest")).isInstanceOf(Outcome.Known.class);
    Scene disc = Scenes.with(Scenes.pot(), "aim.diffractionLimit", "1.6");
    assertThat(Reckoning.of(disc).of("sharp.slices")).isInstanceOf(Outcome.Known.class);
  }

  private static double si(Reckoning r, String key) {
    return ((Outcome.Known) r.of(key)).si();
  }
}
