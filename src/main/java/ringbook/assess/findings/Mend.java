package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Viewpoint;

/**
 * A way to mend a finding that was tried on the model.
 *
 * @param words what to do, with its numbers, as a command: "ring B: 4 more photographs between 140°
 *     and 200°"
 * @param photographs how many photographs more it takes
 * @param mended how much of the trouble it takes away, 0 to 1
 * @param stations the photographs to add; empty if it changes those that there are
 */
public record Mend(String words, int photographs, double mended, List<Viewpoint> stations) {

  /** A mend is as good as the best if it mends this part of what that does. */
  static final double AS_GOOD = 0.9;

  /** What mends more than this part counts as mending all. */
  static final double ALL = 0.95;

  public Mend {
    stations = List.copyOf(stations);
  }

  /** The cheapest of those that mend nearly as much as the best, then the others by cost. */
  static List<Mend> ordered(List<Mend> mends) {
    double best = 0;
    for (Mend mend : mends) {
      best = Math.max(best, mend.mended());
    }
    double enough = AS_GOOD * best;
    List<Mend> ordered = new ArrayList<>(mends);
    ordered.sort(
        (a, b) ->
            a.mended() >= enough == b.mended() >= enough
                ? a.photographs() - b.photographs()
                : a.mended() >= enough ? -1 : 1);
    return ordered;
  }

  /** The words, and if it mends only part of the trouble, how much. */
  public String text() {
    return mended > ALL ? words : words + " (mends " + Say.percent(mended) + " of it)";
  }
}
