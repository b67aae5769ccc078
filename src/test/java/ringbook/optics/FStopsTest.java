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

  /** Thirds of a stop from f/1: 128 = 2^7 is the 42nd, f/0.7 the third before. */
  @Test
  void has_names_from_f_0_7_to_f_128_only() {
    assertThat(FStops.name(FStops.third(-3))).isEqualTo(0.7);
    assertThat(FStops.name(FStops.third(42))).isEqualTo(128);
    assertThat(FStops.name(FStops.third(-4))).isEqualTo(FStops.third(-4).value());
    assertThat(FStops.name(FStops.third(43))).isEqualTo(FStops.third(43).value());
  }

  @Test
  void a_mark_at_the_end_of_a_range_lies_in_it() {
    for (int step = -3; step <= 42; step++) {
      FNumber mark = FStops.third(step);
      FNumber above = new FNumber(mark.value() * 1.05);
      FNumber below = new FNumber(mark.value() / 1.05);
      assertThat(FStops.markBetween(mark, above)).contains(mark);
      assertThat(FStops.markBetween(below, mark)).contains(mark);
    }
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
