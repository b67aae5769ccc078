package ringbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.shots.Scene;
import ringbook.shots.SceneDraft;
import ringbook.units.Length;

/** What is in the way, worked out by hand for simple rooms, and laws for all. */
final class RoomEntriesTest {

  private static Obstacle box(double left, double front, double right, double back) {
    return new Obstacle(
        "box", List.of(at(left, front), at(right, front), at(right, back), at(left, back)));
  }

  private static Corner at(double x, double y) {
    return new Corner(new Length(x), new Length(y));
  }

  private static Reckoning room(Scene scene, Obstacle... obstacles) {
    return Reckoning.of(SceneDraft.of(scene).obstacles(List.of(obstacles)).build());
  }

  private static double degrees(Reckoning r, String key) {
    return Math.toDegrees(r.si(key));
  }

  @Test
  void a_wall_behind_the_ring_costs_the_arc_before_it() {
    double y = 0.6;
    Reckoning r = room(Scenes.pot(), box(-9, y, 9, y + 0.1));
    double needed = r.si("ring.floorDistance") + 0.4;
    double half = Math.toDegrees(Math.acos(y / needed));
    assertThat(degrees(r, "room.blockedArc")).isCloseTo(2 * half, within(1e-9));
    // Stations stand every 12° from the door side; the wall is opposite station 16.
    double lost = 1 + 2 * Math.floor(half / 12);
    assertThat(r.si("room.stationsLost")).isEqualTo(lost);
    assertThat(degrees(r, "room.gapTurn")).isCloseTo(12 * (lost + 1), within(1e-9));
    assertThat(r.yes("room.closes")).isFalse();
    assertThat(r.si("room.free")).isCloseTo(0.2, within(1e-12));
    assertThat(r.si("room.gapMatchable")).isLessThan(0.01);
  }

  @Test
  void two_pieces_of_furniture_count_together_and_apart() {
    Reckoning r = room(Scenes.pot(), box(0.7, -0.1, 0.9, 0.1), box(-0.9, -0.1, -0.7, 0.1));
    double one = 2 * Math.toDegrees(Math.atan2(0.1, 0.7));
    assertThat(degrees(r, "room.blockedArc")).isCloseTo(2 * one, within(1e-9));
    assertThat(degrees(r, "room.widestBlock")).isCloseTo(one, within(1e-9));
    assertThat(r.si("room.wider")).isCloseTo(r.si("room.standing"), within(1e-12));
    assertThat(r.yes("room.widerFree")).isTrue();
  }

  @Test
  void a_wider_ring_may_meet_the_next_wall() {
    Reckoning r = room(Scenes.pot(), box(0.7, -0.4, 1.5, 0.4), box(-9, 1.6, 9, 1.7));
    assertThat(r.si("room.wider")).isCloseTo(Math.hypot(1.5, 0.4), within(1e-12));
    assertThat(r.yes("room.widerFree")).isFalse();
    assertThat(r.si("room.widerLoss")).isGreaterThan(2);
  }

  @Test
  void says_so_where_no_station_is_free() {
    List<Obstacle> walls = new ArrayList<>();
    walls.add(box(-0.5, -0.5, 0.5, 0.5));
    Reckoning r = room(Scenes.pot(), walls.get(0));
    assertThat(r.of("room.gapTurn"))
        .isEqualTo(
            new Outcome.Refused(
                "no station of this ring is free",
                "move the table, or turn the object on a turntable before a plain background"));
    assertThat(r.yes("room.turntable")).isFalse();
    assertThat(r.of("room.raised")).isInstanceOf(Outcome.Refused.class);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_raised_ring_is_just_free(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning plain = Reckoning.of(scene);
    double body = plain.si("place.bodyRoom");
    double near = body + plain.si("ring.radius") * 0.7;
    Reckoning r = room(scene, box(-near, near, near, near + 1));
    double elevation = r.si("room.raised");
    assertThat(r.si("ring.radius") * Math.cos(elevation) + body)
        .isCloseTo(near, within(1e-9 * near));
  }
}
