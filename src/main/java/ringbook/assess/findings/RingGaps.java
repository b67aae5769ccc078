package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.PairGraph;
import ringbook.assess.coverage.PatchClass.Group;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Patches;
import ringbook.shots.Leg;
import ringbook.units.Angle;
import ringbook.units.Num;

/** Looks for turns of a ring that are too wide: all of them, or a gap. */
final class RingGaps {

  /** Turns this much wider than both the largest allowed and the ring's own are gaps. */
  private static final double WIDE = 1.5;

  private static final int MOST = 72;
  private static final int SAMPLE = 200;

  private final Coverage coverage;
  private final Seeing seeing;
  private final Usual usual;
  private final Leg leg;
  private final Circle circle;
  private final List<View> free = new ArrayList<>();
  private final List<View> lost = new ArrayList<>();
  private final List<Double> turns = new ArrayList<>();
  private final List<Viewpoint> there = new ArrayList<>();

  RingGaps(Coverage coverage, Usual usual, Leg leg, List<View> views) {
    this.coverage = coverage;
    this.usual = usual;
    this.leg = leg;
    seeing = coverage.seeing();
    circle = new Circle(leg, seeing.scene().kit().lens().closestFocus());
    for (View view : coverage.views()) {
      there.add(view.viewpoint());
    }
    for (View view : views) {
      (seesAny(view) ? free : lost).add(view);
    }
    free.sort((a, b) -> Double.compare(azimuth(a), azimuth(b)));
    for (int i = 0; i < free.size(); i++) {
      double next = i + 1 < free.size() ? azimuth(free.get(i + 1)) : azimuth(free.get(0)) + full();
      turns.add(next - azimuth(free.get(i)));
    }
  }

  private static double full() {
    return Angle.FULL_TURN.radians();
  }

  private boolean seesAny(View view) {
    for (int i = 0; i < seeing.surface().count(); i++) {
      if (view.look(i).inPicture()) {
        return true;
      }
    }
    return false;
  }

  private static double azimuth(View view) {
    double radians = view.viewpoint().station().azimuth().radians();
    return radians - full() * Math.floor(radians / full());
  }

  List<Finding> found() {
    if (free.isEmpty()) {
      return List.of(nothing());
    }
    List<Double> sorted = new ArrayList<>(turns);
    sorted.sort(null);
    double usualTurn = sorted.get(sorted.size() / 2);
    if (free.size() < 3 || fallsApart()) {
      return List.of(apart(usualTurn));
    }
    double limit = seeing.scene().aim().stepLimit().radians();
    List<Finding> found = new ArrayList<>();
    for (int i = 0; i < turns.size(); i++) {
      if (turns.get(i) > WIDE * Math.max(limit, usualTurn)) {
        found.add(gap(i, Math.min(usualTurn, limit)));
      }
    }
    return found;
  }

  private Finding nothing() {
    List<Integer> numbers = new ArrayList<>();
    TreeSet<String> by = new TreeSet<>();
    for (View view : lost) {
      numbers.add(view.viewpoint().station().number());
      seeing
          .room()
          .between(view.viewpoint().station().position(), seeing.middle())
          .ifPresent(by::add);
    }
    return new LegFinding.Gap(
        leg.name(), Angle.ZERO, Angle.FULL_TURN, numbers, List.copyOf(by), 0, List.of());
  }

  /** Whether most neighbours are not tied. */
  private boolean fallsApart() {
    PairGraph graph = Coverage.graph(seeing, free);
    int apart = 0;
    for (int i = 0; i < free.size(); i++) {
      apart += graph.tied(i, (i + 1) % free.size()) ? 0 : 1;
    }
    return 2 * apart > free.size();
  }

