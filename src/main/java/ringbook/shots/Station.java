package ringbook.shots;

import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;

/**
 * A place to take one photograph from.
 *
 * @param number from 1, in the order of walking
 * @param azimuth direction from the middle of the object, from +x towards +y
 * @param position of the lens, in metres, in the frame of the room
 * @param target the point the lens looks at, in metres, in the frame of the room
 */
public record Station(int number, Angle azimuth, Vec3 position, Vec3 target) {

  /** Where it looks, as a direction of length 1. */
  public Vec3 view() {
    return target.minus(position).unit();
  }

  /** Lens above the floor. */
  public Length lensHeight() {
    return new Length(position.z());
  }
}
