package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.PairGraph.Tie;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.shots.Leg;
import ringbook.shots.Pose;
import ringbook.shots.ShotPlan;
import ringbook.units.Angle;

/** Looks for parts of the set that do not hang together, and for what would join them. */
final class Ties {

  private static final int SAMPLE = 250;

  /** Breaks that are named, the widest first. */
  private static final int BREAKS = 4;

  private static final Around ROUND = new Around(Angle.ZERO, Angle.FULL_TURN);

  /** Most photographs between two that are not tied. */
  private static final int BETWEEN = 6;

  private final Coverage coverage;
  private final Seeing small;
  private final Usual usual;
  private final List<Leg> legs = new ArrayList<>();

  Ties(ShotPlan plan, Coverage coverage, Usual usual) {
    this.coverage = coverage;
    this.usual = usual;
    Seeing seeing = coverage.seeing();
    small = seeing.only(Trial.sample(Trial.all(seeing), SAMPLE));
    for (ShotPlan.Shot shot : plan.shots()) {
      legs.add(shot.leg());
    }
  }

  /**
   * Breaks between legs, or single photographs that hold them together; breaks within a ring are
   * {@link RingGaps}' matter.
   *
   * @param others found before
   */
  List<Finding> among(List<Finding> others) {
    List<Finding> found = new ArrayList<>();
    TreeSet<String> named = new TreeSet<>();
    PairGraph graph = coverage.graph();
    List<List<Integer>> pieces = graph.pieces();
    if (pieces.size() == 1) {
      new Cuts(coverage, legs, usual).found(others).ifPresent(found::add);
      return found;
    }
    for (Tie tie : joins(graph)) {
      boolean sameLeg = legs.get(tie.a()).name().equals(legs.get(tie.b()).name());
      boolean blind = blind(tie.a()) || blind(tie.b());
      if (tie.matchable() < graph.limit() && !sameLeg && !blind && found.size() < BREAKS) {
        String pair = legs.get(tie.b()).name() + " and " + legs.get(tie.a()).name();
        if (named.add(pair)) {
          found.add(broken(tie, graph));
        }
      }
    }
    return found;
  }

  private boolean blind(int view) {
    return coverage.views().get(view).count() == 0;
  }

  /** The pairs of the largest spanning tree, the weakest first. */
  private static List<Tie> joins(PairGraph graph) {
    List<Tie> joins = new ArrayList<>(graph.spanningTree());
    joins.sort((x, y) -> Double.compare(x.matchable(), y.matchable()));
    return joins;
  }

  private Finding broken(Tie tie, PairGraph graph) {
    Leg one = legs.get(tie.b());
    Leg other = legs.get(tie.a());
    boolean poses = one.setup().pose() != other.setup().pose();
    List<Mend> mends = poses ? rings(other) : between(tie, one, other);
    return new SetFinding.NotTied(
        one.name(), other.name(), tie.matchable(), graph.limit(), poses, mends);
  }

  /** Fewest photographs evenly between the two that tie them. */
  private List<Mend> between(Tie tie, Leg one, Leg other) {
    Viewpoint from = coverage.views().get(tie.b()).viewpoint();
    Viewpoint to = coverage.views().get(tie.a()).viewpoint();
    for (int count = 1; count <= BETWEEN; count++) {
      List<Viewpoint> steps = new ArrayList<>();
      steps.add(from);
      steps.addAll(Between.evenly(from, to, count));
      steps.add(to);
      if (hangs(steps)) {
        List<Viewpoint> more = steps.subList(1, steps.size() - 1);
        String words =
            Say.photographs(count)
                + (count == 1 ? " halfway between " : " evenly between ")
                + one.name()
                + " station "
                + from.station().number()
                + " and "
                + other.name()
                + " station "
                + to.station().number();
        return List.of(new Mend(words, count, 1, more));
      }
    }
    return List.of();
  }

  private boolean hangs(List<Viewpoint> stations) {
    List<View> views = new ArrayList<>();
    for (Viewpoint viewpoint : stations) {
      views.add(small.look(viewpoint));
    }
    return Coverage.graph(small, views).pieces().size() == 1;
  }

  /** A ring more in the second pose that ties it to the first, tried at several heights. */
  private List<Mend> rings(Leg other) {
    List<Viewpoint> all = new ArrayList<>();
    for (View view : coverage.views()) {
      all.add(view.viewpoint());
    }
    int before = pieces(all);
    List<Mend> tying = new ArrayList<>();
    for (Angle elevation : usual.elevations()) {
      for (int count : new int[] {usual.fewest(ROUND, elevation), usual.most(ROUND)}) {
        List<Viewpoint> ring =
            usual.arc(ROUND, elevation, count, usual.setup(other.setup().pose()));
        boolean cheaper = tying.isEmpty() || ring.size() < tying.get(0).photographs();
        List<Viewpoint> with = new ArrayList<>(all);
        with.addAll(ring);
        if (!ring.isEmpty() && cheaper && pieces(with) < before) {
          tying.clear();
          tying.add(new Mend(words(ring, other.setup().pose()), ring.size(), 1, ring));
        }
      }
    }
    return tying;
  }

  private String words(List<Viewpoint> ring, Pose pose) {
    return (pose == Pose.TURNED_OVER ? "with the object turned over, " : "")
        + "a ring of "
        + Say.photographs(ring.size())
        + ", lens "
        + Say.length(coverage.seeing().scene(), ring.get(0).station().position().z())
        + " above the floor";
  }

  private int pieces(List<Viewpoint> stations) {
    List<View> views = new ArrayList<>();
    for (Viewpoint viewpoint : stations) {
      views.add(small.look(viewpoint));
    }
    return Coverage.graph(small, views).pieces().size();
  }
}
