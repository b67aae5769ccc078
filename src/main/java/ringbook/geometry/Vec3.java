package ringbook.geometry;

import ringbook.units.Angle;
import ringbook.units.Num;
import ringbook.units.Require;

/**
 * A point or a direction in space. Positions are in metres; directions have no unit.
 *
 * @param x to the right, finite
 * @param y away from the door side, finite
 * @param z up, finite
 */
public record Vec3(double x, double y, double z) {

  /** The origin, and the direction that is none. */
  public static final Vec3 ZERO = new Vec3(0, 0, 0);

  /** Straight up. */
  public static final Vec3 UP = new Vec3(0, 0, 1);

  public Vec3 {
    Require.finite("x", x);
    Require.finite("y", y);
    Require.finite("z", z);
  }

  /** The direction of length 1 at {@code azimuth} from +x towards +y, {@code elevation} up. */
  public static Vec3 towards(Angle azimuth, Angle elevation) {
    double flat = Num.cos(elevation.radians());
    return new Vec3(
        flat * Num.cos(azimuth.radians()),
        flat * Num.sin(azimuth.radians()),
        Num.sin(elevation.radians()));
  }

  /** Sum. */
  public Vec3 plus(Vec3 other) {
    return new Vec3(x + other.x, y + other.y, z + other.z);
  }

  /** The way from {@code other} to this. */
  public Vec3 minus(Vec3 other) {
    return new Vec3(x - other.x, y - other.y, z - other.z);
  }

  /** This, stretched. */
  public Vec3 times(double factor) {
    return new Vec3(x * factor, y * factor, z * factor);
  }

  /** Dot product. */
  public double dot(Vec3 other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Cross product, right-handed. */
  public Vec3 cross(Vec3 other) {
    return new Vec3(
        y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Length, in the unit of the components. */
  public double norm() {
    return Math.sqrt(dot(this));
  }

  /**
   * The same direction with length 1.
   *
   * @throws IllegalArgumentException if this has no direction
   */
  public Vec3 unit() {
    return times(1 / Require.positive("length of a direction", "", norm()));
  }

  /** The angle between two directions, 0 to 180 degrees; exact also where it is tiny. */
  public Angle angleTo(Vec3 other) {
    return new Angle(Num.atan2(cross(other).norm(), dot(other)));
  }
}
