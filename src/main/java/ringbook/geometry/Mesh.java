package ringbook.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ringbook.units.Angle;

/**
 * A surface of triangles, positions in metres. Corners run anticlockwise as seen from outside. Each
 * triangle belongs to a part that has a name a person understands, such as "rim" or "pocket 1".
 */
public final class Mesh extends Parted {

  private final int[] corners;

  private Mesh(double[] xyz, int[] corners, int[] part, List<String> parts) {
    super(xyz, part, parts);
    this.corners = corners;
  }

  /**
   * The mesh of these points and triangles, all of them copied.
   *
   * @param xyz three finite coordinates a point, metres
   * @param corners three numbers of points a triangle
   * @param part the number of a part a triangle
   * @param parts names of the parts
   * @throws IllegalArgumentException if a coordinate is not finite or a number points nowhere
   */
  public static Mesh of(double[] xyz, int[] corners, int[] part, List<String> parts) {
    if (xyz.length % 3 != 0 || corners.length % 3 != 0 || part.length * 3 != corners.length) {
      throw new IllegalArgumentException(
          "a mesh needs three coordinates a point, three corners and one part a triangle");
    }
    for (double x : xyz) {
      if (!(Math.abs(x) < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException("a coordinate of the mesh is not a finite number");
      }
    }
    requireBelow(xyz.length / 3, corners, "point");
    requireBelow(parts.size(), part, "part");
    return new Mesh(xyz.clone(), corners.clone(), part.clone(), parts);
  }

  private static void requireBelow(int count, int[] numbers, String noun) {
    for (int number : numbers) {
      if (number < 0 || number >= count) {
        throw new IllegalArgumentException(
            "the mesh names " + noun + " " + number + " but has only " + count);
      }
    }
  }

  /** The mesh that takes these arrays over; nobody else may keep them. */
  static Mesh own(double[] xyz, int[] corners, int[] part, List<String> parts) {
    return new Mesh(xyz, corners, part, parts);
  }

  /** How many triangles it has. */
  public int triangles() {
    return partNumbers().length;
  }

  /** How many points it has. */
  public int points() {
    return coordinates().length / 3;
  }

  /** The number of the point at corner {@code k} (0, 1 or 2) of a triangle. */
  public int corner(int triangle, int k) {
    return corners[3 * triangle + k];
  }

  /** The normal of a triangle, twice as long as its area in square metres. */
  public Vec3 doubleNormal(int triangle) {
    Vec3 a = point(corner(triangle, 0));
    return point(corner(triangle, 1)).minus(a).cross(point(corner(triangle, 2)).minus(a));
  }

  /** Area of one triangle, square metres. */
  public double area(int triangle) {
    return doubleNormal(triangle).norm() / 2;
  }

  /** Area of all triangles, square metres. */
  public double area() {
    double sum = 0;
    for (int t = 0; t < triangles(); t++) {
      sum += area(t);
    }
    return sum;
  }

  /**
   * Volume inside, cubic metres, by summing pyramids over the triangles; negative where the
   * triangles face inwards, without meaning where the mesh is open.
   */
  public double volume() {
    if (triangles() == 0) {
      return 0;
    }
    Vec3 middle = bounds().middle();
    double sum = 0;
    for (int t = 0; t < triangles(); t++) {
      sum += point(corner(t, 0)).minus(middle).dot(doubleNormal(t));
    }
    return sum / 6;
  }

  /**
   * The block that holds all points.
   *
   * @throws IllegalStateException if there are none
   */
  public Bounds bounds() {
    if (coordinates().length == 0) {
      throw new IllegalStateException("an empty mesh has no bounds");
    }
    double[] low = {coordinates()[0], coordinates()[1], coordinates()[2]};
    double[] high = low.clone();
    for (int i = 0; i < coordinates().length; i++) {
      low[i % 3] = Math.min(low[i % 3], coordinates()[i]);
      high[i % 3] = Math.max(high[i % 3], coordinates()[i]);
    }
    return new Bounds(new Vec3(low[0], low[1], low[2]), new Vec3(high[0], high[1], high[2]));
  }

  /**
   * Whether every edge joins two triangles that run along it in opposite directions, so that there
   * is an inside. Points at the same place count as one.
   */
  public boolean isClosed() {
    return MeshFaults.of(this).isClosed();
  }

  /** This, moved by a way in metres. */
  public Mesh moved(Vec3 way) {
    return placed(Placement.upright(way));
  }

  /**
   * This, tipped over about a horizontal axis through the origin and set down again so that its
   * lowest point is where it was; 180° is upside down.
   *
   * @param tilt how far
   * @param azimuth the direction its top goes, from +x towards +y
   */
  public Mesh turnedOver(Angle tilt, Angle azimuth) {
    Mesh turned = placed(new Placement(Vec3.ZERO, tilt, azimuth));
    double rise = bounds().low().z() - turned.bounds().low().z();
    return turned.moved(new Vec3(0, 0, rise));
  }

  /** This, as it stands when its own frame is placed so. */
  public Mesh placed(Placement placement) {
    double[] to = new double[coordinates().length];
    for (int p = 0; p < points(); p++) {
      Vec3 at = placement.outside(point(p));
      to[3 * p] = at.x();
      to[3 * p + 1] = at.y();
      to[3 * p + 2] = at.z();
    }
    return new Mesh(to, corners, partNumbers(), parts());
  }

  /** This, stretched along the three axes from the origin; factors above 0. */
  public Mesh stretched(double alongX, double alongY, double alongZ) {
    double[] factor = {alongX, alongY, alongZ};
    double[] to = new double[coordinates().length];
    for (int i = 0; i < coordinates().length; i++) {
      to[i] = coordinates()[i] * factor[i % 3];
    }
    return new Mesh(to, corners, partNumbers(), parts());
  }

  /** The same surface with inside and outside swapped. */
  public Mesh reversed() {
    int[] swapped = corners.clone();
    for (int t = 0; t < triangles(); t++) {
      swapped[3 * t + 1] = corners[3 * t + 2];
      swapped[3 * t + 2] = corners[3 * t + 1];
    }
    return new Mesh(coordinates(), swapped, partNumbers(), parts());
  }

  /** The same surface with other names for its parts, as many. */
  public Mesh named(List<String> names) {
    if (names.size() != parts().size()) {
      throw new IllegalArgumentException(
          "the mesh has " + parts().size() + " parts, not " + names.size());
    }
    return new Mesh(coordinates(), corners, partNumbers(), names);
  }

  /** All of these in one mesh; parts of the same name become one. */
  public static Mesh joined(List<Mesh> meshes) {
    int coordinates = 0;
    int triangles = 0;
    for (Mesh mesh : meshes) {
      coordinates += mesh.coordinates().length;
      triangles += mesh.triangles();
    }
    double[] xyz = new double[coordinates];
    int[] corners = new int[3 * triangles];
    int[] part = new int[triangles];
    List<String> parts = new ArrayList<>();
    int p = 0;
    int t = 0;
    for (Mesh mesh : meshes) {
      int[] number = numbers(mesh.parts(), parts);
      System.arraycopy(mesh.coordinates(), 0, xyz, 3 * p, mesh.coordinates().length);
      for (int i = 0; i < mesh.triangles(); i++) {
        for (int k = 0; k < 3; k++) {
          corners[3 * (t + i) + k] = mesh.corner(i, k) + p;
        }
        part[t + i] = number[mesh.partNumbers()[i]];
      }
      p += mesh.points();
      t += mesh.triangles();
    }
    return new Mesh(xyz, corners, part, parts);
  }

  private static int[] numbers(List<String> names, List<String> all) {
    int[] number = new int[names.size()];
    for (int i = 0; i < number.length; i++) {
      if (!all.contains(names.get(i))) {
        all.add(names.get(i));
      }
      number[i] = all.indexOf(names.get(i));
    }
    return number;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Mesh mesh
        && Arrays.equals(coordinates(), mesh.coordinates())
        && Arrays.equals(corners, mesh.corners)
        && Arrays.equals(partNumbers(), mesh.partNumbers())
        && parts().equals(mesh.parts());
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(coordinates()) + Arrays.hashCode(corners);
  }

  @Override
  public String toString() {
    return triangles() + " triangles, " + points() + " points, parts " + parts();
  }
}
