package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.Leg;

/** Looks for single photographs that hold the set together, and for what takes that off them. */
final class Cuts {

  private final Coverage coverage;
  private final List<Leg> legs;
  private final Usual usual;

  /**
   * In a set of one piece.
   *
   * @param legs that each view belongs to
   */
  Cuts(Coverage coverage, List<Leg> legs, Usual usual) {
    this.coverage = coverage;
    this.legs = legs;
    this.usual = usual;
  }

  /**
   * The finding, if there is one.
   *
   * @param others found before; the mend of a gap may mend this as well
   */
  Optional<Finding> found(List<Finding> others) {
    List<Integer> cuts = coverage.graph().cuts();
    if (cuts.isEmpty()) {
      return Optional.empty();
    }
    List<String> names = new ArrayList<>();
    for (int cut : cuts) {
      names.add(legs.get(cut).name() + " station " + at(cut).station().number());
    }
    List<Mend> mends = new ArrayList<>();
    closed(others).ifPresent(mends::add);
    twice(cuts, names).ifPresent(mends::add);
    return Optional.of(new SetFinding.HangsOn(names, Mend.ordered(mends)));
  }

  private Viewpoint at(int view) {
    return coverage.views().get(view).viewpoint();
  }

  /** With the gaps closed that were found already. */
  private Optional<Mend> closed(List<Finding> others) {
    List<Viewpoint> more = new ArrayList<>();
    List<String> gaps = new ArrayList<>();
    for (Finding other : others) {
      if (other instanceof LegFinding.Gap && other.cheapest().isPresent()) {
        more.addAll(other.cheapest().get().stations());
        gaps.add(other.where());
      }
    }
    return more.isEmpty() ? Optional.empty() : tried("close " + String.join("; ", gaps), more);
  }

  /**
   * With each of them taken once more. From the same spot: a step aside would bring it nearer to
   * one neighbour and too far from the other.
   */
  private Optional<Mend> twice(List<Integer> cuts, List<String> names) {
    List<Viewpoint> more = new ArrayList<>();
    for (int cut : cuts) {
      more.add(at(cut));
    }
    String which = cuts.size() == 1 ? names.get(0) : "each of the " + cuts.size();
    return tried("take " + which + " twice from the same spot", more);
  }

  /** A mend if the set with these hangs on no single photograph. */
  private Optional<Mend> tried(String words, List<Viewpoint> more) {
    List<View> views = new ArrayList<>(coverage.views());
    for (Viewpoint viewpoint : more) {
      if (!usual.reach().holds(viewpoint.station().position())) {
        return Optional.empty();
      }
      views.add(coverage.seeing().look(viewpoint));
    }
    PairGraph graph = Coverage.graph(coverage.seeing(), views);
    boolean mends = graph.pieces().size() == 1 && graph.cuts().isEmpty();
    return mends ? Optional.of(new Mend(words, more.size(), 1, more)) : Optional.empty();
  }
}
