package ringbook.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.plans.Bunch.Form;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * Gives each bunch one focus, so that it can be one leg: the focus most of it has, or another of
 * its own, if all that was seen well is seen well then and the set hangs together as before. Where
 * none will do, the bunch is parted by focus.
 */
final class SameFocus {

  /** Fewer, parted from their row by their focus, join another row. */
  private static final int FEW = 3;

  private static final double NEAR = Angle.ofDegrees(8).radians();

  private final Seeing seeing;
  private final boolean[] targets;
  private final List<Bunch> bunches;
  private boolean[] wells;
  private boolean held;
  private int pieces;

  private SameFocus(Seeing seeing, boolean[] targets, List<Bunch> bunches) {
    this.seeing = seeing;
    this.targets = targets;
    this.bunches = bunches;
  }

  /** The same photographs, some focused anew; in every bunch all have one focus. */
  static List<Bunch> of(Seeing seeing, boolean[] targets, List<Bunch> bunches) {
    return new SameFocus(seeing, targets, new ArrayList<>(bunches)).mended();
  }

  private List<Bunch> mended() {
    List<Candidate> before = all();
    wells = Wellness.of(seeing, before).wells();
    PairGraph graph = Coverage.graph(seeing, Candidate.views(before));
    held = graph.isHeld();
    pieces = graph.pieces().size();
    List<Bunch> mended = new ArrayList<>();
    List<Bunch> parted = new ArrayList<>();
    for (Bunch bunch : List.copyOf(bunches)) {
      Map<Length, List<Candidate>> foci = foci(bunch);
      List<Length> order = new ArrayList<>(foci.keySet());
      order.sort((a, b) -> foci.get(b).size() - foci.get(a).size());
      if (order.size() == 1 || order.stream().anyMatch(focus -> bears(bunch, focus))) {
        mended.add(bunch);
      } else {
        for (Length focus : order) {
          parted.add(new Bunch(bunch.form(), bunch.part(), foci.get(focus)));
        }
      }
    }
    parted.sort((a, b) -> b.size() - a.size());
    for (Bunch part : parted) {
      Optional<Bunch> home = part.size() < FEW ? home(part, mended) : Optional.empty();
      home.ifPresentOrElse(bunch -> bunch.members().addAll(part.members()), () -> mended.add(part));
    }
    return mended;
  }

  /** The nearest row with the same focus and at nearly the same height. */
  private static Optional<Bunch> home(Bunch part, List<Bunch> bunches) {
    Optional<Bunch> home = Optional.empty();
    double least = NEAR;
    for (Bunch bunch : bunches) {
      boolean row = bunch.form() == Form.LEVEL || bunch.form() == Form.ABOVE;
      double rise = Math.abs(bunch.elevation().minus(part.elevation()).radians());
      boolean fits = row && part.form() != Form.CLOSE && bunch.pose() == part.pose();
      if (fits && rise < least && focus(bunch).equals(focus(part))) {
        least = rise;
        home = Optional.of(bunch);
      }
    }
    return home;
  }

  private static Length focus(Bunch bunch) {
    return bunch.first().viewpoint().setup().focus();
  }

  private static Map<Length, List<Candidate>> foci(Bunch bunch) {
    Map<Length, List<Candidate>> foci = new LinkedHashMap<>();
    for (Candidate one : bunch.members()) {
      foci.computeIfAbsent(one.viewpoint().setup().focus(), key -> new ArrayList<>()).add(one);
    }
    return foci;
  }

  /** Focuses a bunch, unless something is lost. */
  private boolean bears(Bunch bunch, Length focus) {
    List<Candidate> before = bunch.members();
    List<Candidate> after = new ArrayList<>();
    for (Candidate one : before) {
      after.add(focused(one, focus));
    }
    bunch.set(after);
    if (isAsGood()) {
      return true;
    }
    bunch.set(before);
    return false;
  }

  private boolean isAsGood() {
    List<Candidate> all = all();
    Wellness seen = Wellness.of(seeing, all);
    for (int i = 0; i < targets.length; i++) {
      if (targets[i] && wells[i] && !seen.well(i)) {
        return false;
      }
    }
    PairGraph graph = Coverage.graph(seeing, Candidate.views(all));
    return graph.pieces().size() <= pieces && (!held || graph.isHeld());
  }

  private Candidate focused(Candidate old, Length focus) {
    if (old.viewpoint().setup().focus().equals(focus)) {
      return old;
    }
    View view = seeing.focused(old.view(), focus);
    return new Candidate(view.viewpoint(), old.ring(), view);
  }

  private List<Candidate> all() {
    List<Candidate> all = new ArrayList<>();
    bunches.forEach(bunch -> all.addAll(bunch.members()));
    return all;
  }
}
