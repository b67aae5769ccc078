package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.assess.MatchSurvival;
import ringbook.assess.SharedSurface;
import ringbook.geometry.Ball;
import ringbook.shots.Scene;
import ringbook.units.Angle;
import ringbook.units.Length;

/** What two stations have in common of a ball seen from far away. */
final class PairViewTest {

  private static final Ball BALL = new Ball(Length.ofCentimetres(30));

  @ParameterizedTest
  @ValueSource(ints = {8, 15, 30, 60, 90, 119, 140})
  void two_caps_overlap_in_a_lens(int degrees) {
    Scene scene = Before.open(BALL, "60");
    Seeing seeing = Before.seeing(scene, BALL, 10_000);
    Angle turn = Angle.ofDegrees(degrees);
    Coverage both =
        Coverage.of(
            seeing,
            List.of(
                seeing.look(Before.towards(seeing, Angle.ofDegrees(3), Angle.ZERO, 30)),
                seeing.look(
                    Before.towards(seeing, Angle.ofDegrees(3).plus(turn), Angle.ZERO, 30))));
    PairView pair = both.pair(0, 1);
    Angle limit = Angle.ofDegrees(60);
    assertThat(pair.shared()).isCloseTo(SharedSurface.ofCaps(turn, limit), within(0.01));
    assertThat(pair.matchable())
        .isCloseTo(MatchSurvival.matchable(turn, limit, scene.aim().decay()), within(0.006));
    assertThat(pair.frame()).isBetween(pair.shared() - 0.01, 1.0);
  }
}
