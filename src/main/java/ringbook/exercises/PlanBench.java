package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.ledger.Reckoning;
import ringbook.plans.WrittenPlan;
import ringbook.shots.Pose;

/**
 * Judges the plans of one exercise and keeps what all of them need, scene by scene: the surface,
 * what of it can be seen, and which plan of the author is the model there. Not for use by several
 * threads.
 */
final class PlanBench {

  /** Scenes that are kept, some megabytes each; variants of one exercise have few more. */
  private static final int KEPT = 8;

  private final List<WrittenPlan> plans;
  private final double covered;
  private final List<Bench> kept = new ArrayList<>();
  private Optional<Checked> last = Optional.empty();

  PlanBench(List<WrittenPlan> plans, double covered) {
    this.plans = List.copyOf(plans);
    this.covered = covered;
  }

  /**
   * A plan of the author with what it comes to.
   *
   * @param plan as written
   * @param check judged on the scene
   */
  record Model(WrittenPlan plan, PlanCheck check) {}

  private record Bench(
      PlanGround ground, Optional<Model> model, Optional<Model> best, String reason) {}

  private record Checked(PlanGround ground, String plan, PlanCheck check) {}

  /** The first plan of the author that passes on the scene. */
  Optional<Model> model(Reckoning reckoning) {
    return bench(reckoning).model();
  }

  /** The same; where none passes, the one that shows most. */
  Optional<Model> best(Reckoning reckoning) {
    return bench(reckoning).best();
  }

  /** Why no plan of the author passes; empty if one does. */
  String reason(Reckoning reckoning) {
    return bench(reckoning).reason();
  }

  PlanCheck check(WrittenPlan plan, Reckoning reckoning) {
    PlanGround ground = bench(reckoning).ground();
    String text = plan.text();
    if (last.isEmpty() || last.get().ground() != ground || !last.get().plan().equals(text)) {
      last = Optional.of(new Checked(ground, text, PlanJudge.check(ground, plan, covered)));
    }
    return last.get().check();
  }

  private Bench bench(Reckoning reckoning) {
    for (Bench bench : kept) {
      if (bench.ground().reckoning() == reckoning
          || bench.ground().reckoning().scene().equals(reckoning.scene())) {
        return bench;
      }
    }
    Bench bench = made(reckoning, PlanGround.PATCHES);
    if (kept.size() == KEPT) {
      kept.remove(0);
    }
    kept.add(bench);
    return bench;
  }

  private Bench made(Reckoning reckoning, int patches) {
    List<WrittenPlan> tried = plans.isEmpty() ? LedgerPlans.of(reckoning) : plans;
    PlanGround ground = new PlanGround(reckoning, isTurned(tried), patches);
    Optional<Model> best = Optional.empty();
    String reason = "";
    for (WrittenPlan plan : tried) {
      Model model = new Model(plan, PlanJudge.check(ground, plan, covered));
      if (model.check().passes()) {
        return new Bench(ground, Optional.of(model), Optional.of(model), "");
      }
      if (best.isEmpty() || model.check().shown() > best.get().check().shown()) {
        reason = best.isEmpty() || plans.isEmpty() ? model.check().lacks().get(0).words() : reason;
        best = Optional.of(model);
      }
    }
    return new Bench(ground, Optional.empty(), best, reason);
  }

  private static boolean isTurned(List<WrittenPlan> plans) {
    return plans.stream()
        .flatMap(plan -> plan.runs().stream())
        .anyMatch(run -> run.pose() == Pose.TURNED_OVER);
  }

  /** The same plan on a surface cut into so many patches, to see whether the verdict is stable. */
  PlanCheck check(WrittenPlan plan, Reckoning reckoning, int patches) {
    return PlanJudge.check(made(reckoning, patches).ground(), plan, covered);
  }
}
