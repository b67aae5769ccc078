package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.figures.ChartModel.Series;
import ringbook.figures.ChartModel.Value;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;

/** Curves against scenes that were changed in the ordinary way. */
final class ChartsTest {

  @Test
  void shares_over_the_turn_are_those_of_rings_with_that_turn() {
    ChartModel chart = OverlapChart.of(Reckoning.of(Scenes.pot()));
    for (List<String> row : chart.tableRows().subList(0, 9)) {
      String degrees = row.get(0).replace("°", "");
      Reckoning ring = Reckoning.of(Scenes.with(Scenes.pot(), "aim.step", degrees));
      assertThat(row)
          .containsExactly(
              ring.text("ring.realStep"),
              ring.text("pair.shared"),
              ring.text("pair.alike"),
              ring.text("pair.matchable"));
    }
  }

  @Test
  void the_model_beside_measured_counts_is_the_ledgers() {
    ChartModel chart = SurvivalChart.of(Reckoning.of(Scenes.pot()));
    int compared = 0;
    for (List<String> row : chart.tableRows()) {
      String degrees = row.get(1).replace("°", "");
      if (360 % Double.parseDouble(degrees) == 0) {
        Reckoning ring = Reckoning.of(Scenes.with(Scenes.pot(), "aim.step", degrees));
        assertThat(row.get(4)).isEqualTo(ring.text("pair.matchable"));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  @Test
  void measured_sets_are_scaled_as_a_whole() {
    ChartModel chart = SurvivalChart.of(Reckoning.of(Scenes.pot()));
    List<List<String>> rows = new ArrayList<>(chart.tableRows());
    rows.removeIf(row -> !row.get(0).startsWith("carved plaster"));
    double first = share(rows.get(0)) / Double.parseDouble(rows.get(0).get(2));
    // Shares are printed as whole per cents, hence half of one.
    for (List<String> row : rows) {
      assertThat(share(row)).isCloseTo(first * Double.parseDouble(row.get(2)), within(1.2));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "4", "8", "11"})
  void blur_and_disc_over_the_f_number_are_those_of_lenses_fixed_there(String fNumber) {
    Scene scene = Scenes.potWithLensCamera();
    ChartModel chart = WindowChart.of(Reckoning.of(scene));
    Reckoning fixed =
        Reckoning.of(Scenes.with(scene, "kit.widest", fNumber, "kit.narrowest", fNumber));
    double stops = Math.log(Double.parseDouble(fNumber)) / Math.log(2);
    for (Series series : chart.series()) {
      boolean blur = series.label().startsWith("blur");
      if (blur || series.label().startsWith("diffraction")) {
        double expected = fixed.si(blur ? "sharp.blurFarPixels" : "sharp.airyPixels");
        if (expected < chart.up().high()) {
          assertThat(at(series, stops)).isCloseTo(expected, within(0.01 * expected));
        }
      }
    }
  }

  @Test
  void the_sampling_line_runs_through_the_three_faces() {
    Reckoning reckoning = Reckoning.of(Scenes.pot());
    ChartModel chart = SamplingChart.of(reckoning);
    assertThat(chart.marks()).hasSize(3);
    for (ChartModel.Mark mark : chart.marks()) {
      double line = at(chart.series().get(0), mark.at().x());
      assertThat(line).isCloseTo(mark.at().y(), within(1e-9));
    }
  }

  @Test
  void no_window_is_written_out() {
    Scene scene = Scenes.with(Scenes.potWithLensCamera(), "aim.sharpShare", "100");
    Reckoning reckoning = Reckoning.of(scene);
    assertThat(reckoning.yes("sharp.window")).isFalse();
    ChartModel chart = WindowChart.of(reckoning);
    assertThat(chart.bands()).extracting(ChartModel.Band::text).containsExactly("no window");
    assertThat(chart.description()).contains("That leaves no window.");
  }

  @Test
  void a_window_the_lens_cannot_be_set_to_is_no_window_either() {
    Scene scene = Scenes.with(Scenes.pot(), "kit.widest", "5.6", "kit.narrowest", "8");
    ChartModel chart = WindowChart.of(Reckoning.of(scene));
    assertThat(chart.bands())
        .extracting(ChartModel.Band::text)
        .containsExactly("window, but not of this lens");
    assertThat(chart.description()).contains("That leaves no window.");
  }

  private static double share(List<String> row) {
    return Double.parseDouble(row.get(3).replace("\u00a0%", ""));
  }

  /** Between the drawn points, along the straight line that is drawn. */
  private static double at(Series series, double x) {
    for (int i = 1; i < series.points().size(); i++) {
      Value a = series.points().get(i - 1);
      Value b = series.points().get(i);
      if (a.x() <= x && x <= b.x()) {
        return a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x());
      }
    }
    throw new AssertionError("no point at " + x + " of " + series.label());
  }
}
