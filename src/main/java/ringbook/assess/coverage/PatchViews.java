package ringbook.assess.coverage;

import java.util.List;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * What a set of photographs comes to at one patch.
 *
 * @param views numbers of the views that see it well, rising: "both could see it"
 * @param matchable in how many photographs a spot here is recognised from another one, on average:
 *     for each view, how much of the look survives the turn to its nearest neighbour, summed; at
 *     most the number of views
 * @param tied how many of the views hang together by turns over which a patch is still matched; the
 *     largest such group
 * @param smallest smallest angle between two rays; 0 with fewer than two
 * @param largest largest angle between two rays; 0 with fewer than two
 * @param tiedRays largest angle between two rays of the tied group
 * @param sampling surface on one pixel, along its slope, in the best view; infinitely coarse, and
 *     so empty, if unseen
 * @param patchClass what follows
 */
public record PatchViews(
    List<Integer> views,
    double matchable,
    int tied,
    Angle smallest,
    Angle largest,
    Angle tiedRays,
    java.util.Optional<Length> sampling,
    PatchClass patchClass) {

  public PatchViews {
    views = List.copyOf(views);
  }
}
