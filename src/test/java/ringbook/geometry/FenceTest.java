package ringbook.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.geometry.euclidean.twod.PolygonsSet;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.partitioning.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.units.Angle;

/** Outlines by hand, and against the plane figures of Commons Math. */
final class FenceTest {

  /** A triangle turned round the origin, so that no side runs along an axis. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void agrees_with_another_library(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double x = random.nextDouble(-2, 2);
    double y = random.nextDouble(-2, 2);
    double turn = random.nextDouble(0, 2 * Math.PI);
    double[] xy = new double[6];
    Vector2D[] corners = new Vector2D[3];
    double farthest = 0;
    for (int i = 0; i < 3; i++) { // counter-clockwise, as the library wants it
      double at = turn + i * 2 * Math.PI / 3;
      corners[i] = new Vector2D(x + 1.5 * Math.cos(at), y + 1.5 * Math.sin(at));
      xy[2 * i] = corners[i].getX();
      xy[2 * i + 1] = corners[i].getY();
      farthest = Math.max(farthest, corners[i].getNorm());
    }
    PolygonsSet theirs = new PolygonsSet(1e-9, corners);
    Fence ours = Fence.of(xy);
    boolean inside = theirs.checkPoint(Vector2D.ZERO) == Region.Location.INSIDE;
    assertThat(ours.goesRound()).isEqualTo(inside);
    double offset = theirs.projectToBoundary(Vector2D.ZERO).getOffset();
    assertThat(ours.nearest()).isCloseTo(Math.max(0, offset), within(1e-9));
    assertThat(ours.farthest()).isCloseTo(farthest, within(1e-12));
  }

  /** From the origin the side from (3, 4) to (4, 3) is nearest in its middle: 7 / √2. */
  @Test
  void the_nearest_point_may_be_a_corner_or_on_a_side() {
    assertThat(Fence.of(3, 4, 4, 3, 9, 9).nearest()).isCloseTo(7 / Math.sqrt(2), within(1e-12));
    assertThat(Fence.of(3, 4, 8, 4, 8, 9).nearest()).isCloseTo(5, within(1e-12));
    assertThat(Fence.of(8, 4, 3, 4, 8, 9).nearest()).isCloseTo(5, within(1e-12));
    assertThat(Fence.of(3, 4, 3, 4, 8, 9).nearest()).isCloseTo(5, within(1e-12));
    assertThat(Fence.of(3, 4, 8, 4, 8, 9).farthest()).isCloseTo(Math.sqrt(145), within(1e-12));
  }

  @Test
  void refuses_an_outline_of_two_corners() {
    assertThatThrownBy(() -> Fence.of(1, 1, 2, 2)).hasMessageContaining("three corners");
    assertThatThrownBy(() -> Fence.of()).hasMessageContaining("three corners");
    assertThat(Fence.of(1, 1, 2, 2, 3, 1).xs()).containsExactly(1.0, 2.0, 3.0);
  }

  /** A circle of 5 runs through the corner (3, 4) and cuts the side on the right nowhere else. */
  @Test
  void a_corner_on_the_circle_blocks_no_arc() {
    assertThat(Fence.of(3, 4, 8, 4, 8, 9).within(5, ArcSet.NONE).total().radians())
        .isCloseTo(0, within(1e-9));
  }

  @Test
  void ends_belong_to_an_arc() {
    ArcSet arc = ArcSet.NONE.with(Angle.ZERO, new Angle(1));
    assertThat(arc.holds(Angle.ZERO)).isTrue();
    assertThat(arc.holds(new Angle(1))).isTrue();
    assertThat(arc.holds(new Angle(1.0001))).isFalse();
    assertThat(arc.holds(new Angle(-0.0001))).isFalse();
  }

  @Test
  void an_arc_of_a_full_turn_is_all() {
    for (double width : new double[] {2 * Math.PI, 7}) {
      ArcSet all = ArcSet.NONE.with(new Angle(1), new Angle(width));
      assertThat(all.total().radians()).isEqualTo(2 * Math.PI);
      assertThat(all.widest().radians()).isEqualTo(2 * Math.PI);
      assertThat(all.holds(new Angle(0.5))).isTrue();
    }
  }

  /** 350° to 30° is one piece of 40°; beside it one of 35°, of 45°, and one that only touches. */
  @Test
  void the_widest_piece_may_wrap_round_the_start() {
    ArcSet wrapped = ArcSet.NONE.with(Angle.ofDegrees(350), Angle.ofDegrees(40));
    assertThat(wrapped.widest().degrees()).isCloseTo(40, within(1e-9));
    assertThat(widest(wrapped, 100, 35)).isCloseTo(40, within(1e-9));
    assertThat(widest(wrapped, 100, 45)).isCloseTo(45, within(1e-9));
    assertThat(widest(ArcSet.NONE.with(Angle.ZERO, Angle.ofDegrees(20)), 320, 30))
        .isCloseTo(30, within(1e-9)); // from the start, but nothing up to it
    assertThat(widest(ArcSet.NONE.with(Angle.ofDegrees(10), Angle.ofDegrees(20)), 330, 40))
        .isCloseTo(60, within(1e-9)); // 330° to 370° ends where 10° to 30° begins
  }

  /** Seen from its middle line, a box a metre off blocks one arc, whatever its corners. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void sides_that_meet_in_a_corner_block_one_piece(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double turn = random.nextDouble(0, 2 * Math.PI);
    double c = Math.cos(turn);
    double s = Math.sin(turn);
    double half = random.nextDouble(0.1, 1);
    Fence box =
        Fence.of(
            c - half * s,
            s + half * c,
            c + half * s,
            s - half * c,
            3 * c + half * s,
            3 * s - half * c,
            3 * c - half * s,
            3 * s + half * c);
    ArcSet blocked = box.within(9, ArcSet.NONE);
    assertThat(blocked.total().radians()).isCloseTo(2 * Math.atan(half), within(1e-9));
    assertThat(blocked.widest().radians()).isCloseTo(2 * Math.atan(half), within(1e-9));
    // Two sides side on: from (1, half) to (3, 0) to (1, -half)
    Fence wedge = Fence.of(c - half * s, s + half * c, 3 * c, 3 * s, c + half * s, s - half * c);
    Fence open = Fence.of(c - half * s, s + half * c, 3 * c, 3 * s, c - half * s, s + half * c);
    assertThat(wedge.within(9, ArcSet.NONE).widest().radians())
        .isCloseTo(2 * Math.atan(half), within(1e-9));
    assertThat(open.within(9, ArcSet.NONE).widest().radians())
        .isCloseTo(Math.atan(half), within(1e-9));
  }

  private static double widest(ArcSet arcs, double from, double width) {
    return arcs.with(Angle.ofDegrees(from), Angle.ofDegrees(width)).widest().degrees();
  }
}
