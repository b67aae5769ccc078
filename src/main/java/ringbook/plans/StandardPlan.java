package ringbook.plans;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.geometry.Vec3;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.shots.Leg;
import ringbook.shots.Leg.Setup;
import ringbook.shots.Pose;
import ringbook.shots.Ring;
import ringbook.shots.ShotPlan;
import ringbook.shots.Station;
import ringbook.units.Angle;

/**
 * The plan the ledger's numbers describe, laid out as stations: rings evenly from the lowest to the
 * highest, an arc over the top, and the same for a second pose. It knows nothing of walls and of
 * the object's shape; {@code photos()} is {@code job.photos} without the spares.
 */
public final class StandardPlan {

  private static final String[] NEEDED = {"job.photos", "sharp.focus"};

  private final Reckoning r;
  private final List<Leg> legs = new ArrayList<>();
  private int rings;

  private StandardPlan(Reckoning reckoning) {
    r = reckoning;
  }

  /** The plan; empty where the scene allows none, for the reason that {@link #refusal} gives. */
  public static Optional<ShotPlan> of(Reckoning reckoning) {
    return refusal(reckoning).isPresent()
        ? Optional.empty()
        : Optional.of(new StandardPlan(reckoning).plan());
  }

  /** Why the scene allows no plan, if it does not. */
  public static Optional<Outcome.Refused> refusal(Reckoning reckoning) {
    for (String key : NEEDED) {
      if (reckoning.of(key) instanceof Outcome.Refused refused) {
        return Optional.of(refused);
      }
    }
    return Optional.empty();
  }

  private ShotPlan plan() {
    pose(Pose.STANDING, r.angle("rings.lowest"), (int) r.si("rings.count"));
    if (r.si("aim.poses") > 1) {
      pose(Pose.TURNED_OVER, lowestTurned(), (int) r.si("pose.rings"));
    }
    return new ShotPlan(legs);
  }

  /** The lowest elevation of the second pose: what the first pose's lowest ring saw, from below. */
  private Angle lowestTurned() {
    double low = r.si("rings.lowest");
    return new Angle(Math.min(Math.abs(low), r.si("rings.highest")));
  }

  private void pose(Pose pose, Angle lowest, int count) {
    Ring one =
        new Ring(
            r.length("ring.middleHeight"),
            r.length("ring.radius"),
            lowest,
            (int) r.si("ring.photos"));
    for (Ring ring : one.stack(lowest, r.angle("rings.highest"), count)) {
      String name = LegNames.ring(rings++);
      legs.add(Leg.of(ring, name, setup(pose, (int) r.si("aim.repeats")), why(name, ring)));
    }
    legs.add(over(pose));
  }

  private Setup setup(Pose pose, int repeats) {
    return new Setup(pose, r.scene().aim().hold(), r.length("sharp.focus"), repeats);
  }

  private static String why(String name, Ring ring) {
    double degrees = ring.elevation().degrees();
    return Sentences.capital(name)
        + ", "
        + Sentences.elevation(ring.elevation())
        + ": "
        + Sentences.photographs(ring.photos())
        + ", "
        + Sentences.degrees(ring.step())
        + " apart"
        + (degrees < 0 ? "; the camera looks up from below the middle." : ".");
  }

  /** The arc over the top, from the door side to the far side. */
  private Leg over(Pose pose) {
    int views = (int) r.si("rings.topViews");
    double high = r.si("rings.highest");
    Vec3 middle = new Vec3(0, 0, r.si("ring.middleHeight"));
    List<Station> stations =
        new TopArc(middle, r.length("ring.radius"), new Angle(high)).stations(views);
    boolean standing = pose == Pose.STANDING;
    String name = standing ? "top" : "underside";
    return new Leg(name, Leg.Kind.TOP, setup(pose, 1), stations, whyOver(standing, views));
  }

  private static String whyOver(boolean standing, int views) {
    return (standing ? "Over the top: " : "Over the underside, which now lies on top: ")
        + Sentences.photographs(views)
        + (views == 1
            ? " from straight above."
            : " in an arc from one side of the highest ring to the other.");
  }
}
