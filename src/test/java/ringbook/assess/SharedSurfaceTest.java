package ringbook.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;

/** By counting points on a ball and by the angle at the edge of the arc. */
final class SharedSurfaceTest {

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_edge_of_the_arc_is_seen_at_the_limit(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double radius = random.nextDouble(0.01, 0.9);
    Angle elevation = Angle.ofDegrees(random.nextDouble(-40, 80));
    Angle limit = Angle.ofDegrees(random.nextDouble(5, 89));
    Vec3 lens = Vec3.towards(Angle.ZERO, elevation);
    SeenArc.halfWithin(new Length(radius), new Length(1), elevation, limit)
        .ifPresentOrElse(
            half -> {
              Vec3 normal = Vec3.towards(half, Angle.ZERO);
              Angle incidence = normal.angleTo(lens.minus(normal.times(radius)));
              assertThat(incidence.degrees()).isCloseTo(limit.degrees(), within(1e-6));
            },
            () -> {
              Vec3 nearest = new Vec3(1, 0, 0);
              assertThat(nearest.angleTo(lens.minus(nearest.times(radius)))).isGreaterThan(limit);
            });
  }

  @ParameterizedTest(name = "turn {0}°")
  @ValueSource(ints = {5, 12, 24, 45, 72, 100, 119})
  void agrees_with_counted_points_on_a_ball(int turnDegrees) {
    Angle turn = Angle.ofDegrees(turnDegrees);
    Vec3 one = new Vec3(1, 0, 0);
    Vec3 other = Vec3.towards(turn, Angle.ZERO);
    double limit = Math.cos(Math.toRadians(60));
    int seen = 0;
    int shared = 0;
    int points = 400_000;
    for (int i = 0; i < points; i++) { // a spiral of equal areas, golden section between points
      double z = 1 - (2 * i + 1.0) / points;
      double flat = Math.sqrt(1 - z * z);
      double around = i * Math.PI * (3 - Math.sqrt(5));
      Vec3 spot = new Vec3(flat * Math.cos(around), flat * Math.sin(around), z);
      if (spot.dot(one) >= limit) {
        seen++;
        shared += spot.dot(other) >= limit ? 1 : 0;
      }
    }
    assertThat(SharedSurface.ofCaps(turn, Angle.ofDegrees(60)))
        .isCloseTo((double) shared / seen, within(0.001));
  }

  @Test
  void runs_from_all_to_nothing() {
    Angle limit = Angle.ofDegrees(60);
    assertThat(SharedSurface.ofCaps(Angle.ZERO, limit)).isCloseTo(1, within(1e-12));
    assertThat(SharedSurface.ofCaps(Angle.ofDegrees(120), limit)).isZero();
    assertThat(SharedSurface.ofArcs(Angle.ofDegrees(100), Angle.ofDegrees(50))).isZero();
  }

  @Test
  void sees_no_wall_from_inside_or_from_above() {
    Length radius = new Length(1);
    assertThat(SeenArc.visible(radius, radius)).isEmpty();
    assertThat(SeenArc.halfWithin(radius, radius, Angle.ZERO, Angle.ofDegrees(60))).isEmpty();
    assertThat(SeenArc.halfWithin(radius, new Length(3), Angle.ofDegrees(60), Angle.ofDegrees(60)))
        .isEmpty();
  }
}
