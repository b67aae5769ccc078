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

/** Legs, rows and poses. */
final class ShotPlanTest {

  private static final Leg.Setup SETUP =
      new Leg.Setup(Pose.STANDING, Aim.Hold.UPRIGHT, Length.ofCentimetres(50), 2);
  private static final Ring RING =
      new Ring(Length.ofMetres(1), Length.ofMetres(0.5), Angle.ZERO, 8);

  static java.util.stream.LongStream seeds() {
    return ringbook.Scenes.seeds();
  }

  @Test
  void counts_stations_and_the_photographs_taken_there() {
    Leg one = Leg.of(RING, "ring A", SETUP, "Eight.");
    ShotPlan plan = new ShotPlan(List.of(one, Leg.of(RING, "ring B", SETUP, "Eight more.")));
    assertThat(one.photos()).isEqualTo(16);
    assertThat(plan.photos()).isEqualTo(32);
    assertThat(plan.shots()).hasSize(16);
    assertThat(plan.shots().get(8).leg().name()).isEqualTo("ring B");
    assertThat(plan.legsOf(Pose.TURNED_OVER)).isEmpty();
  }

  @Test
  void refuses_two_legs_of_one_name_and_stations_out_of_count() {
    Leg one = Leg.of(RING, "ring A", SETUP, "Eight.");
    assertThatThrownBy(() -> new ShotPlan(List.of(one, one)))
        .hasMessage("two legs are called ring A");
    List<Station> twice = List.of(RING.stations().get(4), RING.stations().get(4));
    assertThatThrownBy(() -> new Leg("ring A", Leg.Kind.RING, SETUP, twice, ""))
        .hasMessage("numbers of ring A must rise, got 5 after 5");
    assertThatThrownBy(() -> new Leg("ring A", Leg.Kind.RING, SETUP, List.of(), ""))
        .hasMessageContaining("stations of a leg must be at least 1");
  }

  @Test
  void turns_the_object_over_about_its_middle() {
    Vec3 middle = new Vec3(0, 0, 0.9);
    assertThat(Pose.TURNED_OVER.place(new Vec3(0.1, 0.2, 1), middle))
        .isEqualTo(new Vec3(0.1, -0.2, 0.8));
    assertThat(Pose.STANDING.place(new Vec3(0.1, 0.2, 1), middle).z()).isCloseTo(1, within(1e-15));
    assertThat(Pose.TURNED_OVER.turn(Vec3.UP).z()).isEqualTo(-1);
  }

  /** Counting the frames that hold a spot, for spots all along the face. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void holds_every_spot_of_a_face_in_two_frames_of_the_row(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Length footprint = Length.ofMetres(0.1 + random.nextDouble());
    Length face = Length.ofMetres(0.05 + 5 * random.nextDouble());
    Strip strip = new Strip(footprint, 0.5 + 0.45 * random.nextDouble(), face);
    Vec3 along = Vec3.towards(new Angle(7 * random.nextDouble()), Angle.ZERO);
    Vec3 outwards = along.cross(Vec3.UP);
    Vec3 middle = new Vec3(random.nextDouble(), random.nextDouble(), 1);
    int frames = (int) strip.twice().orElseThrow();
    List<Station> row =
        strip.stations(new Strip.Row(middle, along, outwards, Length.ofMetres(0.4), frames));
    assertThat(row).hasSize(frames);
    for (int i = 0; i <= 40; i++) {
      Vec3 spot = middle.plus(along.times((i / 40.0 - 0.5) * face.metres()));
      long held =
          row.stream()
              .filter(
                  s ->
                      Math.abs(s.target().minus(spot).dot(along))
                          <= footprint.metres() / 2 * (1 + 1e-9))
              .count();
      assertThat(held).isGreaterThanOrEqualTo(2);
    }
    assertThat(row.get(0).position().minus(row.get(0).target()).norm())
        .isCloseTo(0.4, within(1e-12));
    assertThat(row.get(0).view().dot(outwards)).isCloseTo(-1, within(1e-12));
  }
}
