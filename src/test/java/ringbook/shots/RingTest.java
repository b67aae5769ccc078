package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Laws that hold for every ring; published values are in the table of geometry.csv. */
final class RingTest {

  private static Ring ring(double distanceMillimetres, double elevationDegrees, int photos) {
    return new Ring(
        Length.ZERO,
        Length.ofMillimetres(distanceMillimetres),
        Angle.ofDegrees(elevationDegrees),
        photos);
  }

  @Test
  void forgives_what_binary_fractions_add() {
    assertThat(Ring.photosFor(Angle.ofDegrees(15))).isEqualTo(24);
    assertThat(Ring.photosFor(Angle.ofDegrees(360 / 7.0))).isEqualTo(7);
  }

  @Test
  void keeps_at_least_three_photographs_on_a_steep_ring() {
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
  void stacks_rings_evenly_from_the_lowest_to_the_highest() {
    Ring ring = ring(1000, 0, 8);
    assertThat(ring.stack(Angle.ofDegrees(10), Angle.ofDegrees(70), 4))
        .extracting(one -> Math.rint(one.elevation().degrees() * 1e6) / 1e6)
        .containsExactly(10.0, 30.0, 50.0, 70.0);
    assertThat(ring.stack(Angle.ofDegrees(10), Angle.ofDegrees(70), 1))
        .extracting(one -> Math.rint(one.elevation().degrees() * 1e6) / 1e6)
        .containsExactly(10.0);
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
    List<Station> stations = ring.stations();
    if (stations.size() > 1) {
      assertThat(stations.get(0).view().angleTo(stations.get(1).view()).radians())
          .isCloseTo(ring.rayAngle().radians(), within(1e-9));
    }
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