  private Finding apart(double turn) {
    int pieces = Coverage.graph(seeing, free).pieces().size();
    List<Mend> mends = new ArrayList<>();
    int enough = enough();
    if (enough > leg.stations().size() && enough <= MOST) {
      List<Viewpoint> ring = within(circle.ring(enough));
      int more = ring.size() - leg.stations().size();
      mends.add(
          new Mend(
              leg.name()
                  + ": "
                  + ring.size()
                  + " photographs instead of "
                  + leg.stations().size()
                  + " ("
                  + more
                  + " more), "
                  + Say.degrees(Angle.FULL_TURN.times(1.0 / enough))
                  + " apart"
                  + nobody(enough - ring.size()),
              more,
              1,
              ring));
    }
    return new LegFinding.FallsApart(
        leg.name(), leg.stations().size(), new Angle(turn), pieces, mends);
  }

  private static String nobody(int places) {
    return places == 0
        ? ""
        : ", but for the "
            + (places == 1 ? "place" : places + " places")
            + " where nobody can stand";
  }

  private List<Viewpoint> within(List<Viewpoint> ring) {
    List<Viewpoint> within = new ArrayList<>();
    for (Viewpoint one : ring) {
      if (usual.reach().holds(one.station().position())) {
        within.add(one);
      }
    }
    return within;
  }

  /**
   * Fewest evenly spaced stations that hang together, by halving on a sample, then on all patches.
   */
  private int enough() {
    Seeing small = seeing.only(Trial.sample(Trial.all(seeing), SAMPLE));
    int low = leg.stations().size();
    int high = MOST + 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (hangs(small, within(circle.ring(middle)))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    while (high <= MOST && !hangs(seeing, within(circle.ring(high)))) {
      high++;
    }
    return high;
  }

  private static boolean hangs(Seeing small, List<Viewpoint> ring) {
    List<View> views = new ArrayList<>();
    for (Viewpoint viewpoint : ring) {
      views.add(small.look(viewpoint));
    }
    return Coverage.graph(small, views).pieces().size() == 1;
  }

  private Finding gap(int at, double step) {
    Angle from = new Angle(azimuth(free.get(at)));
    Angle width = new Angle(turns.get(at));
    Around around = new Around(from, width);
    int[] suffering = suffering(around.grown(Angle.ofDegrees(30)));
    GapMends search = new GapMends(seeing, usual, leg, free.size(), there);
    List<Mend> mends = search.of(around, step, suffering);
    double best = mends.isEmpty() ? search.spoilt(around, step, suffering) : 0;
    for (Mend mend : mends) {
      best = Math.max(best, mend.mended());
    }
    double area = 0;
    for (int i : suffering) {
      area += seeing.surface().patches().area(i);
    }
    double share = area / seeing.surface().patches().area() * best;
    return new LegFinding.Gap(
        leg.name(), from, width, blocked(around), search.by(around), share, scaled(mends, best));
  }

  /** Mends measured against the best of them, which takes away what this gap spoils. */
  private static List<Mend> scaled(List<Mend> mends, double best) {
    List<Mend> scaled = new ArrayList<>();
    for (Mend m : mends) {
      scaled.add(
          new Mend(m.words(), m.photographs(), best > 0 ? m.mended() / best : 1, m.stations()));
    }
    return scaled;
  }

  private int[] suffering(Around around) {
    Patches patches = seeing.surface().patches();
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < patches.count(); i++) {
      double azimuth = Num.atan2(patches.normalY(i), patches.normalX(i));
      double past = azimuth - around.from().radians();
      past -= full() * Math.floor(past / full());
      boolean bad = coverage.patch(i).patchClass().group() != Group.WELL;
      if (bad && past <= around.width().radians() && Math.abs(patches.normalZ(i)) < 0.9) {
        found.add(i);
      }
    }
    return found.stream().mapToInt(Integer::intValue).toArray();
  }

  private List<Integer> blocked(Around around) {
    List<Integer> numbers = new ArrayList<>();
    for (View view : lost) {
      if (holds(around, azimuth(view))) {
        numbers.add(view.viewpoint().station().number());
      }
    }
    return numbers;
  }

  private static boolean holds(Around around, double azimuth) {
    double past = azimuth - around.from().radians();
    past -= full() * Math.floor(past / full());
    return past > 0 && past < around.width().radians();
  }
}
