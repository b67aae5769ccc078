package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.Scenes;
import ringbook.assess.TurnSurvival;
import ringbook.geometry.Ball;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * What two stations can match of a ball as one walks round it, against the matches that were
 * counted on real rings: the rows of turn-survival.csv, as {@link TurnSurvival} holds them.
 */
final class PairSurvivalTest {

  private static final Ball BALL = new Ball(Length.ofCentimetres(30));

  private static final Map<String, TurnSurvival> SETS =
      Map.of(
          "plain figure", TurnSurvival.PLAIN_FIGURE,
          "carved model", TurnSurvival.CARVED_MODEL,
          "textured things", TurnSurvival.TEXTURED_THINGS,
          "relief wall", TurnSurvival.RELIEF_WALL);

  /** A turn and how many spots were matched over it. */
  private record Count(Angle turn, double count) {}

  private static List<Count> counts(TurnSurvival set, boolean confirmed) {
    List<Count> counts = new ArrayList<>();
    for (TurnSurvival.Row row : set.rows()) {
      double count = confirmed ? row.confirmed().orElseThrow() : row.tied();
      if (count >= TurnSurvival.CHANCE) {
        counts.add(new Count(row.turn(), count));
      }
    }
    return counts;
  }

  /**
   * Decays and misfits (root mean square, in per cent of the first turn's count) as published with
   * the measurement; half a per cent more for patches of finite size.
   */
  @ParameterizedTest(name = "{0}: decay {1}°, misfit {2} %")
  @CsvSource({
    "plain figure, 16, 1.2",
    "carved model, 17, 2.5",
    "textured things, 22, 2.1",
    "relief wall, 23, 6.1"
  })
  void a_ball_keeps_its_matches_as_real_things_do(String name, String decay, double misfit) {
    List<Count> counts = counts(SETS.get(name), name.equals("plain figure"));
    assertThat(counts).hasSizeGreaterThan(3);
    Seeing seeing =
        Before.seeing(
            Scenes.with(Before.open(BALL, "60"), "aim.decay", decay),
            BALL.mesh(Length.ofMillimetres(6)),
            6000);
    List<View> views = new ArrayList<>();
    views.add(seeing.look(Before.towards(seeing, Angle.ZERO, Angle.ZERO, 30)));
    for (Count count : counts) {
      views.add(seeing.look(Before.towards(seeing, count.turn(), Angle.ZERO, 30)));
    }
    Coverage walk = Coverage.of(seeing, views);
    double sum = 0;
    for (int k = 0; k < counts.size(); k++) {
      double model = walk.pair(0, k + 1).matchable() / walk.pair(0, 1).matchable();
      double off = model - counts.get(k).count() / counts.get(0).count();
      sum += off * off;
    }
    assertThat(100 * Math.sqrt(sum / counts.size())).isLessThan(misfit + 0.5);
  }
}
