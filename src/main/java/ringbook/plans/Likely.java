package ringbook.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Tally;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.plans.EvenRuns.Run;

/** Which even runs are worth a try, judged by the nearest stations that are known already. */
final class Likely {

  /** So many even runs for one bunch. */
  private static final int EACH = 4;

  /** A guess of how many photographs what is lost of the whole surface takes. */
  private static final double LOST = 300;

  /** Of runs that are as good otherwise, those near to what they replace are tried first. */
  private static final double FAR = 0.1;

  private final Seeing seeing;
  private final boolean[] targets;
  private final Stations stations;
  private final EvenRuns runs;

  Likely(Seeing seeing, boolean[] targets, Stations stations) {
    this.seeing = seeing;
    this.targets = targets;
    this.stations = stations;
    runs = new EvenRuns(stations);
  }

  /** For a bunch of a plan, the most promising first. */
  List<Run> runs(Draft rest, Bunch task) {
    Tally others = Wellness.of(seeing, rest.all()).tally();
    List<Integer> wanted = new ArrayList<>();
    for (int i = 0; i < targets.length; i++) {
      if (targets[i] && others.classOf(i) != PatchClass.WELL) {
        wanted.add(i);
      }
    }
    List<Run> all = new ArrayList<>();
    if (task.isEven()) {
      for (int photos = Math.max(1, task.size() - 2); photos <= task.size() + 2; photos++) {
        if (photos != task.size()) {
          all.addAll(runs.with(task, photos));
        }
      }
    } else {
      all.addAll(runs.instead(task));
    }
    // Of those alike in form and number only the best: what a run does for the chain is not known.
    Map<List<Object>, Run> kinds = new LinkedHashMap<>();
    Map<Run, Double> costs = new LinkedHashMap<>();
    for (Run run : all) {
      costs.put(run, run.size() + LOST * lost(run, others, wanted) + FAR * far(run, task));
      kinds.merge(run.kind(), run, (a, b) -> costs.get(b) < costs.get(a) ? b : a);
    }
    List<Run> best = new ArrayList<>(kinds.values());
    best.sort(Comparator.comparingDouble(costs::get));
    return best.subList(0, Math.min(EACH, best.size()));
  }

  /** How far its stations are from those that they replace, in metres. */
  private static double far(Run run, Bunch task) {
    double far = 0;
    for (Candidate one : task.members()) {
      Vec3 at = one.viewpoint().station().position();
      double least = Double.POSITIVE_INFINITY;
      for (Viewpoint viewpoint : run.viewpoints()) {
        least = Math.min(least, viewpoint.station().position().minus(at).norm());
      }
      far += least;
    }
    return far;
  }

  private double lost(Run run, Tally others, List<Integer> wanted) {
    Tally tally = others.copy();
    for (Viewpoint viewpoint : run.viewpoints()) {
      tally.add(nearest(viewpoint));
    }
    double lost = 0;
    for (int patch : wanted) {
      boolean well = tally.classOf(patch) == PatchClass.WELL;
      lost += well ? 0 : seeing.surface().patches().area(patch);
    }
    return lost / seeing.surface().patches().area();
  }

  private View nearest(Viewpoint viewpoint) {
    Vec3 at = viewpoint.station().position();
    View best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Candidate one : stations.all()) {
      if (one.viewpoint().setup().pose() == viewpoint.setup().pose()) {
        Vec3 way = one.viewpoint().station().position().minus(at);
        double apart = way.dot(way);
        if (apart < least) {
          least = apart;
          best = one.view();
        }
      }
    }
    return best;
  }
}
