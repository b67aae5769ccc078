package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.checks.CheckRow;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Against the rows ORB of geometry.csv, and laws that hold for every ring. */
final class RingTest {

  private static Ring ring(double distanceMillimetres, double elevationDegrees, int photos) {
    return new Ring(
        Length.ZERO,
        Length.ofMillimetres(distanceMillimetres),
        Angle.ofDegrees(elevationDegrees),
        photos);
  }

  @Test
  void counts_the_photographs_of_a_ring() {
    CheckRow row = CheckRow.of("ORB-01");
    row.agrees(Ring.photosFor(Angle.ofDegrees(row.in("step_deg"))));
    CheckRow three = CheckRow.of("ORB-02");
    three.agrees(three.in("rings") * Ring.photosFor(Angle.ofDegrees(three.in("step_deg"))));
    assertThat(Ring.photosFor(Angle.ofDegrees(15))).isEqualTo(24);
  }

  @Test
  void knows_its_real_turn() {
    CheckRow.of("ORB-03").agrees(ring(1, 0, 16).step().degrees());
    CheckRow.of("ORB-04").agrees(ring(200, 0, 120).step().degrees());
  }

  @Test
  void measures_the_way_between_stations() {
    CheckRow chord = CheckRow.of("ORB-05");
    chord.agrees(ring(chord.in("distance_mm"), 0, 120).chord().millimetres());
    Ring eight = ring(1000, 0, 15);
    assertThat(eight.step().degrees())
        .isCloseTo(CheckRow.of("ORB-06").in("step_deg"), within(1e-9));
    CheckRow.of("ORB-06").agrees(eight.chord().over(eight.distance()));
  }

  @Test
  void knows_the_height_of_the_lens() {
    CheckRow row = CheckRow.of("ORB-07");
    Ring ring =
        new Ring(
            Length.ofMillimetres(row.in("target_height_mm")),
            Length.ofMillimetres(row.in("distance_mm")),
            Angle.ofDegrees(row.in("elevation_deg")),
            1);
    row.agrees(ring.lensHeight().millimetres(), ring.floorDistance().millimetres());
  }

  @Test
  void places_a_lens_at_an_azimuth() {
    CheckRow row = CheckRow.of("ORB-08");
    Vec3 lens =
        ring(row.in("distance_mm"), row.in("elevation_deg"), 1)
            .positionAt(Angle.ofDegrees(row.in("azimuth_deg")))
            .times(1000);
    row.agrees(lens.x(), lens.y(), lens.z());
  }

  @Test
  void knows_that_lines_of_sight_draw_together_on_a_raised_ring() {
    CheckRow row = CheckRow.of("ORB-11");
    Ring any = ring(700, row.in("elevation_deg"), 1);
    Vec3 one = any.positionAt(Angle.ZERO);
    Vec3 other = any.positionAt(Angle.ofDegrees(row.in("step_deg")));
    row.agrees(one.angleTo(other).degrees());
    Ring thirty = ring(700, 45, 30);
    List<Station> stations = thirty.stations();
    assertThat(stations.get(0).view().angleTo(stations.get(1).view()).degrees())
        .isCloseTo(thirty.rayAngle().degrees(), within(1e-9));
  }

  @Test
  void counts_photographs_by_line_of_sight() {
    for (String id : List.of("ORB-13", "ORB-14")) {
      CheckRow row = CheckRow.of(id);
      row.agrees(
          Ring.photosForRays(
              Angle.ofDegrees(row.in("max_ray_angle_deg")),
              Angle.ofDegrees(row.in("elevation_deg"))));
    }
    assertThat(Ring.photosForRays(Angle.ofDegrees(30), Angle.ofDegrees(80))).isEqualTo(3);
  }

  @Test
  void starts_on_the_door_side_and_walks_to_the_right() {
    List<Station> stations = ring(1000, 0, 4).stations();
    assertThat(stations.get(0).position().y()).isCloseTo(-1, within(1e-12));
    assertThat(stations.get(1).position().x()).isCloseTo(1, within(1e-12));
    assertThat(stations).extracting(Station::number).containsExactly(1, 2, 3, 4);
  }

  @Test
  void refuses_a_ring_without_stations() {
    assertThatThrownBy(() -> ring(1000, 0, 0)).hasMessageContaining("photos must be at least 1");
    assertThatThrownBy(() -> ring(0, 0, 3)).hasMessageContaining("distance must be");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void every_station_stands_on_the_ring(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Ring ring =
        new Ring(
            new Length(random.nextDouble(0, 2)),
            new Length(Math.pow(10, random.nextDouble(-1, 2))),
            Angle.ofDegrees(random.nextDouble(-89, 89)),
            random.nextInt(1, 100));
    double walked = 0;
    for (Station station : ring.stations()) {
      Vec3 away = station.position().minus(ring.target());
      assertThat(away.norm()).isCloseTo(ring.distance().metres(), within(1e-9 * away.norm()));
      assertThat(station.lensHeight().metres())
          .isCloseTo(ring.lensHeight().metres(), within(1e-9 * (1 + away.norm())));
      walked += ring.step().radians();
    }
    assertThat(walked).isCloseTo(2 * Math.PI, within(1e-9));
  }
}
