package ringbook.assess.findings;

import java.util.ArrayList;
import java.util.List;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.geometry.Solid;
import ringbook.geometry.Vec3;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.Scene;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Angle;
import ringbook.units.Length;

/** Plans of rings as the ledger would walk them, for tests. */
final class Plans {

  private final Scene scene;
  private final Reckoning reckoning;
  private final List<Leg> legs = new ArrayList<>();

  Plans(Scene scene) {
    this.scene = scene;
    reckoning = Reckoning.of(scene);
  }

  Seeing seeing(Solid solid, int patches) {
    Vec3 table = new Vec3(0, 0, scene.place().tableHeight().metres());
    Surface surface = Surface.of(solid.mesh(Length.ofMillimetres(15)).moved(table), patches);
    return new Seeing(scene, surface, reckoning.fNumber("sharp.fNumber"));
  }

  Plans ring(double elevationDegrees, int photos) {
    return ring(elevationDegrees, photos, Pose.STANDING, 1);
  }

  Plans ring(double elevationDegrees, int photos, Pose pose, double focusTimes) {
    Ring ring =
        new Ring(
            reckoning.length("ring.middleHeight"),
            reckoning.length("ring.radius"),
            Angle.ofDegrees(elevationDegrees),
            photos);
    Setup setup =
        new Setup(pose, scene.aim().hold(), reckoning.length("sharp.focus").times(focusTimes), 1);
    legs.add(Leg.of(ring, name(), setup, "a ring"));
    return this;
  }

  private String name() {
    return "ring " + (char) ('A' + legs.size());
  }

  /** Leaves out of the last ring the stations between two azimuths. */
  Plans without(double fromDegrees, double toDegrees) {
    Leg last = legs.remove(legs.size() - 1);
    List<Station> rest = new ArrayList<>();
    for (Station station : last.stations()) {
      double degrees = station.azimuth().degrees();
      degrees -= 360 * Math.floor(degrees / 360);
      if (degrees < fromDegrees || degrees > toDegrees) {
        rest.add(station.numbered(rest.size() + 1));
      }
    }
    legs.add(new Leg(last.name(), last.kind(), last.setup(), rest, last.why()));
    return this;
  }

  ShotPlan plan() {
    return new ShotPlan(legs);
  }

  Assessment assess(Solid solid) {
    return Assessment.of(seeing(solid, 1000), plan());
  }

  /** All findings as text, for messages. */
  static String text(Assessment assessment) {
    StringBuilder text = new StringBuilder();
    for (Finding finding : assessment.findings()) {
      text.append(finding.gravity()).append(": ").append(finding.text()).append('\n');
    }
    return text.toString();
  }
}
