package ringbook.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.units.Angle;
import ringbook.units.Length;

/** By following single lines of sight through the mouth of the hole. */
final class HoleViewTest {

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void agrees_with_single_lines_of_sight(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double radius = random.nextDouble(0.1, 2);
    double depth = random.nextDouble(0.1, 5);
    double tangent = Math.tan(Math.toRadians(random.nextDouble(0, 80)));
    HoleView hole = new HoleView(new Length(2 * radius), new Length(depth));
    Angle angle = new Angle(Math.atan(tangent));
    int seen = 0;
    int tries = 20_000;
    double widest = 0;
    for (int i = 0; i < tries; i++) {
      double around = random.nextDouble(2 * Math.PI);
      double out = radius * Math.sqrt(random.nextDouble());
      double x = out * Math.cos(around);
      double y = out * Math.sin(around);
      // The line from that spot of the floor leaves through the mouth if it is inside up there.
      seen += Math.hypot(x + depth * tangent, y) <= radius ? 1 : 0;
      double line = -radius + 2 * radius * i / tries;
      widest += line + depth * tangent <= radius ? 2 * radius / tries : 0;
    }
    assertThat(hole.floorShare(angle)).isCloseTo((double) seen / tries, within(0.02));
    assertThat(hole.floorSeen(angle).metres()).isCloseTo(widest, within(2e-4 * radius + 1e-9));
    double wall = hole.wallSeen(angle).metres();
    assertThat(wall).isLessThanOrEqualTo(depth);
    if (wall < depth) {
      assertThat(wall * tangent).isCloseTo(2 * radius, within(1e-9));
    }
  }

  @Test
  void sees_everything_from_straight_in_front() {
    HoleView hole = new HoleView(new Length(1), new Length(3));
    assertThat(hole.wallSeen(Angle.ZERO).metres()).isEqualTo(3);
    assertThat(hole.floorShare(Angle.ZERO)).isCloseTo(1, within(1e-12));
  }

  @Test
  void refuses_a_hole_without_a_depth() {
    assertThatThrownBy(() -> new HoleView(new Length(1), Length.ZERO))
        .hasMessageContaining("depth of a hole");
  }
}
