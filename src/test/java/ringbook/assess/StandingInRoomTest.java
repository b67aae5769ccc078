package ringbook.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.geometry.ArcSet;
import ringbook.shots.Place;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;
import ringbook.units.Angle;
import ringbook.units.Length;

/** A wall one metre off at 90° and a cupboard two metres off at 0°; all by hand. */
final class StandingInRoomTest {

  private static final Obstacle WALL = obstacle("wall", -5, 1, 5, 1, 5, 1.2, -5, 1.2);
  private static final Obstacle CUPBOARD = obstacle("cupboard", 2, -0.5, 3, -0.5, 3, 0.5, 2, 0.5);
  private static final Obstacle ROUND = obstacle("barrier", -4, -4, 4, -4, 4, 4, -4, 4);
  private static final Place ROOM = place(WALL, CUPBOARD);

  private static Obstacle obstacle(String name, double... xy) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Corner(new Length(xy[i]), new Length(xy[i + 1])));
    }
    return new Obstacle(name, corners);
  }

  private static Place place(Obstacle... obstacles) {
    Place plain = Scenes.pot().place();
    return new Place(
        plain.tableHeight(),
        plain.lowestLens(),
        plain.highestLens(),
        List.of(obstacles),
        plain.details());
  }

  @Test
  void both_cut_off_what_they_hide() {
    double wall = 2 * Math.acos(1 / 2.5);
    double cupboard = 2 * Math.atan(0.5 / 2);
    assertThat(Standing.blocked(ROOM, new Length(2.5)).total().radians())
        .isCloseTo(wall + cupboard, within(1e-9));
    assertThat(Standing.blocked(ROOM, new Length(0.9)).total()).isEqualTo(Angle.ZERO);
    assertThat(Standing.blocked(place(WALL, ROUND), new Length(0.9)).total().radians())
        .isCloseTo(2 * Math.PI, within(1e-12));
  }

  @Test
  void names_what_is_in_the_way() {
    Length reach = new Length(2.5);
    assertThat(Standing.inTheWay(ROOM, reach, Angle.ofDegrees(0))).containsExactly("cupboard");
    assertThat(Standing.inTheWay(ROOM, reach, Angle.ofDegrees(90))).containsExactly("wall");
    assertThat(Standing.inTheWay(ROOM, reach, Angle.ofDegrees(-90))).isEmpty();
    assertThat(Standing.inTheWay(ROOM, new Length(1.9), Angle.ofDegrees(0))).isEmpty();
    assertThat(Standing.inTheWay(place(WALL, ROUND), reach, Angle.ofDegrees(-90)))
        .containsExactly("barrier");
  }

  @Test
  void knows_the_nearest() {
    assertThat(Standing.nearestMetres(ROOM)).isEqualTo(1);
    assertThat(Standing.nearestMetres(place(CUPBOARD))).isEqualTo(2);
    assertThat(Standing.nearestMetres(place())).isInfinite();
  }

  @Test
  void goes_outside_all_that_comes_near() {
    double wall = Math.hypot(5, 1.2);
    assertThat(Standing.beyondMetres(ROOM, new Length(0.99))).isZero();
    assertThat(Standing.beyondMetres(ROOM, new Length(1))).isCloseTo(wall, within(1e-12));
    assertThat(Standing.beyondMetres(ROOM, new Length(5))).isCloseTo(wall, within(1e-12));
    assertThat(Standing.beyondMetres(place(CUPBOARD), new Length(2)))
        .isCloseTo(Math.hypot(3, 0.5), within(1e-12));
  }

  @Test
  void sees_whether_stepping_back_meets_something_new() {
    assertThat(isFree(0.5, 0.99)).isTrue();
    assertThat(isFree(0.5, 1)).isFalse();
    assertThat(isFree(1, 1.99)).isTrue();
    assertThat(isFree(1, 2)).isFalse();
    assertThat(isFree(2, 9)).isTrue();
  }

  private static boolean isFree(double reach, double farther) {
    return Standing.isFreeBeyond(ROOM, new Length(reach), new Length(farther));
  }

  @Test
  void stations_before_a_wall_cannot_be_used() {
    ArcSet blocked = Standing.blocked(ROOM, new Length(2.5));
    // -90°, 0°, 90°, 180°
    assertThat(Standing.usable(blocked, Angle.ofDegrees(-90), 4)).containsExactly(0, 3);
    assertThat(Standing.usable(ArcSet.NONE, Angle.ZERO, 3)).containsExactly(0, 1, 2);
    assertThat(Standing.usable(ArcSet.ALL, Angle.ZERO, 3)).isEmpty();
    assertThat(Standing.longestStep(List.of(), 3)).isZero();
  }

  /** A pole without width, seen from as high as the limit allows, is seen at the limit. */
  @Test
  void a_wall_seen_at_the_limit_is_seen() {
    Angle limit = Angle.ofDegrees(60);
    assertThat(SeenArc.halfWithin(Length.ZERO, new Length(1), limit, limit)).contains(Angle.ZERO);
    assertThat(SeenArc.shareOfBall(new Length(1), new Length(1))).isEmpty();
    assertThat(SeenArc.shareOfBall(new Length(1), new Length(2))).contains(0.25);
  }
}
