package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.assess.coverage.Coverage;
import ringbook.assess.coverage.Seeing;
import ringbook.assess.coverage.Surface;
import ringbook.assess.coverage.View;
import ringbook.assess.coverage.Viewpoint;
import ringbook.geometry.Vec3;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.ledger.RefusedException;
import ringbook.plans.StandardPlan;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Length;

/** The object of a scene before the ring and the plan that the ledger works out for it. */
final class SeenScene {

  private final Reckoning reckoning;
  private final Seeing seeing;

  /**
   * Sets it up.
   *
   * @param patches about how many patches the surface gets
   */
  SeenScene(Reckoning reckoning, int patches) {
    this.reckoning = reckoning;
    seeing =
        new Seeing(
            reckoning.scene(),
            Surface.standing(reckoning.scene(), patches),
            reckoning.fNumber("sharp.fNumber"));
  }

  Seeing seeing() {
    return seeing;
  }

  /** The ledger's one ring with so many photographs, as a leg. */
  Leg ring(int photos) {
    Ring ring =
        new Ring(
            new Length(seeing.middle().z()),
            reckoning.length("ring.radius"),
            reckoning.scene().aim().elevation(),
            photos);
    Setup setup =
        new Setup(
            Pose.STANDING, reckoning.scene().aim().hold(), reckoning.length("sharp.focus"), 1);
    return Leg.of(ring, "ring A", setup, "The ring of the course.");
  }

  /** The ledger's one ring. */
  Leg ring() {
    return ring((int) reckoning.si("ring.photos"));
  }

  /** All rings and the views over the top. */
  ShotPlan plan() {
    Optional<Outcome.Refused> refused = StandardPlan.refusal(reckoning);
    if (refused.isPresent()) {
      throw new RefusedException(refused.get().reason(), refused.get().help());
    }
    return StandardPlan.of(reckoning).orElseThrow();
  }

  Coverage coverage(ShotPlan plan) {
    List<View> views = new ArrayList<>();
    for (ShotPlan.Shot shot : plan.shots()) {
      views.add(seeing.look(Viewpoint.of(shot)));
    }
    return Coverage.of(seeing, views);
  }

  Coverage coverage(Leg leg) {
    return coverage(new ShotPlan(List.of(leg)));
  }

  /** The patch of the side at middle height that is turned most squarely to a station. */
  int facing(Station station) {
    Vec3 towards = station.position().minus(seeing.middle());
    Vec3 level = new Vec3(towards.x(), towards.y(), 0).unit();
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < seeing.surface().count(); i++) {
      Vec3 centre = seeing.surface().patches().point(i);
      double squarely = level.dot(seeing.surface().patches().normal(i));
      double off = centre.minus(seeing.middle()).cross(level).norm();
      double outwards = centre.minus(seeing.middle()).dot(level) > 0 ? 1 : -1;
      double worth = squarely + outwards - off / reckoning.si("subject.height");
      if (worth > most) {
        most = worth;
        best = i;
      }
    }
    return best;
  }
}
