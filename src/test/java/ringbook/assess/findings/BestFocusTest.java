package ringbook.assess.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ringbook.Scenes;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Cylinder;
import ringbook.geometry.Tube;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.ShotPlan;
import ringbook.units.Length;

/** A new focus never parts what hung together and never costs what was seen well. */
final class BestFocusTest {

  @Test
  void a_new_focus_breaks_no_chain_and_loses_nothing() {
    int changed = 0;
    for (int seed = 0; seed < 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Plans plans = new Plans(Scenes.pot());
      for (int i = 0; i < 3; i++) {
        double times = random.nextInt(3) == 0 ? random.nextDouble(0.6, 1.2) : 1;
        int photos = random.nextInt(22, 28);
        plans.ring(13 * i + random.nextInt(-3, 4), photos, Pose.STANDING, times);
      }
      Seeing seeing =
          plans.seeing(
              random.nextBoolean()
                  ? new Cylinder(Length.ofCentimetres(30), Length.ofCentimetres(36))
                  : new Tube(
                      Length.ofCentimetres(30), Length.ofCentimetres(22), Length.ofCentimetres(15)),
              500);
      changed += changed(seeing, plans.plan());
    }
    assertThat(changed).as("legs focused anew").isGreaterThan(10);
  }

  /** How many legs are focused anew, each held against the set as it was. */
  private static int changed(Seeing seeing, ShotPlan plan) {
    List<View> all = new ArrayList<>();
    plan.shots().forEach(shot -> all.add(seeing.look(Viewpoint.of(shot))));
    Coverage before = Coverage.of(seeing, all);
    BestFocus search = new BestFocus(seeing);
    int changed = 0;
    int first = 0;
    for (Leg leg : plan.legs()) {
      List<View> views = List.copyOf(all.subList(first, first + leg.photos()));
      Optional<Length> best = search.instead(all, views);
      if (best.isPresent()) {
        changed++;
        List<View> now = new ArrayList<>(all);
        for (int k = 0; k < views.size(); k++) {
          now.set(first + k, seeing.focused(views.get(k), best.get()));
        }
        Coverage after = Coverage.of(seeing, now);
        assertThat(after.graph().pieces().size())
            .isLessThanOrEqualTo(before.graph().pieces().size());
        assertThat(after.share(Group.WELL)).isGreaterThanOrEqualTo(before.share(Group.WELL) - 1e-9);
      }
      first += leg.photos();
    }
    return changed;
  }
}
