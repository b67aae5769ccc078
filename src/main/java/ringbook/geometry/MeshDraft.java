package ringbook.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A mesh as it grows: points, then triangles that name them. */
final class MeshDraft {

  private double[] xyz = new double[96];
  private int coordinates;
  private int[] corners = new int[96];
  private int[] part = new int[32];
  private int triangles;
  private final List<String> parts = new ArrayList<>();

  /** The number of the part of that name; a new one the first time. */
  int part(String name) {
    int at = parts.indexOf(name);
    if (at >= 0) {
      return at;
    }
    parts.add(name);
    return parts.size() - 1;
  }

  /** Adds a point in metres and gives its number. */
  int point(double x, double y, double z) {
    if (coordinates + 3 > xyz.length) {
      xyz = Arrays.copyOf(xyz, xyz.length * 2);
    }
    xyz[coordinates] = x;
    xyz[coordinates + 1] = y;
    xyz[coordinates + 2] = z;
    coordinates += 3;
    return coordinates / 3 - 1;
  }

  int point(Vec3 p) {
    return point(p.x(), p.y(), p.z());
  }

  /** Adds a triangle, anticlockwise as seen from outside. */
  void triangle(int a, int b, int c, int ofPart) {
    if (triangles == part.length) {
      part = Arrays.copyOf(part, triangles * 2);
      corners = Arrays.copyOf(corners, triangles * 6);
    }
    corners[3 * triangles] = a;
    corners[3 * triangles + 1] = b;
    corners[3 * triangles + 2] = c;
    part[triangles] = ofPart;
    triangles++;
  }

  /** Adds a flat quadrilateral, anticlockwise as seen from outside. */
  void quad(int[] q, int ofPart) {
    triangle(q[0], q[1], q[2], ofPart);
    triangle(q[0], q[2], q[3], ofPart);
  }

  Mesh mesh() {
    return Mesh.own(
        Arrays.copyOf(xyz, coordinates),
        Arrays.copyOf(corners, 3 * triangles),
        Arrays.copyOf(part, triangles),
        parts);
  }
}
