package ringbook.plans;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.geometry.Vec3;
import ringbook.plans.Bunch.Form;
import ringbook.shots.Leg;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * Puts stations into legs and in the order of walking: pose by pose, rings from low to high, then
 * arcs and rows, strips upwards once round, what looks down from above, close-ups. A ring begins
 * where the leg before it ended, or at the nearer end of what the room leaves of it.
 */
final class Legs {

  private final Seeing seeing;
  private final List<Bunch> bunches;
  private final boolean[] targets;

  Legs(Seeing seeing, List<Bunch> gathered, boolean[] targets) {
    this.seeing = seeing;
    this.targets = targets;
    bunches = SameFocus.of(seeing, targets, gathered);
    bunches.sort(
        Comparator.comparing(Bunch::pose)
            .thenComparing(Bunch::form)
            .thenComparingDouble(Legs::place));
    walk(new Vec3(0, -1, 0));
  }

  /** Strips upwards once round, all else from low to high. */
  private static double place(Bunch bunch) {
    return bunch.form() == Form.UPWARDS ? azimuth(bunch.first()) : bunch.elevation().radians();
  }

  private void walk(Vec3 start) {
    Vec3 at = start;
    for (Bunch bunch : bunches) {
      List<Candidate> members = new ArrayList<>(bunch.members());
      if (bunch.form() == Form.UPWARDS) {
        members.sort(Comparator.comparingDouble(Bunch::elevation));
      } else {
        members.sort(Comparator.comparingDouble(Legs::azimuth));
        members = begun(members, at);
      }
      bunch.set(members);
      at = members.get(members.size() - 1).viewpoint().station().position();
    }
  }

  private static double azimuth(Candidate one) {
    double turns = one.viewpoint().station().azimuth().radians() / (2 * Math.PI) + 0.25;
    return turns - Math.floor(turns);
  }

  /** Round from the nearest station of a closed ring, or from the nearer end of an open one. */
  private static List<Candidate> begun(List<Candidate> round, Vec3 at) {
    int n = round.size();
    int gap = 0;
    double widest = 0;
    double mean = 1.0 / n;
    for (int i = 0; i < n; i++) {
      double next = i + 1 < n ? azimuth(round.get(i + 1)) : azimuth(round.get(0)) + 1;
      double step = next - azimuth(round.get(i));
      if (step > widest + 1e-9) {
        widest = step;
        gap = i;
      }
    }
    List<Candidate> opened = turned(round, (gap + 1) % n);
    if (widest > 1.5 * mean && n > 1) {
      if (apart(opened.get(n - 1), at) < apart(opened.get(0), at) - 1e-9) {
        java.util.Collections.reverse(opened);
      }
      return opened;
    }
    int nearest = 0;
    for (int i = 1; i < n; i++) {
      nearest = apart(round.get(i), at) < apart(round.get(nearest), at) - 1e-9 ? i : nearest;
    }
    return turned(round, nearest);
  }

  private static List<Candidate> turned(List<Candidate> round, int first) {
    List<Candidate> turned = new ArrayList<>(round.subList(first, round.size()));
    turned.addAll(round.subList(0, first));
    return turned;
  }

  private static double apart(Candidate one, Vec3 at) {
    Vec3 lens = one.viewpoint().station().position();
    return Num.hypot(lens.x() - at.x(), lens.y() - at.y());
  }

  /** How far the lens is carried, in plan. */
  Length walk() {
    double way = 0;
    Vec3 at = null;
    for (Candidate one : all()) {
      way += at == null ? 0 : apart(one, at);
      at = one.viewpoint().station().position();
    }
    return new Length(way);
  }

  /** What becomes one leg each, in the order of shooting. */
  List<Bunch> bunches() {
    return bunches;
  }

  /** All photographs, in the order of shooting; some may be focused anew. */
  List<Candidate> all() {
    List<Candidate> all = new ArrayList<>();
    bunches.forEach(bunch -> all.addAll(bunch.members()));
    return all;
  }

  /** What the photographs of the {@link #plan} see, in its order. */
  List<View> views() {
    List<View> views = new ArrayList<>();
    for (Bunch bunch : bunches) {
      int number = 1;
      for (Candidate one : bunch.members()) {
        views.add(one.view().numbered(number++));
      }
    }
    return views;
  }

  ShotPlan plan() {
    LegWhy words = new LegWhy(seeing, bunches, targets);
    List<String> names = LegNames.of(bunches, seeing);
    List<Leg> legs = new ArrayList<>();
    for (int i = 0; i < bunches.size(); i++) {
      Bunch bunch = bunches.get(i);
      List<Station> stations = new ArrayList<>();
      for (Candidate one : bunch.members()) {
        stations.add(one.viewpoint().station().numbered(stations.size() + 1));
      }
      legs.add(
          new Leg(
              names.get(i),
              bunch.form().kind(),
              bunch.first().viewpoint().setup(),
              stations,
              words.why(names.get(i), bunch)));
    }
    return new ShotPlan(legs);
  }
}
