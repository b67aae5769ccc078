package ringbook.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.plans.EvenRuns.Run;

/**
 * Puts even runs in the place of photographs here and there, one after the other, as long as the
 * plan becomes easier to say, sees as much, hangs together, and has no more photographs in the end.
 */
final class Evening {

  /** So many plans are worked out to the end. */
  private static final int TRIALS = 40;

  /** More bridges are not worth it. */
  private static final int BRIDGES = 4;

  /** On the way there may be so many photographs more than at first. */
  private static final int SPARE = 3;

  private final Seeing seeing;
  private final boolean[] targets;
  private final Stations stations;
  private final Chain chain;
  private final Trim trim;
  private final Likely likely;
  private final Map<Viewpoint, Candidate> known = new LinkedHashMap<>();
  private final Set<List<Candidate>> tried = new LinkedHashSet<>();
  private int trials;

  Evening(Seeing seeing, boolean[] targets, Stations stations, Chain chain, Trim trim) {
    this.seeing = seeing;
    this.targets = targets;
    this.stations = stations;
    this.chain = chain;
    this.trim = trim;
    likely = new Likely(seeing, targets, stations);
  }

  /**
   * The bunches of a plan that becomes legs.
   *
   * @param rings whole rings, which stay
   * @param loose all other photographs
   */
  List<Bunch> evened(List<Bunch> rings, List<Candidate> loose) {
    Draft now = new Draft(seeing, rings, loose);
    Draft best = now;
    int most = now.photos();
    // What does not hang together from the start is not mended here.
    boolean better = Coverage.graph(seeing, Candidate.views(now.all())).isHeld();
    while (better && trials < TRIALS) {
      better = false;
      for (Task task : Task.of(now.bunches())) {
        if (!tried.add(List.copyOf(task.whole().members()))) {
          continue;
        }
        Draft next = step(now, task, most + SPARE);
        if (next != null) {
          now = next;
          better = true;
          if (now.photos() <= most && now.cost() < best.cost()) {
            best = now;
          }
          break;
        }
      }
    }
    return best.bunches();
  }

  /** The same with one bunch in other words, if that makes it better; else null. */
  private Draft step(Draft now, Task task, int most) {
    Draft rest = now.without(task.bunches());
    for (Run run : likely.runs(rest, task.whole())) {
      if (trials++ >= TRIALS) {
        break;
      }
      Draft next = completed(rest, run);
      if (next != null && next.cost() < now.cost() - 1e-9 && next.photos() <= most) {
        return next;
      }
    }
    return null;
  }

  /** With a run, with what else is needed then, without what is not; null if it does not hang. */
  private Draft completed(Draft rest, Run run) {
    List<Candidate> members = new ArrayList<>();
    for (int i = 0; i < run.size(); i++) {
      Viewpoint viewpoint = run.viewpoints().get(i);
      RingShape shape = run.shapes().get(i);
      members.add(
          known.computeIfAbsent(viewpoint, key -> new Candidate(key, shape, seeing.look(key))));
    }
    List<Bunch> even = new ArrayList<>(rest.even());
    even.add(new Bunch(run.form(), "", members));
    List<Candidate> all = new ArrayList<>();
    even.forEach(bunch -> all.addAll(bunch.members()));
    int fixed = all.size();
    all.addAll(rest.loose());
    all.addAll(missing(all));
    List<Candidate> stay = List.copyOf(all.subList(0, fixed));
    PairGraph graph = chain.bridged(all, BRIDGES);
    if (!graph.isHeld()) {
      return null;
    }
    List<Candidate> loose = trim.left(all, graph, stay);
    loose.removeAll(stay);
    return new Draft(seeing, even, loose);
  }

  /** Single photographs for what is not seen well. */
  private List<Candidate> missing(List<Candidate> all) {
    Wellness seen = Wellness.of(seeing, all);
    boolean[] wanted = targets.clone();
    boolean[] wells = seen.wells();
    for (int i = 0; i < wanted.length; i++) {
      wanted[i] &= !wells[i];
    }
    List<Candidate> pool = new ArrayList<>(stations.all());
    pool.removeAll(all);
    List<Candidate> more = new ArrayList<>();
    for (int number : Extras.choose(seen.tally(), Candidate.views(pool), wanted)) {
      more.add(pool.get(number));
    }
    return more;
  }
}
