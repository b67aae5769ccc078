package ringbook.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What people write as a measure is read as they mean it; the sources stand in the file. */
final class WrittenMeasuresTest {

  @ParameterizedTest(name = "{0} ({2})")
  @CsvFileSource(resources = "written-measures.csv", useHeadersInDisplayName = false)
  void is_read_as_meant(String text, String dimension, String style, String si, String source) {
    if (text.equals("text")) {
      return; // the heading
    }
    MeasureReading reading =
        MeasureReader.read(text, Dimension.valueOf(dimension), NumberStyle.valueOf(style));
    assertThat(reading).as(source).isInstanceOf(MeasureReading.Read.class);
    double value = Double.parseDouble(si);
    assertThat(((MeasureReading.Read) reading).measure().si())
        .isCloseTo(value, within(1e-12 * Math.max(1e-6, Math.abs(value))));
  }
}
