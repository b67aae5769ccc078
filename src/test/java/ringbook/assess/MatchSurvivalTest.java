package ringbook.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.units.Angle;

/**
 * The model of matches against turn-survival.csv: real photographs. Counts below 12 are left out of
 * the fits, as they can come about by chance.
 */
final class MatchSurvivalTest {

  private static final String TIED = "inliers_median";
  private static final String CONFIRMED = "inliers_on_true_geometry_median";
  private static final Angle LIMIT = Angle.ofDegrees(60);

  private static final Map<String, TurnSurvival> OURS =
      Map.of(
          "middlebury-dino", TurnSurvival.PLAIN_FIGURE,
          "middlebury-temple", TurnSurvival.CARVED_MODEL,
          "fountain-p11", TurnSurvival.RELIEF_WALL,
          "coil-100", TurnSurvival.HUNDRED_THINGS,
          "coil-100-most-textured-25", TurnSurvival.TEXTURED_THINGS);

  private record Count(double turnDegrees, double count) {}

  private static List<CSVRecord> measured(String dataset) throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    List<CSVRecord> rows = new ArrayList<>();
    try (Reader reader =
            new InputStreamReader(
                MatchSurvivalTest.class.getResourceAsStream("/ringbook/checks/turn-survival.csv"),
                StandardCharsets.UTF_8);
        CSVParser parser = CSVParser.parse(reader, format)) {
      for (CSVRecord row : parser) {
        if (row.get("dataset").equals(dataset) && row.get("kind").startsWith("measured")) {
          rows.add(row);
        }
      }
    }
    return rows;
  }

  private static List<Count> counts(String dataset, String column) throws IOException {
    List<Count> counts = new ArrayList<>();
    for (CSVRecord row : measured(dataset)) {
      double count = Double.parseDouble(row.get(column));
      if (count >= TurnSurvival.CHANCE) {
        counts.add(new Count(Double.parseDouble(row.get("turn_deg")), count));
      }
    }
    return counts;
  }

  /** Root mean square of model less measurement, in per cent of the first turn's count. */
  private static double misfit(List<Count> counts, double decayDegrees) {
    Angle decay = Angle.ofDegrees(decayDegrees);
    double top = 0;
    double sum = 0;
    for (Count row : counts) {
      double model = MatchSurvival.matchable(Angle.ofDegrees(row.turnDegrees()), LIMIT, decay);
      top = top == 0 ? model : top;
      double off = model / top - row.count() / counts.get(0).count();
      sum += off * off;
    }
    return 100 * Math.sqrt(sum / counts.size());
  }

  private static double bestDecay(List<Count> counts) {
    double best = 5;
    for (double decay = 5; decay <= 60; decay += 0.1) {
      best = misfit(counts, decay) < misfit(counts, best) ? decay : best;
    }
    return best;
  }

  /**
   * Decay and misfit as published with the measurement, for the best whole or half degree. The
   * plain figure's 16° and 1.2 % come out on the counts that its known poses confirm.
   */
  @ParameterizedTest(name = "{0}: decay {2}°, misfit {3} %")
  @CsvSource({
    "middlebury-dino, inliers_on_true_geometry_median, 16, 1.2",
    "middlebury-temple, inliers_median, 17, 2.5",
    "coil-100-most-textured-25, inliers_median, 22, 2.1",
    "fountain-p11, inliers_median, 23, 6.1"
  })
  void fits_each_measured_set(String dataset, String column, double decay, double misfit)
      throws IOException {
    List<Count> counts = counts(dataset, column);
    double best = bestDecay(counts);
    assertThat(best).isCloseTo(decay, within(0.51));
    assertThat(misfit(counts, best)).isLessThan(misfit + 0.05);
  }

  /**
   * What the published 16° hides: with the wrong ties of wide turns left in, the plain figure seems
   * to keep its matches longer.
   */
  @Test
  void unconfirmed_ties_make_the_decay_look_longer() throws IOException {
    assertThat(bestDecay(counts("middlebury-dino", TIED)))
        .isGreaterThan(bestDecay(counts("middlebury-dino", CONFIRMED)) + 2);
  }

  /** Share of pairs with at least 15 ties; chance gives at most 9 to 11. */
  @ParameterizedTest(name = "{0} at {1}°: {2} to {3} % of pairs tied")
  @CsvSource({
    "middlebury-temple, 15.3, 96, 100",
    "coil-100-most-textured-25, 15.0, 96, 100",
    "middlebury-dino, 7.7, 96, 100",
    "middlebury-dino, 15.3, 75, 85"
  })
  void fifteen_degrees_hold_on_texture_and_eight_on_plain(
      String dataset, String turn, double low, double high) throws IOException {
    List<CSVRecord> rows = measured(dataset);
    rows.removeIf(row -> !row.get("turn_deg").equals(turn));
    assertThat(rows).hasSize(1);
    assertThat(Double.parseDouble(rows.get(0).get("pairs_ge15_pct"))).isBetween(low, high);
  }

  @Test
  void overlap_alone_is_far_too_hopeful() throws IOException {
    for (String dataset : OURS.keySet()) {
      assertThat(misfit(counts(dataset, TIED), 1e6)).as(dataset).isGreaterThan(15);
    }
  }

  @Test
  void holds_the_measured_rows_and_no_others() throws IOException {
    for (Map.Entry<String, TurnSurvival> each : OURS.entrySet()) {
      List<CSVRecord> rows = measured(each.getKey());
      assertThat(each.getValue().rows()).hasSameSizeAs(rows);
      for (int i = 0; i < rows.size(); i++) {
        TurnSurvival.Row ours = each.getValue().rows().get(i);
        CSVRecord row = rows.get(i);
        assertThat(ours.turn().degrees())
            .isCloseTo(Double.parseDouble(row.get("turn_deg")), within(1e-9));
        assertThat(ours.tied()).isEqualTo(Double.parseDouble(row.get(TIED)));
        String confirmed = row.get(CONFIRMED);
        assertThat(ours.confirmed().isPresent()).isEqualTo(!confirmed.isEmpty());
        ours.confirmed()
            .ifPresent(count -> assertThat(count).isEqualTo(Double.parseDouble(confirmed)));
        assertThat(100 * each.getValue().shares().get(i))
            .isCloseTo(Double.parseDouble(row.get("relative_to_first_turn_pct")), within(0.0501));
      }
    }
  }

  /** The line of Apache Commons Math through the logarithms of the file's counts. */
  @Test
  void measured_sets_halve_their_matches_over_eight_to_thirteen_degrees() throws IOException {
    List<Double> halvings = new ArrayList<>();
    for (Map.Entry<String, TurnSurvival> each : OURS.entrySet()) {
      boolean confirmed = !measured(each.getKey()).get(0).get(CONFIRMED).isEmpty();
      SimpleRegression line = new SimpleRegression();
      for (Count row : counts(each.getKey(), confirmed ? CONFIRMED : TIED)) {
        line.addData(row.turnDegrees(), Math.log(row.count()));
      }
      halvings.add(-Math.log(2) / line.getSlope());
      assertThat(each.getValue().halving().degrees())
          .as(each.getKey())
          .isCloseTo(-Math.log(2) / line.getSlope(), within(1e-9));
    }
    Reckoning reckoning = Reckoning.of(Scenes.pot());
    assertThat(reckoning.angle("pair.halvedFirst").degrees())
        .isCloseTo(Collections.min(halvings), within(1e-9));
    assertThat(reckoning.angle("pair.halvedLast").degrees())
        .isCloseTo(Collections.max(halvings), within(1e-9));
    assertThat(reckoning.text("pair.halvedFirst")).isEqualTo("8°");
    assertThat(reckoning.text("pair.halvedLast")).isEqualTo("13°");
  }

  @Test
  void halves_at_its_halving_turn() {
    Angle decay = Angle.ofDegrees(18);
    assertThat(MatchSurvival.alike(MatchSurvival.halving(decay), decay))
        .isCloseTo(0.5, within(1e-12));
  }
}
