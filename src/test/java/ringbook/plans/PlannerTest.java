package ringbook.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Box;
import ringbook.geometry.Patches;
import ringbook.geometry.Solid;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan.Shot;
import ringbook.units.Length;
import ringbook.units.Num;

/** What every plan must keep: reach, room, one chain, all that can be seen, the bound. */
final class PlannerTest {

  private static final int PATCHES = 500;

  static LongStream seeds() {
    return Scenes.seeds().limit(Long.getLong("seeds", 12));
  }

  private static Coverage coverage(Seeing seeing, Proposal proposal) {
    List<View> views = new ArrayList<>();
    for (Shot shot : proposal.plan().shots()) {
      views.add(seeing.look(Viewpoint.of(shot)));
    }
    return Coverage.of(seeing, views);
  }

  private static double well(Seeing seeing, Coverage coverage) {
    double in = 0;
    for (int i = 0; i < seeing.surface().count(); i++) {
      boolean well = coverage.patch(i).patchClass() == PatchClass.WELL;
      in += well ? seeing.surface().patches().area(i) : 0;
    }
    return in / seeing.surface().patches().area();
  }

  private static Reach reach(Seeing seeing) {
    Patches patches = seeing.surface().patches();
    double radius = 0;
    double top = 0;
    for (int i = 0; i < patches.count(); i++) {
      radius = Math.max(radius, Num.hypot(patches.x(i), patches.y(i)));
      top = Math.max(top, patches.z(i));
    }
    return Reach.of(seeing.scene(), radius, top);
  }

  private static void keepsToTheRules(Seeing seeing, Proposal proposal) {
    Reach reach = reach(seeing);
    assertThat(proposal.plan().shots())
        .allSatisfy(
            shot ->
                assertThat(reach.holds(shot.station().position())).as(shot.leg().name()).isTrue());
    assertThat(proposal.bound()).isBetween(0, proposal.plan().photos());
    assertThat(proposal.reachable()).isBetween(0.0, 1.0);
    canBeSaid(proposal);
  }

  @Test
  void plans_the_pot_as_one_chain_that_sees_all_that_can_be_seen() {
    Seeing seeing = Things.seeing(Scenes.pot(), Things.pot(), PATCHES);
    Proposal proposal = Planner.plan(seeing, Reckoning.of(seeing.scene())).orElseThrow();
    keepsToTheRules(seeing, proposal);
    Coverage coverage = coverage(seeing, proposal);
    assertThat(coverage.graph().pieces()).hasSize(1);
    assertThat(well(seeing, coverage)).isGreaterThan(proposal.reachable() - 0.01);
    // The course's own six rings and five views over the top have 185.
    assertThat(proposal.plan().photos()).isBetween(proposal.bound(), 95);
    assertThat(coverage.graph().splitters()).hasSizeGreaterThanOrEqualTo(2);
    assertThat(proposal.plan().legs().get(0).kind()).isEqualTo(Leg.Kind.RING);
    assertThat(proposal.plan().legs().stream().map(Leg::name)).doesNotHaveDuplicates();
    int uneven = 0;
    for (Leg leg : proposal.plan().legs()) {
      uneven += leg.why().contains("in the steps of the table") ? leg.photos() : 0;
    }
    assertThat(uneven).as("photographs without one step").isLessThan(proposal.plan().photos() / 3);
  }

  /** What a trainer can say: places, no "extras"; one photograph alone only by what it shows. */
  private static void canBeSaid(Proposal proposal) {
    for (Leg leg : proposal.plan().legs()) {
      assertThat(leg.name()).matches("(ring|sparse ring|arc|strip|top|underside|close-up|view).*");
      assertThat(leg.name()).as("told apart by words").doesNotMatch(".* \\d+");
      if (leg.stations().size() == 1) {
        assertThat(leg.name()).matches("(close-up|view) of the .*");
      }
      if (leg.kind() == Leg.Kind.STRIP) {
        assertThat(leg.stations())
            .isSortedAccordingTo((a, b) -> Double.compare(a.position().z(), b.position().z()));
      }
      assertThat(leg.why())
          .startsWith(leg.name().substring(0, 1).toUpperCase(java.util.Locale.ROOT));
      assertThat(leg.why()).endsWith(".");
    }
  }

