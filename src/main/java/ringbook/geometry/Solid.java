package ringbook.geometry;

import ringbook.units.Length;

/**
 * A body in its own frame: it stands on z = 0 with its axis, or its middle, over the origin. Areas
 * and volumes are closed forms; {@link #mesh} comes near them with the square of the edge.
 */
public sealed interface Solid permits Box, Cylinder, Cone, Ball, Torus, Tube, Lathe, Plate, Scan {

  /** Area of the whole surface, square metres. */
  double area();

  /** Volume, cubic metres. */
  double volume();

  /** Whether a point in metres lies inside; on the surface either answer may come. */
  boolean contains(Vec3 point);

  /** The block it fits in. */
  Bounds bounds();

  /**
   * Its surface as triangles whose edges are about {@code edge} long, but round parts have at least
   * 12 sides.
   */
  Mesh mesh(Length edge);
}
