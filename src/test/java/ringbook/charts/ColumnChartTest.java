package ringbook.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringbook.charts.Columns.Column;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Tick;
import ringbook.figures.Figure;

class ColumnChartTest {

  private static final Pattern COLUMN =
      Pattern.compile(
          "<rect x=\"([0-9.]+)\" y=\"[0-9.]+\" width=\"([0-9.]+)\" height=\"([0-9.]+)\"");

  private static Figure chart() {
    return ColumnChart.of(
        new Columns(
            "Points",
            "Three learners low, one high.",
            new Axis("points, %", 0, 100, List.of(new Tick(0, "0"), new Tick(100, "100"))),
            new Axis("learners", 0, 4, List.of(new Tick(0, "0"), new Tick(4, "4"))),
            List.of(new Column(0, 50, 3, "three"), new Column(50, 100, 1, "one")),
            List.of("points", "learners"),
            List.of(List.of("low", "3"), List.of("high", "1"))),
        "x-");
  }

  private static List<double[]> columns(String svg) {
    Matcher found = COLUMN.matcher(svg);
    return found
        .results()
        .map(
            m ->
                new double[] {
                  Double.parseDouble(m.group(1)),
                  Double.parseDouble(m.group(2)),
                  Double.parseDouble(m.group(3))
                })
        .filter(column -> column[1] > 20)
        .toList();
  }

  @Test
  void columns_stand_side_by_side_as_high_as_their_numbers() {
    List<double[]> columns = columns(chart().svg());
    double[] low = columns.get(0);
    double[] high = columns.get(columns.size() - 1);
    assertThat(low[0] + low[1]).isLessThan(high[0]);
    assertThat(low[1]).isCloseTo(high[1], within(0.01));
    assertThat(low[2] / high[2]).isCloseTo(3, within(0.01));
  }

  @Test
  void what_is_printed_is_text() {
    assertThat(chart().svg())
        .contains(">three</text>", ">one</text>", ">learners</text>", ">points, %</text>")
        .doesNotContain("style=", "clip-path", "NaN");
  }

  @Test
  void no_locale_has_a_say() {
    String here = chart().svg();
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(chart().svg()).isEqualTo(here);
    } finally {
      Locale.setDefault(usual);
    }
  }
}
