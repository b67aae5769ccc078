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
  private final List<List<Candidate>> legs;

  Refocus(Seeing seeing, List<List<Candidate>> legs) {
    this.seeing = seeing;
    this.legs = legs;
  }

  /** All photographs leg by leg; those of wrongly focused legs anew, the others as they are. */
  List<Candidate> mended() {
    BestFocus search = new BestFocus(seeing);
    List<Candidate> mended = new ArrayList<>();
    legs.forEach(mended::addAll);
    int first = 0;
    for (List<Candidate> leg : legs) {
      Optional<Length> best = search.instead(Candidate.views(mended), Candidate.views(leg));
      for (int i = 0; best.isPresent() && i < leg.size(); i++) {
        mended.set(first + i, focused(leg.get(i), best.get()));
      }
      first += leg.size();
    }
    return mended;
  }

  private Candidate focused(Candidate old, Length focus) {
    View view = seeing.focused(old.view(), focus);
    return new Candidate(view.viewpoint(), old.ring(), view);
  }
}
