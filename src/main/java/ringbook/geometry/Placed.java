package ringbook.geometry;

/**
 * A solid at its place in a shape, there to add to it or to be cut away.
 *
 * @param name what a person calls it, such as "handle" or "pocket 1"; empty where it goes without
 * @param solid in its own frame
 * @param placement where it stands
 * @param isCut whether it is taken away
 */
public record Placed(String name, Solid solid, Placement placement, boolean isCut) {

  /** A solid that belongs to the shape. */
  public static Placed of(String name, Solid solid, Placement placement) {
    return new Placed(name, solid, placement, false);
  }

  /** A hole of the form of {@code solid}. */
  public static Placed cut(String name, Solid solid, Placement placement) {
    return new Placed(name, solid, placement, true);
  }

  /** Whether a point of the shape's frame lies in the solid. */
  boolean contains(Vec3 point) {
    return solid.contains(placement.own(point));
  }

  /** The block it fits in, in the shape's frame. */
  Bounds bounds() {
    Bounds own = solid.bounds();
    Bounds all = null;
    for (int i = 0; i < 8; i++) {
      Vec3 corner =
          placement.outside(
              new Vec3(
                  (i & 1) == 0 ? own.low().x() : own.high().x(),
                  (i & 2) == 0 ? own.low().y() : own.high().y(),
                  (i & 4) == 0 ? own.low().z() : own.high().z()));
      Bounds one = new Bounds(corner, corner);
      all = all == null ? one : all.with(one);
    }
    return all;
  }
}
