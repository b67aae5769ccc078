package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.ShotPlan;

/**
 * A plan judged: what its photographs see, and what is wrong.
 *
 * @param plan the plan
 * @param coverage of its stations, in the order of shooting
 * @param findings the gravest first
 */
public record Assessment(ShotPlan plan, Coverage coverage, List<Finding> findings) {

  public Assessment {
    findings = List.copyOf(findings);
  }

  /** Looks from every station of the plan and judges. */
  public static Assessment of(Seeing seeing, ShotPlan plan) {
    List<View> views = new ArrayList<>();
    for (ShotPlan.Shot shot : plan.shots()) {
      views.add(seeing.look(Viewpoint.of(shot)));
    }
    return of(seeing, plan, views);
  }

  /**
   * Judges what was looked at already.
   *
   * @param views one a shot of the plan, in its order
   */
  public static Assessment of(Seeing seeing, ShotPlan plan, List<View> views) {
    return of(plan, Coverage.of(seeing, views));
  }

  /**
   * Judges what was looked at and compared already.
   *
   * @param coverage of the shots of the plan, in its order
   */
  public static Assessment of(ShotPlan plan, Coverage coverage) {
    return new Assessment(plan, coverage, new Inspection(plan, coverage).findings());
  }
}
