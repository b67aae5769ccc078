package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.assess.findings.Reach;
import ringbook.ledger.Reckoning;
import ringbook.plans.PlanLayout;
import ringbook.plans.WrittenPlan;
import ringbook.problems.Position;
import ringbook.shots.SceneChanges;
import ringbook.shots.ShotPlan;

/** Plans from the ledger's numbers alone, for objects of which nobody has made a model plan. */
final class LedgerPlansTest {

  private static final PlanTask TASK =
      new PlanTask(
          List.of(), new PlanTerms(0.8, 1.5), new Wording("Why.", Position.ofFile("own.yaml")));

  static LongStream seeds() {
    Long one = Long.getLong("seed");
    return one != null ? LongStream.of(one) : LongStream.range(0, Long.getLong("seeds", 40));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void people_can_stand_at_every_place(long seed) {
    Reckoning reckoning = Reckoning.of(Scenes.random(seed));
    if (TASK.blur(reckoning).isPresent()) {
      return;
    }
    Reach reach = new Reach(reckoning.scene());
    for (WrittenPlan plan : LedgerPlans.of(reckoning)) {
      ShotPlan laid = new PlanLayout(reckoning).of(plan);
      for (ShotPlan.Shot shot : laid.shots()) {
        boolean low = shot.station().position().z() <= reach.highest();
        assertThat(!low || reach.holds(shot.station().position())).as(plan.text()).isTrue();
      }
    }
  }

  @Test
  void the_pot_of_the_demo_passes_with_it() {
    Reckoning pot = Reckoning.of(Scenes.pot());
    assertThat(TASK.isProved(pot)).as(TASK.modelWords(pot)).isTrue();
    assertThat(TASK.judge(TASK.answerText(pot), pot)).isEqualTo(new Verdict.Right());
    assertThat(TASK.judge("rings: 24 at 60°", pot)).isInstanceOf(Verdict.PlanOff.class);
  }

  @Test
  void rings_close_to_each_other_still_make_a_plan_that_can_be_read() {
    Reckoning close = Reckoning.of(Scenes.with(Scenes.pot(), "aim.ringSpacing", "1"));
    assertThat(LedgerPlans.of(close)).allMatch(plan -> plan.runs().size() <= 24);
  }

  @Test
  void a_room_without_rings_has_no_plan_and_says_so() {
    Reckoning high =
        Reckoning.of(
            SceneChanges.apply(Scenes.pot(), "place.lowestLens = 2.4 m, place.highestLens = 2.5 m")
                .scene()
                .orElseThrow());
    TASK.check(high);
    assertThat(TASK.unsolved(high)).isEmpty();
    assertThat(TASK.conditions(high)).startsWith("No plan can be laid out here: ");
    assertThat(TASK.answerText(high)).isEmpty();
    assertThat(TASK.judge("rings: 24 at 60°", high)).isInstanceOf(Verdict.Unreadable.class);
  }
}
