package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Limits;
import ringbook.assess.coverage.PatchClass;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.assess.coverage.Tally;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.assess.findings.Reach;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.plans.PlanLayout;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Angle;

/**
 * The scene on which plans are judged: its surface, and what of it can be seen at all. That is what
 * at least {@link Limits#VIEWS} of a crowd of stations at the usual distance see well: every 15° of
 * height within reach and every 20° round, in each pose that is asked for.
 */
final class PlanGround {

  /** Judged patches: so many that twice as many change no verdict of the course's exercises. */
  static final int PATCHES = 500;

  private static final int ROUND = 18;
  private static final int STEEPEST = 85;

  private final Reckoning reckoning;
  private final Seeing seeing;
  private final Reach reach;
  private final PlanLayout layout;
  private final boolean[] can;
  private double canArea;

  PlanGround(Reckoning reckoning, boolean turned, int patches) {
    this.reckoning = reckoning;
    Surface surface = Surface.standing(reckoning.scene(), patches);
    seeing = new Seeing(reckoning.scene(), surface, reckoning.fNumber("sharp.fNumber"));
    reach = new Reach(reckoning.scene());
    layout = new PlanLayout(reckoning);
    can = new boolean[seeing.surface().count()];
    Tally crowd = new Tally(seeing.limits(), seeing.surface().count());
    crowd(Pose.STANDING, crowd);
    if (turned) {
      crowd(Pose.TURNED_OVER, crowd);
    }
    for (int i = 0; i < can.length; i++) {
      can[i] = crowd.count(i) >= Limits.VIEWS;
      canArea += can[i] ? seeing.surface().patches().area(i) : 0;
    }
  }

  Reckoning reckoning() {
    return reckoning;
  }

  Seeing seeing() {
    return seeing;
  }

  Reach reach() {
    return reach;
  }

  PlanLayout layout() {
    return layout;
  }

  Coverage coverage(ShotPlan plan) {
    List<View> views = new ArrayList<>();
    for (ShotPlan.Shot shot : plan.shots()) {
      views.add(seeing.look(Viewpoint.of(shot)));
    }
    return Coverage.of(seeing, views);
  }

  private void crowd(Pose pose, Tally crowd) {
    double radius = reckoning.si("ring.radius");
    Setup setup =
        new Setup(pose, reckoning.scene().aim().hold(), reckoning.length("sharp.focus"), 1);
    for (int height = -STEEPEST; height <= STEEPEST; height += 5) {
      boolean wanted = height % 15 == 0 || height == STEEPEST || isLowest(height, radius);
      for (int k = 0; wanted && k < ROUND; k++) {
        Angle azimuth = Angle.FULL_TURN.times((double) k / ROUND);
        Vec3 away = Vec3.towards(azimuth, Angle.ofDegrees(height)).times(radius);
        Vec3 lens = seeing.middle().plus(away);
        if (reach.holds(lens)) {
          crowd.add(
              seeing.look(new Viewpoint(new Station(1, azimuth, lens, seeing.middle()), setup)));
        }
      }
    }
  }

  /** Whether it is the lowest of the heights, five degrees apart, that is within reach. */
  private boolean isLowest(int height, double radius) {
    return lens(height, radius) >= reach.lowest() && lens(height - 5, radius) < reach.lowest();
  }

  private double lens(int height, double radius) {
    return seeing.middle().z() + Vec3.towards(Angle.ZERO, Angle.ofDegrees(height)).z() * radius;
  }

  /** Share of what can be seen at all that is seen well. */
  double shown(Coverage coverage) {
    double shown = 0;
    for (int i = 0; i < can.length; i++) {
      boolean well = can[i] && coverage.patch(i).patchClass() == PatchClass.WELL;
      shown += well ? seeing.surface().patches().area(i) : 0;
    }
    return canArea == 0 ? 0 : shown / canArea;
  }

  /** Whether a share of these patches that matters can be seen at all. */
  boolean canBeSeen(List<Integer> patches) {
    double in = 0;
    double all = 0;
    for (int i : patches) {
      double area = seeing.surface().patches().area(i);
      all += area;
      in += can[i] ? area : 0;
    }
    return in > 0.3 * all;
  }
}
