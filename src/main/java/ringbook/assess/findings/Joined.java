package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.GrowingGraph;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Pose;
import ringbook.units.Num;

/** Photographs that are taken anyway, and whether more would hang together with them. */
final class Joined {

  /** Patches on which most of what does not hang together is told. */
  private static final int SAMPLE = 250;

  /** Most photographs on the way from others to the set. */
  private static final int BETWEEN = 6;

  private final Seeing seeing;
  private final int[] some;
  private final Seeing small;
  private final Reach reach;
  private final List<View> views;
  private final List<Viewpoint> viewpoints = new ArrayList<>();
  private final List<Tried> tried = new ArrayList<>();
  private final List<Way> ways = new ArrayList<>();
  private Optional<Set> sample = Optional.empty();
  private Optional<Set> whole = Optional.empty();

  /** Of views by {@code seeing}. */
  Joined(Seeing seeing, List<View> views) {
    this.seeing = seeing;
    this.views = List.copyOf(views);
    reach = new Reach(seeing.scene());
    some = Trial.sample(Trial.all(seeing), SAMPLE);
    small = seeing.only(some);
    views.forEach(view -> viewpoints.add(view.viewpoint()));
  }

  private record Tried(List<Viewpoint> more, boolean joins) {}

  private record Way(List<Viewpoint> to, List<Viewpoint> way) {}

  /** What there is, before some of the patches or all. */
  private record Set(Seeing seeing, GrowingGraph graph, int pieces) {

    static Set of(Seeing seeing, List<View> views) {
      GrowingGraph graph = new GrowingGraph(seeing, views);
      return new Set(seeing, graph, graph.graph().pieces().size());
    }

    /** The same with more; how many pieces there were before stays what is held against. */
    Set with(List<Viewpoint> more) {
      GrowingGraph grown = graph.copy();
      for (Viewpoint viewpoint : more) {
        grown.add(seeing.look(viewpoint));
      }
      return new Set(seeing, grown, pieces);
    }

    boolean isJoined() {
      return graph.graph().pieces().size() <= pieces;
    }
  }

  List<View> views() {
    return views;
  }

  /** Whether any of them is taken in that pose. */
  boolean has(Pose pose) {
    return viewpoints.stream().anyMatch(one -> one.setup().pose() == pose);
  }

  /** Whether the set falls into no more pieces with these. */
  boolean joins(List<Viewpoint> more) {
    // Several places ask for the same rings.
    for (Tried one : tried) {
      if (one.more().equals(more)) {
        return one.joins();
      }
    }
    boolean joins = sample().with(more).isJoined() && whole().with(more).isJoined();
    tried.add(new Tried(List.copyOf(more), joins));
    return joins;
  }

  private Set sample() {
    if (sample.isEmpty()) {
      List<View> looks = new ArrayList<>();
      views.forEach(view -> looks.add(small.part(view, some)));
      sample = Optional.of(Set.of(small, looks));
    }
    return sample.get();
  }

  private Set whole() {
    if (whole.isEmpty()) {
      whole = Optional.of(Set.of(seeing, views));
    }
    return whole.get();
  }

  /**
   * The fewest that join these to the set, evenly on the way to the nearest photograph there is;
   * none if none do.
   */
  List<Viewpoint> bridge(List<Viewpoint> to) {
    for (Way one : ways) {
      if (one.to().equals(to)) {
        return one.way();
      }
    }
    List<Viewpoint> way = way(to);
    ways.add(new Way(List.copyOf(to), way));
    return way;
  }

  private List<Viewpoint> way(List<Viewpoint> to) {
    List<Viewpoint> ends = nearest(to);
    if (ends.isEmpty()) {
      return List.of();
    }
    Vec3 from = away(ends.get(0));
    double turn = Num.acos(Math.max(-1, Math.min(1, from.dot(away(ends.get(1))))));
    int least = (int) Math.ceil(turn / seeing.limits().turn().radians()) - 1;
    Set grown = sample().with(to);
    for (int count = Math.max(1, least); count <= BETWEEN; count++) {
      List<Viewpoint> way = Between.evenly(ends.get(0), ends.get(1), count);
      if (way.stream().allMatch(one -> reach.holds(one.station().position()))
          && grown.with(way).isJoined()) {
        List<Viewpoint> all = new ArrayList<>(to);
        all.addAll(way);
        if (whole().with(all).isJoined()) {
          return way;
        }
      }
    }
    return List.of();
  }

  private static Vec3 away(Viewpoint one) {
    return one.station().position().minus(one.station().target()).unit();
  }

  /** One of the set and one of these, as near to each other as any two. */
  private List<Viewpoint> nearest(List<Viewpoint> to) {
    double least = Double.POSITIVE_INFINITY;
    List<Viewpoint> nearest = List.of();
    for (Viewpoint end : to) {
      for (Viewpoint start : viewpoints) {
        Vec3 way = end.station().position().minus(start.station().position());
        if (start.setup().pose() == end.setup().pose() && way.norm() < least) {
          least = way.norm();
          nearest = List.of(start, end);
        }
      }
    }
    return nearest;
  }
}