  @Test
  void leaves_out_what_walls_and_furniture_block() {
    Scene scene = Things.in(Scenes.pot(), Things.demoRoom());
    Seeing seeing = Things.seeing(scene, Things.pot(), PATCHES);
    Proposal proposal = Planner.plan(seeing, Reckoning.of(scene)).orElseThrow();
    keepsToTheRules(seeing, proposal);
    assertThat(coverage(seeing, proposal).graph().pieces()).hasSize(1);
    Seeing open = Things.seeing(Scenes.pot(), Things.pot(), PATCHES);
    Proposal free = Planner.plan(open, Reckoning.of(open.scene())).orElseThrow();
    assertThat(free.plan().legs().get(0).photos())
        .isGreaterThanOrEqualTo(proposal.plan().legs().get(0).photos());
  }

  @Test
  void gives_the_same_plan_again() {
    Seeing seeing = Things.seeing(Scenes.pot(), Things.pot(), 200);
    Reckoning reckoning = Reckoning.of(seeing.scene());
    Proposal one = Planner.plan(seeing, reckoning).orElseThrow();
    Proposal again = Planner.plan(seeing, reckoning).orElseThrow();
    assertThat(again.plan()).isEqualTo(one.plan());
    assertThat(again.proof()).isEqualTo(one.proof());
    for (int i = 0; i < one.views().size(); i++) {
      assertThat(one.views().get(i).viewpoint()).isEqualTo(Viewpoint.of(one.plan().shots().get(i)));
    }
  }

  @Test
  void a_second_pose_sees_the_underside() {
    Scene scene = Scenes.with(Scenes.pot(), "aim.poses", "2");
    Solid box = box(0.25, 0.3);
    Seeing one = Things.seeing(Scenes.with(scene, "aim.poses", "1"), box, 200);
    Seeing two = Things.seeing(scene, box, 200);
    Proposal first = Planner.plan(one, Reckoning.of(one.scene())).orElseThrow();
    Proposal both = Planner.plan(two, Reckoning.of(scene)).orElseThrow();
    keepsToTheRules(two, both);
    assertThat(first.reachable()).isLessThan(0.95);
    assertThat(both.reachable()).isGreaterThan(first.reachable() + 0.05);
    assertThat(well(two, coverage(two, both))).isGreaterThan(first.reachable() + 0.05);
    assertThat(coverage(two, both).graph().pieces()).hasSize(1);
  }

  private static Solid box(double width, double height) {
    return new Box(new Length(width), new Length(width), new Length(height));
  }

  /** Rooms with a wall somewhere and an object of some size, as drawn. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void keeps_to_reach_and_room_in_every_scene(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double width = 0.05 + 0.3 * random.nextDouble();
    double height = 0.05 + 0.4 * random.nextDouble();
    Scene drawn =
        Scenes.with(
            Scenes.pot(),
            "subject.width",
            String.valueOf(100 * width),
            "subject.height",
            String.valueOf(100 * height),
            "place.highestLens",
            String.valueOf(120 + 80 * random.nextDouble()),
            "aim.stepLimit",
            String.valueOf(12 + 12 * random.nextDouble()));
    double at = 0.4 + random.nextDouble();
    Scene scene =
        Things.in(
            drawn, List.of(Things.box("wall", at, -3, at + 0.2, 6 * random.nextDouble() - 2)));
    Seeing seeing = Things.seeing(scene, box(width, height), 120);
    Optional<Proposal> found = Planner.plan(seeing, Reckoning.of(scene));
    assumeThat(found).isPresent();
    keepsToTheRules(seeing, found.get());
    double well = well(seeing, coverage(seeing, found.get()));
    assertThat(found.get().seen()).isCloseTo(well, within(1e-9));
    assertThat(well).isGreaterThan(0.9 * found.get().reachable());
  }

  @Test
  void says_why_there_is_no_plan() {
    Reckoning fine = Reckoning.of(Scenes.with(Scenes.pot(), "aim.stepLimit", "3"));
    assertThat(Planner.refusal(fine).orElseThrow().help())
        .isEqualTo("a step limit of 6° or more can be planned");
    assertThat(Planner.refusal(Reckoning.of(Scenes.pot()))).isEmpty();
  }
}
