package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/** How a plan works as a rule: how far away, how focused; and stations made in the same way. */
final class Usual {

  private final Seeing seeing;
  private final Reach reach;
  private final double distance;
  private final Setup setup;
  private final int photographs;

  Usual(Seeing seeing, ShotPlan plan) {
    this.seeing = seeing;
    reach = new Reach(seeing.scene());
    List<Double> distances = new ArrayList<>();
    for (ShotPlan.Shot shot : plan.shots()) {
      distances.add(shot.station().position().minus(seeing.middle()).norm());
    }
    photographs = distances.size();
    distances.sort(null);
    distance = distances.get(distances.size() / 2);
    setup = plan.legs().get(0).setup();
  }

  Reach reach() {
    return reach;
  }

  double distance() {
    return distance;
  }

  /** Stations of the plan. */
  int photographs() {
    return photographs;
  }

  Setup setup(Pose pose) {
    return new Setup(pose, setup.hold(), setup.focus(), setup.repeats());
  }

  /** The elevation at which a lens at the usual distance has a height above the floor, if any. */
  private double elevationAt(double height) {
    double sine = (height - seeing.middle().z()) / distance;
    return Num.asin(Math.max(-1, Math.min(1, sine)));
  }

  /** Elevations to try for more rings: from the lowest to the highest within reach. */
  List<Angle> elevations() {
    double low = elevationAt(reach.lowest());
    double high = Math.min(elevationAt(reach.highest()), Angle.ofDegrees(75).radians());
    List<Angle> all = new ArrayList<>();
    int steps = (int) Math.max(1, Math.ceil((high - low) / Angle.ofDegrees(15).radians()));
    for (int i = 0; i <= steps; i++) {
      all.add(new Angle(low + (high - low) * i / steps));
    }
    return all;
  }

  /** Where the lens is at the usual distance. */
  Vec3 position(Angle azimuth, Angle elevation) {
    return seeing.middle().plus(Vec3.towards(azimuth, elevation).times(distance));
  }

  /**
   * Fewest photographs along an arc whose neighbouring lines of sight differ by no more than the
   * largest step of the aim.
   */
  int fewest(Around around, Angle elevation) {
    return count(around, Ring.photosForRays(seeing.scene().aim().stepLimit(), elevation));
  }

  /** So many as a ring at the level of the object takes by the step of the aim. */
  int most(Around around) {
    return count(around, Ring.photosFor(seeing.scene().aim().step()));
  }

  private static int count(Around around, double round) {
    double turns = around.width().radians() / Angle.FULL_TURN.radians() * round;
    return (int) Math.ceil(turns - 1e-9) + (around.isAll() ? 0 : 1);
  }

  /**
   * So many stations along an arc at the usual distance, evenly; those out of reach are left out.
   */
  List<Viewpoint> arc(Around around, Angle elevation, int count, Setup with) {
    List<Viewpoint> found = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double share = around.isAll() ? (double) i / count : (double) i / Math.max(1, count - 1);
      Angle azimuth = around.from().plus(around.width().times(share));
      Vec3 position = position(azimuth, elevation);
      if (reach.holds(position)) {
        found.add(new Viewpoint(new Station(i + 1, azimuth, position, seeing.middle()), with));
      }
    }
    return found;
  }

  /**
   * Single stations that look at one spot from all sides, at some shares of the usual distance,
   * focused on it.
   *
   * @param spot in metres, standing in the room
   */
  List<Viewpoint> details(Vec3 spot, Pose pose) {
    Vec3 target = pose.place(spot, seeing.middle());
    List<Viewpoint> found = new ArrayList<>();
    for (double share : new double[] {1, 0.65, 0.4}) {
      double away = distance * share;
      if (away > seeing.scene().kit().lens().closestFocus().metres()) {
        for (int elevation = -30; elevation <= 90; elevation += 15) {
          int round = elevation > 85 ? 1 : elevation > 70 ? 8 : 16;
          addRound(target, away, Angle.ofDegrees(elevation), pose, round, found);
        }
      }
    }
    return found;
  }

  /** A ring round a spot that looks at it, focused on it; stations out of reach are left out. */
  List<Viewpoint> cone(Vec3 spot, Angle elevation, double share, int round, Pose pose) {
    List<Viewpoint> found = new ArrayList<>();
    double away = distance * share;
    if (away > seeing.scene().kit().lens().closestFocus().metres()) {
      addRound(pose.place(spot, seeing.middle()), away, elevation, pose, round, found);
    }
    return found;
  }

  private void addRound(
      Vec3 target, double away, Angle elevation, Pose pose, int round, List<Viewpoint> found) {
    Setup close = new Setup(pose, setup.hold(), new Length(away), setup.repeats());
    for (int k = 0; k < round; k++) {
      Angle azimuth = Angle.FULL_TURN.times((double) k / round);
      Vec3 position = target.plus(Vec3.towards(azimuth, elevation).times(away));
      if (reach.holds(position)) {
        found.add(new Viewpoint(new Station(1, azimuth, position, target), close));
      }
    }
  }
}
