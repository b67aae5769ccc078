package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.GrowingGraph;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Whole;

/**
 * Bridges photographs that do not hang together, or hang together by one photograph only: by others
 * between the nearest two, or by taking the one photograph twice.
 */
final class Chain {

  private static final int MOST_BRIDGES = 20;

  private static final int MOST_RUNGS = 13;

  /** A hand's breadth in metres. */
  private static final double HAND = 0.08;

  /** Focus behind the nearest spot, as a factor. */
  private static final double BEHIND = 1.05;

  private final Seeing seeing;
  private final Reach reach;
  private final Length distance;
  private final Length focus;

  /**
   * Bridges over the sphere of the rings.
   *
   * @param ring any ring
   */
  Chain(Seeing seeing, Reach reach, Candidate ring) {
    this.seeing = seeing;
    this.reach = reach;
    distance = ring.ring().distance();
    focus = ring.viewpoint().setup().focus();
  }

  /** The photographs and as many bridges as help; where one cannot be built, it stays open. */
  List<Candidate> joined(List<Candidate> chosen) {
    List<Candidate> all = new ArrayList<>(chosen);
    return largest(all, bridged(all, MOST_BRIDGES));
  }

  /**
   * Adds bridges.
   *
   * @param all the photographs, to which bridges are added
   * @param most so many bridges at most
   * @return how all hang together then
   */
  PairGraph bridged(List<Candidate> all, int most) {
    GrowingGraph growing = new GrowingGraph(seeing, Candidate.views(all));
    for (int i = 0; i < most; i++) {
      PairGraph graph = growing.graph();
      List<List<Integer>> pieces = graph.pieces();
      int cut = -1;
      if (pieces.size() == 1) {
        List<Integer> splitters = graph.isHeld() ? List.of() : graph.splitters();
        if (splitters.size() != 1) {
          break;
        }
        cut = splitters.get(0);
        pieces = without(graph, cut);
      }
      List<Viewpoint> bridge = bridge(all, pieces, cut);
      if (bridge.isEmpty() && cut >= 0) {
        bridge = twin(all, all.get(cut));
      }
      if (bridge.isEmpty()) {
        break;
      }
      for (Viewpoint viewpoint : bridge) {
        Candidate rung = candidate(viewpoint);
        all.add(rung);
        growing.add(rung.view());
      }
    }
    return growing.graph();
  }

  /** What hangs together if one photograph is lost. */
  private static List<List<Integer>> without(PairGraph graph, int cut) {
    List<List<Integer>> pieces = new ArrayList<>();
    boolean[] known = new boolean[graph.size()];
    known[cut] = true;
    for (int start = 0; start < known.length; start++) {
      if (known[start]) {
        continue;
      }
      List<Integer> piece = new ArrayList<>(List.of(start));
      known[start] = true;
      for (int k = 0; k < piece.size(); k++) {
        for (int next = 0; next < known.length; next++) {
          if (!known[next] && graph.tied(piece.get(k), next)) {
            known[next] = true;
            piece.add(next);
          }
        }
      }
      pieces.add(piece);
    }
    return pieces;
  }

  /**
   * Between the nearest two of different pieces, away from photograph {@code cut}: first between
   * photographs of rings, then close-ups too.
   */
  private List<Viewpoint> bridge(List<Candidate> all, List<List<Integer>> pieces, int cut) {
    List<Viewpoint> ofRings = bridge(all, pieces, cut, false);
    return ofRings.isEmpty() ? bridge(all, pieces, cut, true) : ofRings;
  }

  private List<Viewpoint> bridge(
      List<Candidate> all, List<List<Integer>> pieces, int cut, boolean close) {
    List<Viewpoint> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    boolean[] inside = new boolean[all.size()];
    pieces.get(0).forEach(k -> inside[k] = true);
    for (int a : pieces.get(0)) {
      for (int b = 0; b < all.size(); b++) {
        double apart = apart(all.get(a), all.get(b));
        boolean out = !close && (isClose(all.get(a)) || isClose(all.get(b)));
        if (out || b == cut || inside[b] || apart >= least || apart < 1e-6) {
          continue;
        }
        List<Viewpoint> trial = rungs(all.get(a), all.get(b));
        if (!trial.isEmpty() && isNew(trial.get(0), all, apart / 8)) {
          least = apart;
          best = trial;
        }
      }
    }
    return best;
  }

  /** The photograph on which all hangs once more, a hand's breadth aside on its ring. */
  private List<Viewpoint> twin(List<Candidate> all, Candidate one) {
    Station station = one.viewpoint().station();
    double floor = Num.hypot(station.position().x(), station.position().y());
    Vec3 aside =
        floor < HAND
            ? new Vec3(HAND, 0, 0)
            : new Vec3(-station.position().y(), station.position().x(), 0).times(HAND / floor);
    for (Vec3 step : List.of(aside, aside.times(-1))) {
      Station other = Station.at(1, station.position().plus(step), station.target());
      Viewpoint trial = new Viewpoint(other, one.viewpoint().setup());
      if (reach.holds(other.position()) && isNew(trial, all, HAND / 2)) {
        return List.of(trial);
      }
    }
    return List.of();
  }

