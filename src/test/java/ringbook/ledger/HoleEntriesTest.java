package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.shots.Scene;

/** The three kinds of hole of a strawberry pot. */
final class HoleEntriesTest {

  private static Reckoning hole(String diameter, String depth, String tilt) {
    Scene scene =
        Scenes.with(
            Scenes.pot(),
            "subject.holeDiameter",
            diameter,
            "subject.holeDepth",
            depth,
            "subject.holeTilt",
            tilt);
    return Reckoning.of(scene);
  }

  @Test
  void a_deep_open_pot_is_seen_from_above_and_not_from_the_ring() {
    Reckoning r = hole("24", "33", "90");
    assertThat(r.yes("hole.oneEnd")).isTrue(); // 24 cm · tan 60° = 41.6 cm
    assertThat(r.yes("hole.ringFloor")).isFalse();
    assertThat(r.text("hole.floorMiddle")).isEqualTo("20°"); // atan(12 / 33) = 19.98°
    assertThat(r.text("hole.ringWall")).isEqualTo("6.43\u00a0cm"); // 24 cm · tan 15°
  }

  @Test
  void a_side_pocket_is_seen_from_a_ring_at_its_own_tilt() {
    Reckoning r = hole("6", "8", "30");
    assertThat(r.yes("hole.ringFloor")).isTrue(); // 15° against atan(3 / 8) = 20.6°
    assertThat(r.text("hole.wallSeen")).isEqualTo("8\u00a0cm");
  }

  @Test
  void a_narrow_drain_needs_more_than_its_two_ends() {
    Reckoning r = hole("1", "4", "-90");
    assertThat(r.yes("hole.oneEnd")).isFalse(); // 1 cm · tan 60° = 1.73 cm
    assertThat(r.yes("hole.twoEnds")).isFalse(); // 3.46 cm of 4 cm
    assertThat(r.text("hole.ringWall")).isEqualTo("0\u00a0cm");
  }
}
