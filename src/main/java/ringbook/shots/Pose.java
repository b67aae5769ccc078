package ringbook.shots;

import ringbook.geometry.Vec3;

/**
 * How the object lies while a leg is photographed. Stations are always in the frame of the room.
 */
public enum Pose {
  /** As it usually stands. */
  STANDING,
  /**
   * Upside down on the same spot: turned by half a turn about the level line through its middle
   * that runs along x.
   */
  TURNED_OVER;

  /**
   * Where a spot of the object is when the object lies in this pose; the same turn leads back.
   *
   * @param standing where it is in the standing pose, in metres
   * @param middle of the object, in metres, which stays where it is
   */
  public Vec3 place(Vec3 standing, Vec3 middle) {
    return middle.plus(turn(standing.minus(middle)));
  }

  /** The same for a direction, such as the normal of a surface. */
  public Vec3 turn(Vec3 direction) {
    return this == STANDING ? direction : new Vec3(direction.x(), -direction.y(), -direction.z());
  }
}
