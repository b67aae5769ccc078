package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.units.Span;

/** Steps of two, by hand from the definitions. */
final class ExposureTest {

  /** Exif 2.3, annex on APEX: speed value 5 is ISO 100; each step doubles. From memory. */
  @Test
  void speed_values_name_iso_settings() {
    assertThat(Exposure.iso(5)).isCloseTo(100, within(1e-9));
    assertThat(Exposure.iso(8)).isCloseTo(800, within(1e-9));
    assertThat(Exposure.speedValue(100)).isCloseTo(5, within(1e-9));
  }

  /** ISO 2720: L = K 2^EV / 100; 2^15 / 8 with K = 12.5, 2^3 · 0.14 with K = 14. */
  @Test
  void exposure_values_name_luminances() {
    assertThat(Exposure.luminance(15, Exposure.K)).isCloseTo(4096, within(1e-9));
    assertThat(Exposure.luminance(3, 14)).isCloseTo(1.12, within(1e-9));
  }

  /** At 50 Hz light pulses a hundred times a second; 1/30 s holds three pulses and a third. */
  @Test
  void the_longest_safe_time_holds_whole_pulses() {
    assertThat(Flicker.safeTime(50, new Span(1 / 30.0)).seconds()).isCloseTo(0.03, within(1e-12));
    assertThat(Flicker.safeTime(60, new Span(0.025)).seconds()).isCloseTo(0.025, within(1e-12));
    assertThat(Flicker.safeTime(50, new Span(0.04)).seconds()).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void no_time_shorter_than_a_pulse_is_safe() {
    assertThat(Flicker.isSafe(Flicker.pulses(50, new Span(0.01)))).isTrue();
    assertThat(Flicker.isSafe(Flicker.pulses(50, new Span(1e-9)))).isFalse();
  }

  /** |sin(πx)/(πx)|: 2/π at half a pulse, 2/(5π) at two and a half, none at whole pulses. */
  @Test
  void what_is_left_of_flicker_falls_with_the_pulses() {
    assertThat(Flicker.left(0)).isEqualTo(1);
    assertThat(Flicker.left(0.5)).isCloseTo(2 / Math.PI, within(1e-12));
    assertThat(Flicker.left(2.5)).isCloseTo(0.4 / Math.PI, within(1e-12));
    assertThat(Flicker.left(1.25)).isCloseTo(Math.sqrt(0.5) / (1.25 * Math.PI), within(1e-12));
    assertThat(Flicker.left(3)).isCloseTo(0, within(1e-12));
  }
}
