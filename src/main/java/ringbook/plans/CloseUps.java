package ringbook.plans;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Patches;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Station;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * Stations for parts that no ring sees well: straight before a spot or a step aside, nearer than
 * the rings, focused on the spot.
 */
final class CloseUps {

  /** Spots that stations are tried for, at most. */
  private static final int SPOTS = 24;

  /** Distances tried, as parts of the rings' distance. */
  private static final double[] NEARER = {1, 0.7};

  private static final double FOCUS_STEP = 0.1;

  /** Slope of the stations aside: about 14°. */
  private static final double ASIDE = 0.25;

  private final Seeing seeing;
  private final Reach reach;
  private final double away;
  private final BiFunction<Pose, Length, Setup> setup;

  CloseUps(Seeing seeing, Reach reach, double away, BiFunction<Pose, Length, Setup> setup) {
    this.seeing = seeing;
    this.reach = reach;
    this.away = away;
    this.setup = setup;
  }

  /** Candidates that see some of {@code missing} well. */
  List<Candidate> around(int[] missing, List<Pose> poses) {
    List<Candidate> found = new ArrayList<>();
    boolean[] wanted = new boolean[seeing.surface().count()];
    for (int patch : missing) {
      wanted[patch] = true;
    }
    for (int spot : spots(missing)) {
      for (Pose pose : poses) {
        before(spot, pose, wanted, found);
      }
    }
    return found;
  }

  /** Some of the patches, spread over them: always the one farthest from those before it. */
  private int[] spots(int[] missing) {
    Patches patches = seeing.surface().patches();
    double[] far = new double[missing.length];
    Arrays.fill(far, Double.POSITIVE_INFINITY);
    int[] spots = new int[Math.min(SPOTS, missing.length)];
    int next = 0;
    for (int k = 0; k < spots.length; k++) {
      spots[k] = missing[next];
      int farthest = 0;
      for (int i = 0; i < missing.length; i++) {
        double apart =
            patches.point(missing[i]).minus(patches.point(spots[k])).norm()
                + 0.1 * patches.normal(missing[i]).minus(patches.normal(spots[k])).norm();
        far[i] = Math.min(far[i], apart);
        farthest = far[i] > far[farthest] ? i : farthest;
      }
      next = farthest;
    }
    return spots;
  }

  private void before(int spot, Pose pose, boolean[] wanted, List<Candidate> found) {
    Vec3 target = pose.place(seeing.surface().patches().point(spot), seeing.middle());
    Vec3 normal = pose.turn(seeing.surface().patches().normal(spot));
    double closest = seeing.scene().kit().lens().closestFocus().metres();
    for (double nearer : NEARER) {
      double distance = Math.max(closest, nearer * away);
      for (Vec3 direction : directions(normal)) {
        Vec3 lens = target.plus(direction.times(distance));
        if (!reach.holds(lens)) {
          continue;
        }
        Setup close = setup.apply(pose, focus(distance));
        Viewpoint viewpoint = new Viewpoint(Station.at(1, lens, target), close);
        View view = seeing.look(viewpoint);
        if (sees(view, wanted)) {
          found.add(new Candidate(viewpoint, shape(lens, pose), view));
        }
      }
    }
  }

  /** The nearest of few focus distances, a tenth apart, so that close-ups share their legs. */
  static Length focus(double metres) {
    return new Length(Num.exp(Num.round(Num.log(metres) / FOCUS_STEP) * FOCUS_STEP));
  }

  private static boolean sees(View view, boolean[] wanted) {
    for (int patch : view.wells()) {
      if (wanted[patch]) {
        return true;
      }
    }
    return false;
  }

  private RingShape shape(Vec3 lens, Pose pose) {
    Vec3 away = lens.minus(seeing.middle());
    double rise = Num.asin(away.z() / away.norm());
    return new RingShape(
        pose, new ringbook.units.Angle(rise), new Length(away.norm()), seeing.middle());
  }

  /** Straight out, and aside to four sides. */
  private static List<Vec3> directions(Vec3 normal) {
    Vec3 across = Math.abs(normal.z()) > 0.9 ? new Vec3(1, 0, 0) : normal.cross(Vec3.UP).unit();
    Vec3 up = across.cross(normal).unit();
    List<Vec3> directions = new ArrayList<>();
    directions.add(normal);
    directions.add(normal.plus(across.times(ASIDE)).unit());
    directions.add(normal.minus(across.times(ASIDE)).unit());
    directions.add(normal.plus(up.times(ASIDE)).unit());
    directions.add(normal.minus(up.times(ASIDE)).unit());
    return directions;
  }
}
