package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.findings.BestFocus;
import ringbook.units.Length;

/** Focuses legs elsewhere that a judge of the plan would find focused wrongly. */
final class Refocus {

  private final Seeing seeing;
  private final List<Bunch> legs;

  Refocus(Seeing seeing, List<Bunch> legs) {
    this.seeing = seeing;
    this.legs = legs;
  }

  /** Focuses the legs that are focused wrongly; says whether there were any. */
  boolean mend() {
    BestFocus search = new BestFocus(seeing);
    boolean mended = false;
    for (Bunch leg : legs) {
      List<View> all = new ArrayList<>();
      legs.forEach(other -> all.addAll(Candidate.views(other.members())));
      Optional<Length> best = search.instead(all, Candidate.views(leg.members()));
      if (best.isPresent()) {
        List<Candidate> again = new ArrayList<>();
        leg.members().forEach(one -> again.add(focused(one, best.get())));
        leg.set(again);
        mended = true;
      }
    }
    return mended;
  }

  private Candidate focused(Candidate old, Length focus) {
    View view = seeing.focused(old.view(), focus);
    return new Candidate(view.viewpoint(), old.ring(), view);
  }
}
