package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LengthsTest {

  @ParameterizedTest
  @CsvSource({
    "0.756, 76 cm, 29 3/4 in",
    "1.234, 1.23 m, 4 ft 1/2 in",
    "0, 0 cm, 0 in",
    "-0.3, -30 cm, -11 3/4 in"
  })
  void roughly(double metres, String metric, String imperial) {
    assertThat(plain(Lengths.METRIC.roughly(metres))).isEqualTo(metric);
    assertThat(plain(Lengths.IMPERIAL.roughly(metres))).isEqualTo(imperial);
  }

  @ParameterizedTest
  @CsvSource({"0.756, 0, 76 cm, 29 3/4 in", "0.2346, 1, 23.5 cm, 9.2 in"})
  void closely(double metres, int decimals, String metric, String imperial) {
    assertThat(plain(Lengths.METRIC.closely(metres, decimals))).isEqualTo(metric);
    assertThat(plain(Lengths.IMPERIAL.closely(metres, decimals))).isEqualTo(imperial);
  }

  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }
}