  private Candidate candidate(Viewpoint viewpoint) {
    Vec3 away = viewpoint.station().position().minus(seeing.middle());
    Angle elevation = new Angle(Num.asin(away.z() / away.norm()));
    RingShape shape =
        new RingShape(
            viewpoint.setup().pose(), elevation, new Length(away.norm()), seeing.middle());
    return new Candidate(viewpoint, shape, seeing.look(viewpoint));
  }

  private boolean isNew(Viewpoint trial, List<Candidate> all, double room) {
    Vec3 at = trial.setup().pose().place(trial.station().position(), seeing.middle());
    for (Candidate one : all) {
      if (one.view().position().minus(at).norm() < room) {
        return false;
      }
    }
    return true;
  }

  /** Leaves out close-ups that could not be tied: what hangs on nothing spoils the whole set. */
  private List<Candidate> largest(List<Candidate> all, PairGraph graph) {
    List<List<Integer>> pieces = graph.pieces();
    List<Candidate> kept = new ArrayList<>();
    for (List<Integer> piece : pieces) {
      boolean close = true;
      for (int k : piece) {
        close &= isClose(all.get(k));
      }
      if (piece == pieces.get(0) || !close) {
        piece.forEach(k -> kept.add(all.get(k)));
      }
    }
    return kept;
  }

  private double apart(Candidate a, Candidate b) {
    return a.view().position().minus(b.view().position()).norm();
  }

  /**
   * Evenly from one to the other, no wider apart than the largest turn, at least one; in the pose
   * of the first or else of the second. Empty where nobody can stand there.
   */
  private List<Viewpoint> rungs(Candidate a, Candidate b) {
    Vec3 middle = seeing.middle();
    double turn =
        a.view().position().minus(middle).angleTo(b.view().position().minus(middle)).radians();
    double limit = seeing.scene().aim().stepLimit().radians();
    int steps = (int) Math.max(2, Math.min(MOST_RUNGS, Whole.up(turn / limit)));
    List<Viewpoint> rungs = new ArrayList<>();
    for (int i = 1; i < steps; i++) {
      Rung rung = rung(a, b, (double) i / steps, turn);
      Viewpoint viewpoint = in(a.viewpoint().setup().pose(), rung, a);
      if (!reach.holds(viewpoint.station().position())) {
        viewpoint = in(b.viewpoint().setup().pose(), rung, a);
      }
      if (!reach.holds(viewpoint.station().position())) {
        return List.of();
      }
      rungs.add(viewpoint);
    }
    return rungs;
  }

  private boolean isClose(Candidate one) {
    return !one.viewpoint().station().target().equals(seeing.middle());
  }

  /** Place, aim and focus between two others, in the frame of the standing object. */
  private record Rung(Vec3 lens, Vec3 target, Length focus) {}

  /** Part of the way along the arc round the middle; between rings, on their sphere. */
  private Rung rung(Candidate a, Candidate b, double share, double turn) {
    Vec3 middle = seeing.middle();
    Vec3 one = a.view().position().minus(middle);
    Vec3 other = b.view().position().minus(middle);
    double wide = Num.sin(turn);
    boolean flat = wide < 1e-6;
    Vec3 direction =
        one.unit()
            .times(flat ? 1 - share : Num.sin((1 - share) * turn) / wide)
            .plus(other.unit().times(flat ? share : Num.sin(share * turn) / wide))
            .unit();
    if (!isClose(a) && !isClose(b)) {
      return new Rung(middle.plus(direction.times(distance.metres())), middle, focus);
    }
    double away = one.norm() + share * (other.norm() - one.norm());
    Vec3 lens = middle.plus(direction.times(away));
    Vec3 target = target(a).plus(target(b).minus(target(a)).times(share));
    return new Rung(lens, target, surface(lens, target));
  }

  private Vec3 target(Candidate one) {
    Vec3 target = one.viewpoint().station().target();
    return one.viewpoint().setup().pose().place(target, seeing.middle());
  }

  /** A little behind where the line of sight meets the object. */
  private Length surface(Vec3 lens, Vec3 target) {
    Vec3 beyond = lens.plus(target.minus(lens).times(2));
    double hit = seeing.surface().tree().nearest(lens, beyond).distance();
    double to = target.minus(lens).norm();
    double closest = seeing.scene().kit().lens().closestFocus().metres();
    return CloseUps.focus(Math.max(closest, BEHIND * Math.min(hit, to)));
  }

  private Viewpoint in(Pose pose, Rung rung, Candidate like) {
    Setup setup = like.viewpoint().setup();
    Station station =
        Station.at(
            1,
            pose.place(rung.lens(), seeing.middle()),
            pose.place(rung.target(), seeing.middle()));
    return new Viewpoint(station, new Setup(pose, setup.hold(), rung.focus(), setup.repeats()));
  }
}
