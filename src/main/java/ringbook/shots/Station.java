package ringbook.shots;

import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;

/**
 * A place to take one photograph from.
 *
 * @param number from 1, in the order of walking
 * @param azimuth direction from the middle of the object, from +x towards +y
 * @param position of the lens, in metres, in the frame of the room
 * @param target the point the lens looks at, in metres, in the frame of the room
 */
public record Station(int number, Angle azimuth, Vec3 position, Vec3 target) {

  /** A station with its azimuth worked out from where it is; straight above the middle it is 0. */
  public static Station at(int number, Vec3 position, Vec3 target) {
    return new Station(number, new Angle(Num.atan2(position.y(), position.x())), position, target);
  }

  /** The same place with another number. */
  public Station numbered(int other) {
    return new Station(other, azimuth, position, target);
  }

  /** Where it looks, as a direction of length 1. */
  public Vec3 view() {
    return target.minus(position).unit();
  }

  /** Lens above the floor. */
  public Length lensHeight() {
    return new Length(position.z());
  }
}
