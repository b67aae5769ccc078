package ringbook.assess.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.geometry.Spread;

/** How well a set of views sees a surface: every patch judged, every two views compared. */
public final class Coverage {

  private final Seeing seeing;
  private final Tally tally;
  private final List<PatchViews> patches = new ArrayList<>();
  private final PairSums pairs;

  private Coverage(Seeing seeing, Tally tally) {
    this.seeing = seeing;
    this.tally = tally;
    pairs = new PairSums(seeing.limits(), tally.views());
    for (int i = 0; i < tally.patches(); i++) {
      double area = seeing.surface().patches().area(i);
      tally.compare(i, (a, b, alike) -> pairs.add(a, b, area, alike));
      patches.add(tally.summed(i));
    }
  }

  /** Of a set of views by {@code seeing}, in the order of shooting. */
  public static Coverage of(Seeing seeing, List<View> views) {
    Tally tally = new Tally(seeing.limits(), seeing.surface().count());
    for (View view : views) {
      tally.add(view);
    }
    return new Coverage(seeing, tally);
  }

  /** Of what is in a tally now; the tally may go on. */
  public static Coverage of(Seeing seeing, Tally tally) {
    return new Coverage(seeing, tally.copy());
  }

  /** Which of some photographs hang together; quicker than judging every patch as well. */
  public static PairGraph graph(Seeing seeing, List<View> views) {
    Tally tally = new Tally(seeing.limits(), seeing.surface().count());
    views.forEach(tally::add);
    PairSums pairs = new PairSums(seeing.limits(), views);
    for (int i = 0; i < tally.patches(); i++) {
      double area = seeing.surface().patches().area(i);
      tally.compare(i, (a, b, alike) -> pairs.add(a, b, area, alike));
    }
    return pairs.graph();
  }

  /** Who looked. */
  public Seeing seeing() {
    return seeing;
  }

  /** The views, by number from 0. */
  public List<View> views() {
    return tally.views();
  }

  /** Every patch, by number. */
  public List<PatchViews> patches() {
    return List.copyOf(patches);
  }

  /** One patch. */
  public PatchViews patch(int i) {
    return patches.get(i);
  }

  /** Covariance of patch {@code i}'s place in square metres; empty if its rays do not fix it. */
  public Optional<Spread> precision(int i) {
    return tally.precision(i);
  }

  /** Whether any view saw the patch so. */
  public boolean anyLook(int i, Look look) {
    return tally.anyLook(i, look);
  }

  /** Share of the surface in a group, 0 to 1. */
  public double share(Group group) {
    double in = 0;
    double all = 0;
    for (int i = 0; i < patches.size(); i++) {
      double area = seeing.surface().patches().area(i);
      all += area;
      in += patches.get(i).patchClass().group() == group ? area : 0;
    }
    return all == 0 ? 0 : in / all;
  }

  /** What two of the views have in common. */
  public PairView pair(int a, int b) {
    return pairs.pair(a, b, tally, seeing.surface());
  }

  /** Which photographs hang together. */
  public PairGraph graph() {
    return pairs.graph();
  }
}
