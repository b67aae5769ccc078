package ringbook.assess.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.assess.HoleView;
import ringbook.geometry.Plate;
import ringbook.geometry.Solid;
import ringbook.geometry.Tube;
import ringbook.geometry.Vec3;
import ringbook.shots.Aim.Hold;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.Station;
import ringbook.shots.Strip;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * How deep the rays look into a hole from far away, against {@link HoleView}. A round hole is cut
 * into slices along the line of sight: each is as wide as its chord, and seen as the closed form
 * says of a slot that wide.
 */
final class HoleDepthTest {

  private static final double RADIUS = 0.02;
  private static final double DEPTH = 0.03;
  private static final Length FAR = new Length(60);

  /** Wall and floor of a pocket, as numbers of patches. */
  private record Parts(List<Integer> wall, List<Integer> floor) {}

  private static Plate plate(List<Plate.Hole> holes, List<Plate.Pocket> pockets) {
    Length side = Length.ofCentimetres(12);
    return new Plate(side, side, Length.ofCentimetres(4), holes, pockets);
  }

  private static Plate pocket(double tiltDegrees) {
    return plate(
        List.of(),
        List.of(
            new Plate.Pocket(
                Length.ZERO,
                Length.ZERO,
                new Length(2 * RADIUS),
                new Length(DEPTH),
                Angle.ofDegrees(tiltDegrees),
                Angle.ofDegrees(90))));
  }

  private static Seeing seeing(Solid solid, int patches) {
    return Before.seeing(Before.open(solid, "60"), solid, patches);
  }

  private static Parts parts(Seeing seeing, Vec3 axis) {
    Parts parts = new Parts(new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i < seeing.surface().count(); i++) {
      String part = seeing.surface().patches().parts().get(seeing.surface().patches().part(i));
      if (part.startsWith("hole") || part.startsWith("pocket")) {
        boolean floor = seeing.surface().patches().normal(i).dot(axis) > 0.9;
        (floor ? parts.floor() : parts.wall()).add(i);
      }
    }
    return parts;
  }

  private static double seen(Seeing seeing, View view, List<Integer> of) {
    double in = 0;
    double all = 0;
    for (int i : of) {
      double area = seeing.surface().patches().area(i);
      all += area;
      in += view.look(i).inPicture() ? area : 0;
    }
    return in / all;
  }

  /** At an angle to the axis, looking across the way that it leans. */
  private static View across(Seeing seeing, Vec3 axis, double degrees) {
    double theta = Math.toRadians(degrees);
    Vec3 to = axis.times(Math.cos(theta)).plus(new Vec3(Math.sin(theta), 0, 0));
    return seeing.look(
        Before.towards(
            seeing,
            new Angle(Math.atan2(to.y(), to.x())),
            new Angle(Math.asin(to.z())),
            FAR.metres()));
  }

  private static Vec3 axis(double tiltDegrees) {
    double tilt = Math.toRadians(tiltDegrees);
    return new Vec3(0, Math.sin(tilt), Math.cos(tilt));
  }

  /** The slice at {@code y} beside the axis; a slanted mouth makes one side deeper. */
  private static HoleView slice(double y, double chord, double depth, double tiltDegrees) {
    double deep = depth + y * Math.tan(Math.toRadians(tiltDegrees));
    return new HoleView(new Length(chord), new Length(deep));
  }

  private static double wallShare(double degrees, double radius, double depth, double tilt) {
    int steps = 2000;
    double sum = 0;
    for (int k = 0; k < steps; k++) {
      double turn = Math.PI * ((k + 0.5) / steps - 0.5);
      HoleView slice = slice(radius * Math.sin(turn), 2 * radius * Math.cos(turn), depth, tilt);
      sum += slice.wallSeen(Angle.ofDegrees(degrees)).metres() / steps;
    }
    return sum / (2 * depth);
  }

  private static double floorShare(double degrees, double tilt) {
    int steps = 2000;
    double sum = 0;
    for (int k = 0; k < steps; k++) {
      double y = RADIUS * (2 * (k + 0.5) / steps - 1);
      HoleView slice = slice(y, 2 * Math.sqrt(RADIUS * RADIUS - y * y), DEPTH, tilt);
      sum += slice.floorSeen(Angle.ofDegrees(degrees)).metres() * 2 * RADIUS / steps;
    }
    return sum / (Math.PI * RADIUS * RADIUS);
  }

