package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/** The circle that the first station of a ring stands on, and more stations on it. */
final class Circle {

  private final Leg leg;
  private final Length closest;

  /**
   * Of a leg.
   *
   * @param closest nearest focus of the lens
   */
  Circle(Leg leg, Length closest) {
    this.leg = leg;
    this.closest = closest;
  }

  /** A whole ring of so many, evenly, from where the leg begins. */
  List<Viewpoint> ring(int photos) {
    return ring(photos, 1);
  }

  /** The same at so many times the distance. */
  List<Viewpoint> ring(int photos, double scale) {
    Station first = leg.stations().get(0);
    return arc(new Around(first.azimuth(), Angle.FULL_TURN), photos, scale);
  }

  /**
   * So many stations, evenly from where the arc begins, the last one step before it ends; scale 1
   * is the circle's own distance.
   */
  List<Viewpoint> arc(Around around, int steps, double scale) {
    Station like = leg.stations().get(0);
    Vec3 away = like.position().minus(like.target());
    double flat = Num.hypot(away.x(), away.y());
    Angle elevation = new Angle(Num.atan2(away.z(), flat));
    double distance = away.norm() * scale;
    double focus = leg.setup().focus().metres() + away.norm() * (scale - 1);
    Setup old = leg.setup();
    Setup setup =
        new Setup(
            old.pose(), old.hold(), new Length(Math.max(closest.metres(), focus)), old.repeats());
    List<Viewpoint> found = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      Angle azimuth = around.from().plus(around.width().times((double) i / steps));
      Vec3 position = like.target().plus(Vec3.towards(azimuth, elevation).times(distance));
      found.add(new Viewpoint(new Station(i + 1, azimuth, position, like.target()), setup));
    }
    return found;
  }

  /** Metres on the floor from the middle, at so many times the distance. */
  double floor(double scale) {
    Vec3 at = leg.stations().get(0).position();
    return Num.hypot(at.x(), at.y()) * scale;
  }
}
