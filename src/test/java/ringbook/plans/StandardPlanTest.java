package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;
import ringbook.shots.ShotPlan.Shot;
import ringbook.shots.Station;
import ringbook.units.Whole;

/** The plan laid out as stations says what the ledger says in numbers. */
final class StandardPlanTest {

  static LongStream seeds() {
    return Scenes.seeds();
  }

  private static int photos(List<Leg> legs, Leg.Kind kind) {
    return legs.stream().filter(leg -> leg.kind() == kind).mapToInt(Leg::photos).sum();
  }

  @Test
  void lays_the_pot_out_as_six_rings_and_five_views_over_the_top() {
    ShotPlan plan = StandardPlan.of(Reckoning.of(Scenes.pot())).orElseThrow();
    assertThat(plan.legs())
        .extracting(Leg::name)
        .containsExactly("ring A", "ring B", "ring C", "ring D", "ring E", "ring F", "top");
    assertThat(plan.legs()).extracting(Leg::photos).containsExactly(30, 30, 30, 30, 30, 30, 5);
    assertThat(plan.legs().get(0).why())
        .isEqualTo(
            "Ring A, 17° below: 30 photographs, 12° apart; the camera looks up from below the"
                + " middle.");
    assertThat(plan.legs().get(6).why())
        .isEqualTo(
            "Over the top: 5 photographs in an arc from one side of the highest ring to the"
                + " other.");
    Station top = plan.legs().get(6).stations().get(2);
    assertThat(top.position().x()).isCloseTo(0, within(1e-12));
    assertThat(top.position().y()).isCloseTo(0, within(1e-12));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void has_as_many_photographs_as_the_ledger_counts(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    Optional<ShotPlan> found = StandardPlan.of(reckoning);
    assertThat(found.isEmpty()).isEqualTo(StandardPlan.refusal(reckoning).isPresent());
    assumeThat(found).isPresent();
    List<Leg> standing = found.get().legsOf(Pose.STANDING);
    assertThat(photos(standing, Leg.Kind.RING)).isEqualTo((int) reckoning.si("rings.photos"));
    assertThat(photos(standing, Leg.Kind.TOP)).isEqualTo((int) reckoning.si("rings.topViews"));
    assertThat(standing).hasSize((int) reckoning.si("rings.count") + 1);
    int turned = found.get().legsOf(Pose.TURNED_OVER).stream().mapToInt(Leg::photos).sum();
    assertThat(turned)
        .isEqualTo((int) ((reckoning.si("aim.poses") - 1) * reckoning.si("pose.photos")));
    double spared = found.get().photos() * (1 + reckoning.si("aim.spare"));
    assertThat(Whole.up(spared)).isEqualTo(reckoning.si("job.photos"));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void keeps_the_distance_the_reach_and_the_spacing_of_the_ledger(long seed) {
    Scene scene = Scenes.random(seed);
    Reckoning reckoning = Reckoning.of(scene);
    Optional<ShotPlan> found = StandardPlan.of(reckoning);
    assumeThat(found).isPresent();
    double radius = reckoning.si("ring.radius");
    for (Shot shot : found.get().shots()) {
      Station station = shot.station();
      assertThat(station.target().minus(station.position()).norm())
          .isCloseTo(radius, within(1e-9 * radius));
    }
    for (Leg leg : found.get().legs()) {
      if (leg.kind() == Leg.Kind.RING) {
        double height = leg.stations().get(0).lensHeight().metres();
        double hair = 1e-9 * (radius + height);
        assertThat(height).isGreaterThan(scene.place().tableHeight().metres() - hair);
        assertThat(height)
            .isBetween(
                scene.place().lowestLens().metres() - hair,
                scene.place().highestLens().metres() + hair);
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void spreads_rings_and_top_views_no_wider_than_wanted(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    Optional<ShotPlan> found = StandardPlan.of(reckoning);
    assumeThat(found).isPresent();
    double widest = reckoning.si("aim.ringSpacing") * (1 + 1e-6);
    List<Leg> legs = found.get().legsOf(Pose.STANDING);
    for (int i = 1; i < legs.size(); i++) {
      Station before = legs.get(i - 1).stations().get(0);
      Station here = legs.get(i).stations().get(0);
      boolean straightOver = legs.get(i).kind() == Leg.Kind.TOP && legs.get(i).photos() == 1;
      if (!straightOver) {
        assertThat(before.view().angleTo(here.view()).radians()).isLessThanOrEqualTo(widest);
      }
    }
  }
}
