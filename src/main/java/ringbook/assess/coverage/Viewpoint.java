package ringbook.assess.coverage;

import ringbook.shots.Leg;
import ringbook.shots.ShotPlan.Shot;
import ringbook.shots.Station;

/**
 * Where a photograph is taken from and how the camera is set for it.
 *
 * @param station place and direction, in the frame of the room
 * @param setup pose of the object, hold and focus
 */
public record Viewpoint(Station station, Leg.Setup setup) {

  /** The viewpoint of one shot of a plan. */
  public static Viewpoint of(Shot shot) {
    return new Viewpoint(shot.station(), shot.leg().setup());
  }
}
