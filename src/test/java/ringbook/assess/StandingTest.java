package ringbook.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.geometry.ArcSet;
import ringbook.geometry.Fence;
import ringbook.units.Angle;

/** Blocked directions, by hand and by trying many directions. */
final class StandingTest {

  @Test
  void a_wall_cuts_off_the_arc_behind_it() {
    Fence wall = Fence.of(-5, 1, 5, 1, 5, 1.2, -5, 1.2);
    ArcSet blocked = wall.within(2, ArcSet.NONE);
    assertThat(blocked.total().degrees()).isCloseTo(120, within(1e-9)); // 2 acos(1/2)
    assertThat(blocked.holds(Angle.ofDegrees(90))).isTrue();
    assertThat(blocked.holds(Angle.ofDegrees(29))).isFalse();
    assertThat(wall.nearest()).isCloseTo(1, within(1e-12));
    assertThat(wall.within(0.9, ArcSet.NONE).total()).isEqualTo(Angle.ZERO);
  }

  @Test
  void an_outline_round_the_object_is_known() {
    Fence table = Fence.of(-1, -1, 1, -1, 1, 1, -1, 1);
    assertThat(table.goesRound()).isTrue();
    assertThat(table.nearest()).isZero();
    assertThat(Fence.of(1, 0, 2, 0, 2, 1).goesRound()).isFalse();
  }

  @Test
  void counts_the_longest_step_round_the_end() {
    assertThat(Standing.longestStep(List.of(2, 3, 9), 12)).isEqualTo(6);
    assertThat(Standing.longestStep(List.of(4), 12)).isEqualTo(12);
    assertThat(Standing.longestStep(List.of(0, 1, 2, 3), 4)).isEqualTo(1);
  }

  @Test
  void joins_a_block_that_wraps_round_the_start() {
    ArcSet arcs =
        ArcSet.NONE
            .with(Angle.ofDegrees(-20), Angle.ofDegrees(50))
            .with(Angle.ofDegrees(100), Angle.ofDegrees(40))
            .with(Angle.ofDegrees(130), Angle.ofDegrees(20));
    assertThat(arcs.total().degrees()).isCloseTo(100, within(1e-9));
    assertThat(arcs.widest().degrees()).isCloseTo(50, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void agrees_with_trying_every_direction(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] corners = new double[6];
    for (int i = 0; i < 6; i++) {
      corners[i] = random.nextDouble(-3, 3);
    }
    double radius = random.nextDouble(0.5, 3);
    Fence fence = Fence.of(corners);
    ArcSet blocked = fence.within(radius, ArcSet.NONE);
    int tries = 7200;
    int met = 0;
    for (int i = 0; i < tries; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / tries;
      boolean meets = meets(corners, radius * Math.cos(angle), radius * Math.sin(angle));
      met += meets ? 1 : 0;
    }
    assertThat(blocked.total().radians())
        .isCloseTo(2 * Math.PI * met / tries, within(8 * 2 * Math.PI / tries));
  }

  /** Whether the way from the origin to x, y crosses a side, by the signs of four areas. */
  private static boolean meets(double[] c, double x, double y) {
    for (int i = 0; i < 6; i += 2) {
      double ax = c[i];
      double ay = c[i + 1];
      double bx = c[(i + 2) % 6];
      double by = c[(i + 3) % 6];
      boolean sides = (x * ay - y * ax > 0) != (x * by - y * bx > 0);
      double origin = (bx - ax) * (0 - ay) - (by - ay) * (0 - ax);
      double end = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
      if (sides && (origin > 0) != (end > 0)) {
        return true;
      }
    }
    return false;
  }
}
