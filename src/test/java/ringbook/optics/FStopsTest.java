package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.units.FNumber;

final class FStopsTest {

  @Test
  void engraved_names_are_within_five_per_cent_of_the_exact_marks() {
    for (int step = -3; step <= 42; step++) {
      FNumber exact = FStops.third(step);
      assertThat(FStops.name(exact)).isCloseTo(exact.value(), within(0.05 * exact.value()));
      assertThat(FStops.isMark(exact)).isTrue();
    }
  }

  @Test
  void finds_the_mark_nearest_to_the_middle_of_a_range() {
    assertThat(between(5, 12)).isEqualTo(8);
    assertThat(between(4.1, 4.6)).isEqualTo(4.5);
    assertThat(between(8, 8)).isEqualTo(8);
    assertThat(FStops.markBetween(new FNumber(8.03), new FNumber(8.45))).isEmpty();
  }

  @Test
  void a_number_beside_a_mark_is_none() {
    assertThat(FStops.isMark(new FNumber(8.24))).isFalse();
    assertThat(FStops.isMark(new FNumber(8))).isTrue();
  }

  private static double between(double low, double high) {
    return FStops.name(FStops.markBetween(new FNumber(low), new FNumber(high)).orElseThrow());
  }
}
