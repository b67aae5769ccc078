package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.View;
import ringbook.assess.findings.BestFocus;
import ringbook.shots.Leg;
import ringbook.shots.ShotPlan;
import ringbook.units.Length;
import ringbook.units.Lengths;

/**
 * Focuses the runs of a written plan as a sensible person would, who locks the focus once a run:
 * where the usual distance leaves much of a run blurred, at the distance the findings advise. The
 * notation has no word for focus, so no plan may fail for it.
 */
final class PlanFocus {

  private PlanFocus() {}

  /**
   * A plan focused anew.
   *
   * @param coverage what it sees then
   * @param runs which runs and at which distance, in words: "ring C at 38 cm"
   */
  record Anew(Coverage coverage, List<String> runs) {}

  /**
   * What the plan sees then.
   *
   * @param plan of which all photographs can be taken
   * @param usual what it sees at the usual focus
   */
  static Anew set(ShotPlan plan, Coverage usual) {
    BestFocus search = new BestFocus(usual.seeing());
    List<View> views = new ArrayList<>(usual.views());
    List<String> runs = new ArrayList<>();
    Lengths lengths = usual.seeing().scene().aim().lengths();
    int first = 0;
    for (Leg leg : plan.legs()) {
      int end = first + leg.photos();
      Optional<Length> best = search.instead(views, List.copyOf(views.subList(first, end)));
      for (int k = first; best.isPresent() && k < end; k++) {
        views.set(k, usual.seeing().focused(views.get(k), best.get()));
      }
      best.ifPresent(f -> runs.add(leg.name() + " at " + lengths.roughly(f.metres())));
      first = end;
    }
    return new Anew(Coverage.of(usual.seeing(), views), runs);
  }
}
