package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class InchesTest {

  @ParameterizedTest
  @CsvSource({
    "16.535, 16 1/2 in",
    "0.26, 1/4 in",
    "0.1, 0 in",
    "35.8, 35 3/4 in",
    "35.9, 3 ft",
    "36.1, 3 ft",
    "36.4, 3 ft 1/2 in",
    "74.8, 6 ft 2 3/4 in",
    "-74.8, -6 ft 2 3/4 in",
    "119.9, 10 ft",
    "-0.1, 0 in"
  })
  void to_the_quarter(double inches, String expected) {
    assertThat(Inches.inSteps(inches, 0.25, false).replace('\u00a0', ' ')).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "16.535, 1, 16.5 in",
    "16.97, 1, 17 in",
    "37.234, 2, 3 ft 1.23 in",
    "47.999, 2, 4 ft",
    "35.996, 2, 3 ft",
    "-5.04, 1, -5 in",
    "-0.04, 1, 0 in"
  })
  void with_decimals(double inches, int decimals, String expected) {
    assertThat(Inches.inDecimals(inches, decimals, false).replace('\u00a0', ' '))
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"16.5, 16 1/2 in", "16.51, 16 3/4 in", "47.8, 4 ft"})
  void up(double inches, String expected) {
    assertThat(Inches.inSteps(inches, 0.25, true).replace('\u00a0', ' ')).isEqualTo(expected);
  }
}
