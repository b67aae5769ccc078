package ringbook.figures;

import ringbook.units.Num;
import ringbook.units.Require;

/**
 * A place on the drawing, in drawing units; y runs down.
 *
 * @param x to the right, finite
 * @param y down, finite
 */
public record Point(double x, double y) {

  public Point {
    Require.finite("x", x);
    Require.finite("y", y);
  }

  /** The point {@code distance} away, at {@code radians} anticlockwise from "right". */
  public Point towards(double radians, double distance) {
    return new Point(x + distance * Num.cos(radians), y - distance * Num.sin(radians));
  }

  /** The point moved. */
  public Point plus(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }

  /** The direction to {@code other}, anticlockwise from "right", in radians. */
  public double directionTo(Point other) {
    return Num.atan2(y - other.y, other.x - x);
  }

  /** How far {@code other} is. */
  public double distanceTo(Point other) {
    return Num.hypot(other.x - x, other.y - y);
  }

  /** The point a share of the way to {@code other}. */
  public Point between(Point other, double share) {
    return new Point(x + share * (other.x - x), y + share * (other.y - y));
  }
}
