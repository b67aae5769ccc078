package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Station;
import ringbook.units.Length;

/** Stations on the way from one to another. */
final class Between {

  private Between() {}

  /** So many, evenly, without the two ends; they turn, move and focus from one to the other. */
  static List<Viewpoint> evenly(Viewpoint from, Viewpoint to, int count) {
    List<Viewpoint> steps = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      steps.add(mixed(from, to, i / (count + 1.0)));
    }
    return steps;
  }

  private static Viewpoint mixed(Viewpoint a, Viewpoint b, double share) {
    Vec3 target = mix(a.station().target(), b.station().target(), share);
    Vec3 awayA = a.station().position().minus(a.station().target());
    Vec3 awayB = b.station().position().minus(b.station().target());
    double distance = awayA.norm() * (1 - share) + awayB.norm() * share;
    Vec3 away = mix(awayA.unit(), awayB.unit(), share).unit().times(distance);
    Setup old = a.setup();
    double focus = old.focus().metres() * (1 - share) + b.setup().focus().metres() * share;
    Setup setup = new Setup(old.pose(), old.hold(), new Length(focus), old.repeats());
    return new Viewpoint(Station.at(1, target.plus(away), target), setup);
  }

  private static Vec3 mix(Vec3 a, Vec3 b, double share) {
    return a.times(1 - share).plus(b.times(share));
  }
}
