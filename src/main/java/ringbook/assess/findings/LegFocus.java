package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.Leg;
import ringbook.units.Length;

/** Finds legs that would show more of the object sharp if they were focused elsewhere. */
final class LegFocus {

  private final Coverage coverage;
  private final Usual usual;
  private final BestFocus search;

  LegFocus(Coverage coverage, Usual usual) {
    this.coverage = coverage;
    this.usual = usual;
    search = new BestFocus(coverage.seeing());
  }

  Optional<Finding> of(Leg leg, List<View> views) {
    return search.instead(coverage.views(), views).map(best -> finding(leg, views, best));
  }

  private Finding finding(Leg leg, List<View> views, Length best) {
    List<Viewpoint> again = new ArrayList<>();
    for (View view : views) {
      again.add(coverage.seeing().focused(view, best).viewpoint());
    }
    String words =
        leg.name()
            + ": focus at "
            + Say.length(coverage.seeing().scene(), best.metres())
            + "; then "
            + Say.percent(search.sharp(views, best))
            + " of what it sees is sharp";
    Mend mend = new Mend(words, 0, 1, again);
    double soft = search.blurred(views);
    double share = Math.min(1, soft * views.size() / usual.photographs());
    return new LegFinding.OutOfFocus(
        leg.name(),
        Say.length(coverage.seeing().scene(), leg.setup().focus().metres()),
        soft,
        share,
        List.of(mend));
  }
}
