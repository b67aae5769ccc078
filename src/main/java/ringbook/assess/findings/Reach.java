package ringbook.assess.findings;

import ringbook.assess.Standing;
import ringbook.geometry.Vec3;
import ringbook.shots.Place;
import ringbook.shots.Scene;
import ringbook.shots.SceneDetails;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/** Where in the room of a scene a person can hold a lens. */
public final class Reach {

  private final Place place;
  private final double body;
  private final double lowest;

  /** For the place of a scene. */
  public Reach(Scene scene) {
    place = scene.place();
    body = SceneDetails.si(scene, "place.bodyRoom");
    double onTable = place.tableHeight().metres() + SceneDetails.si(scene, "kit.lensOffset");
    lowest = Math.max(place.lowestLens().metres(), onTable);
  }

  /** Lowest lens, in metres above the floor: within reach, and no lower than on the table. */
  public double lowest() {
    return lowest;
  }

  /** Highest lens, in metres above the floor. */
  public double highest() {
    return place.highestLens().metres();
  }

  /** Whether a person can hold a lens there, in metres in the frame of the room. */
  public boolean holds(Vec3 lens) {
    return lens.z() >= lowest - 1e-9
        && lens.z() <= highest() + 1e-9
        && isFree(new Angle(Num.atan2(lens.y(), lens.x())), Num.hypot(lens.x(), lens.y()));
  }

  /** Whether a person can stand behind a lens in that direction, so many metres out in plan. */
  boolean isFree(Angle azimuth, double metres) {
    return Standing.inTheWay(place, new Length(metres + body), azimuth).isEmpty();
  }

  /**
   * Metres in plan at which a whole ring passes outside all that is in the way at {@code metres}.
   */
  double beyond(double metres) {
    return Standing.beyondMetres(place, new Length(metres + body)) + body;
  }

  /** Metres in plan of the largest ring with nothing in the way. */
  double within() {
    return Standing.nearestMetres(place) - body;
  }
}
