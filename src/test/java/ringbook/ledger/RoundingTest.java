package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RoundingTest {

  /** Names as engraved on lenses: common practice. */
  @ParameterizedTest
  @CsvSource({"5.656854249492381, 5.6", "22.627416997969522, 22", "8, 8", "8.24, 8.2", "1.78, 1.8"})
  void calls_aperture_marks_by_their_names(double number, String text) {
    assertThat(Rounding.mark(2).text(number)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0.008, 1/125",
    "0.0078125, 1/125",
    "0.01, 1/100",
    "0.0090, 1/111",
    "32, 30",
    "0.25, 1/4",
    "0.5, 0.5",
    "2, 2",
    "0.12, 1/8.3"
  })
  void writes_short_times_as_fractions(double number, String text) {
    assertThat(Rounding.fraction(2).text(number)).isEqualTo(text);
  }

  @Test
  void says_how_far_the_text_may_be_off() {
    assertThat(Rounding.mark(2).slack(22.627416997969522)).isBetween(0.62, 0.7);
    double slack = Rounding.fraction(2).slack(1 / 8.34);
    assertThat(slack).isCloseTo(1 / 8.34 - 1 / 8.39, within(1e-4));
  }
}