  @ParameterizedTest(name = "leaning {0}°, looked at {1}° off its axis")
  @CsvSource({"0, 15", "0, 35", "0, 50", "30, 10", "30, 25", "30, 45"})
  void wall_and_floor_of_a_pocket(double tilt, double degrees) {
    Seeing seeing = seeing(pocket(tilt), 20_000);
    Parts parts = parts(seeing, axis(tilt));
    View view = across(seeing, axis(tilt), degrees);
    assertThat(seen(seeing, view, parts.wall()))
        .isCloseTo(wallShare(degrees, RADIUS, DEPTH, tilt), within(0.012));
    double floor = floorShare(degrees, tilt);
    assertThat(seen(seeing, view, parts.floor())).isCloseTo(floor, within(0.012));
    if (tilt == 0) {
      HoleView hole = new HoleView(new Length(2 * RADIUS), new Length(DEPTH));
      assertThat(hole.floorShare(Angle.ofDegrees(degrees))).isCloseTo(floor, within(1e-4));
    }
  }

  /** The more patches, the nearer; over 16 angles, as one alone may be right by luck. */
  @Test
  void the_wall_of_a_through_hole_comes_nearer_with_more_patches() {
    Plate plate =
        plate(List.of(new Plate.Hole(Length.ZERO, Length.ZERO, new Length(0.06))), List.of());
    int[] numbers = {600, 2400, 9600};
    double[] errors = new double[numbers.length];
    for (int k = 0; k < numbers.length; k++) {
      Seeing seeing = seeing(plate, numbers[k]);
      List<Integer> wall = parts(seeing, Vec3.UP).wall();
      for (int a = 0; a < 16; a++) {
        double degrees = 20 + 3.1 * a;
        double share = seen(seeing, across(seeing, Vec3.UP, degrees), wall);
        double off = share - wallShare(degrees, 0.03, 0.04, 0);
        errors[k] += off * off / 16;
      }
      errors[k] = Math.sqrt(errors[k]);
    }
    double order = Math.log(errors[0] / errors[2]) / Math.log(16);
    String found = "errors " + List.of(errors[0], errors[1], errors[2]);
    assertThat(errors[2]).as(found).isLessThan(0.01);
    assertThat(order)
        .as("%s, order %.2f in the number of patches", found, order)
        .isBetween(0.4, 1.1);
  }

  /**
   * Rows by thirds from both ends, slanted into the hole from eight sides, cover a hole twice as
   * deep as wide; those of one end cover part of it, and rings round the outside next to nothing.
   * Common practice, no source.
   */
  @Test
  void rows_by_thirds_from_both_ends_cover_a_through_hole() {
    Tube tube =
        new Tube(Length.ofCentimetres(20), Length.ofCentimetres(11), Length.ofCentimetres(22));
    Seeing whole = seeing(tube, 6000);
    Seeing hole = whole.only(hole(whole));
    List<View> rings = new ArrayList<>(Before.ring(hole, 1, 0, 30));
    rings.addAll(Before.ring(hole, 1, 15, 30));
    List<View> one = rows(hole, Pose.STANDING);
    List<View> both = new ArrayList<>(one);
    both.addAll(rows(hole, Pose.TURNED_OVER));
    double outside = Coverage.of(hole, rings).share(PatchClass.Group.WELL);
    double fromOne = Coverage.of(hole, one).share(PatchClass.Group.WELL);
    double fromBoth = Coverage.of(hole, both).share(PatchClass.Group.WELL);
    assertThat(fromBoth)
        .as("well seen: rings %.2f, one end %.2f, both %.2f", outside, fromOne, fromBoth)
        .isGreaterThan(0.95);
    assertThat(fromOne).isBetween(0.4, 0.8);
    assertThat(outside).isLessThan(0.15);
  }

  private static int[] hole(Seeing seeing) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < seeing.surface().count(); i++) {
      String part = seeing.surface().patches().parts().get(seeing.surface().patches().part(i));
      if (part.startsWith("hole")) {
        found.add(i);
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  private static List<View> rows(Seeing seeing, Pose pose) {
    Length standoff = new Length(1);
    Strip strip = new Strip(Length.ofCentimetres(45), 2.0 / 3, Length.ofCentimetres(20));
    Leg.Setup setup = new Leg.Setup(pose, Hold.UPRIGHT, standoff, 1);
    List<View> views = new ArrayList<>();
    for (int side = 0; side < 8; side++) {
      Vec3 outwards = Vec3.towards(Angle.ofDegrees(45 * side), Angle.ofDegrees(54));
      Vec3 along = outwards.cross(Vec3.UP).unit();
      Strip.Row row =
          new Strip.Row(seeing.middle(), along, outwards, standoff, (int) strip.fewest() + 2);
      for (Station station : strip.stations(row)) {
        views.add(seeing.look(new Viewpoint(station, setup)));
      }
    }
    return views;
  }
}
