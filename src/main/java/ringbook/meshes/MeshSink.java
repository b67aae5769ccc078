package ringbook.meshes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ringbook.geometry.Mesh;
import ringbook.units.Numbers;
import ringbook.units.Words;

/** Collects points and triangles, within the limits and with every number checked. */
final class MeshSink {

  private static final String COARSER =
      "export a coarser one: 100 000 triangles show all that a plan needs";

  private final double metres;
  private double[] xyz = new double[3 * 1024];
  private int points;
  private int[] corners = new int[3 * 1024];
  private int[] part = new int[1024];
  private int triangles;
  private final List<String> parts = new ArrayList<>();
  private int current = -1;
  private int highest = -1;
  private int highestLine;

  MeshSink(MeshUnit unit) {
    this.metres = unit.metres();
  }

  int points() {
    return points;
  }

  int triangles() {
    return triangles;
  }

  /** Triangles from here on belong to the part of that name. */
  void part(String name) {
    current = parts.indexOf(name);
    if (current < 0 && parts.size() < 200) {
      parts.add(name);
    }
    current = current < 0 ? parts.size() - 1 : current;
  }

  /** Refuses a head that announces more than is read, before any of it is. */
  static void requireFew(long points, long triangles, int line) throws BrokenMeshException {
    if (triangles > MeshLimits.MOST_TRIANGLES || points > MeshLimits.MOST_POINTS) {
      boolean faces = triangles > MeshLimits.MOST_TRIANGLES;
      throw new BrokenMeshException(
          line,
          "the file announces "
              + plain(faces ? triangles : points)
              + (faces ? " triangles" : " points")
              + "; Ringbook reads at most "
              + (faces ? MeshLimits.MOST_TRIANGLES_TOLD : MeshLimits.MOST_POINTS_TOLD),
          COARSER + "; if it should not be that large, it is damaged: export it again");
    }
  }

  private static String plain(long count) {
    return Numbers.grouped(Long.toString(count)).replace('\u202f', ' ');
  }

  private static BrokenMeshException tooLarge(String most, int line) {
    return new BrokenMeshException(line, "the mesh has more than " + most, COARSER);
  }

  /** Refuses so many triangles more than is read. */
  void requireRoom(int more, int line) throws BrokenMeshException {
    if (triangles + more > MeshLimits.MOST_TRIANGLES) {
      throw tooLarge(MeshLimits.MOST_TRIANGLES_TOLD, line);
    }
  }

  /** Adds a point in units of the file; {@code where} is a line or, below 0, minus a byte. */
  void point(double[] p, long where) throws BrokenMeshException {
    if (points == MeshLimits.MOST_POINTS) {
      throw tooLarge(MeshLimits.MOST_POINTS_TOLD, (int) Math.max(0, where));
    }
    for (double x : p) {
      if (!(Math.abs(x * metres) <= 1e6)) {
        throw new BrokenMeshException(
            (int) Math.max(0, where),
            "a coordinate is "
                + (Double.isNaN(x)
                    ? "not a number (NaN)"
                    : Double.isInfinite(x) ? "infinite" : "beyond 1000 km")
                + (where < 0 ? " at byte " + -where : ""),
            "repair the mesh in the program it comes from and export it again");
      }
    }
    if (3 * points == xyz.length) {
      xyz = Arrays.copyOf(xyz, 2 * xyz.length);
    }
    for (int k = 0; k < 3; k++) {
      xyz[3 * points + k] = p[k] * metres;
    }
    points++;
  }

  /** Adds a polygon as a fan of triangles; points may still be to come. */
  void polygon(int[] numbers, int line) throws BrokenMeshException {
    if (numbers.length < 3) {
      throw new BrokenMeshException(line, "a face has fewer than three corners", "leave it out");
    }
    requireRoom(numbers.length - 2, line);
    for (int number : numbers) {
      if (number < 0) {
        throw noPoint(line, number);
      }
      if (number > highest) {
        highest = number;
        highestLine = line;
      }
    }
    for (int i = 2; i < numbers.length; i++) {
      triangle(numbers[0], numbers[i - 1], numbers[i]);
    }
  }

  private void triangle(int a, int b, int c) {
    if (triangles == part.length) {
      part = Arrays.copyOf(part, 2 * triangles);
      corners = Arrays.copyOf(corners, 6 * triangles);
    }
    if (current < 0) {
      part("surface");
    }
    corners[3 * triangles] = a;
    corners[3 * triangles + 1] = b;
    corners[3 * triangles + 2] = c;
    part[triangles++] = current;
  }

  private BrokenMeshException noPoint(int line, int number) {
    return new BrokenMeshException(
        line,
        "a face names point "
            + number
            + " (counted from 0), but the file has "
            + Words.count(points, "point"),
        "the file is damaged or cut off; export it again");
  }

  Mesh mesh() throws BrokenMeshException {
    if (triangles == 0) {
      throw new BrokenMeshException(
          0,
          points == 0 ? "the file holds no mesh" : "the file holds points but no faces",
          "export the surface as triangles");
    }
    if (highest >= points) {
      throw noPoint(highestLine, highest);
    }
    return Mesh.of(
        Arrays.copyOf(xyz, 3 * points),
        Arrays.copyOf(corners, 3 * triangles),
        Arrays.copyOf(part, triangles),
        parts);
  }
}
