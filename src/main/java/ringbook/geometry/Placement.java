package ringbook.geometry;

import ringbook.units.Angle;

/**
 * How a solid stands: tilted about its foot, then turned about the vertical, then moved.
 *
 * @param at where its foot, the origin of its own frame, comes to lie; metres
 * @param tilt how far its own upright leans away from the vertical; 180° is upside down
 * @param azimuth the direction it leans to, from +x towards +y
 */
public record Placement(Vec3 at, Angle tilt, Angle azimuth) {

  /** As it is. */
  public static final Placement NONE = upright(Vec3.ZERO);

  /** Upright, with its foot at a point in metres. */
  public static Placement upright(Vec3 at) {
    return new Placement(at, Angle.ZERO, Angle.ZERO);
  }

  /** A point or direction of the solid's own frame, turned but not moved. */
  public Vec3 turned(Vec3 v) {
    return Turn.of(tilt, azimuth).turned(v);
  }

  /** A point of the solid's own frame in the frame outside. */
  public Vec3 outside(Vec3 v) {
    return turned(v).plus(at);
  }

  /** A point of the frame outside in the solid's own frame. */
  public Vec3 own(Vec3 v) {
    return back().turned(v.minus(at));
  }

  /** What turns directions of the frame outside into the solid's own. */
  Turn back() {
    return Turn.of(new Angle(-tilt.radians()), azimuth);
  }
}
