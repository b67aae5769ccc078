package ringbook.plans;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import ringbook.geometry.Vec3;
import ringbook.units.Angle;
import ringbook.units.Numbers;

/**
 * Makes the stone owl of the tests, {@code owl.obj}: blobs that run into each other, drawn by the
 * distance from the middle in every direction. Run by hand with the path of the file.
 */
final class StoneOwl {

  private static final int ROUND = 64;
  private static final int DOWN = 40;
  private static final Vec3 MIDDLE = new Vec3(0, 0, 12);

  /** Middle, reach to the sides and upwards of a blob, in centimetres. */
  private record Blob(double x, double y, double z, double side, double up) {
    double at(Vec3 p) {
      double dx = (p.x() - x) / side;
      double dy = (p.y() - y) / side;
      double dz = (p.z() - z) / up;
      return Math.exp(-(dx * dx + dy * dy + dz * dz));
    }
  }

  private static final Blob[] BLOBS = {
    new Blob(0, 0, 8, 8, 9), // body
    new Blob(0, -0.5, 19, 6, 5), // head
    new Blob(-4, -0.5, 24, 1.8, 2.5), // ears
    new Blob(4, -0.5, 24, 1.8, 2.5),
    new Blob(-2.3, -5.5, 20, 1.6, 1.6), // eyes
    new Blob(2.3, -5.5, 20, 1.6, 1.6),
    new Blob(0, -6.5, 18, 1, 1.2), // beak
    new Blob(-6.5, 1, 10, 3, 6), // wings
    new Blob(6.5, 1, 10, 3, 6)
  };

  private StoneOwl() {}

  /** Writes the file named. */
  public static void main(String[] args) throws IOException {
    Files.writeString(Path.of(args[0]), obj());
  }

  static String obj() {
    StringBuilder out = new StringBuilder("# a stone owl, centimetres; made by StoneOwl\no owl\n");
    for (int i = 1; i < DOWN; i++) {
      for (int k = 0; k < ROUND; k++) {
        vertex(Angle.ofDegrees(360.0 * k / ROUND), Angle.ofDegrees(90 - 180.0 * i / DOWN), out);
      }
    }
    vertex(Angle.ZERO, Angle.ofDegrees(90), out);
    vertex(Angle.ZERO, Angle.ofDegrees(-90), out);
    int top = (DOWN - 1) * ROUND + 1;
    int last = (DOWN - 2) * ROUND + 1;
    for (int k = 0; k < ROUND; k++) {
      int next = (k + 1) % ROUND;
      face(top, k + 1, next + 1, out);
      face(top + 1, last + next, last + k, out);
      for (int i = 0; i < DOWN - 2; i++) {
        int a = i * ROUND + k + 1;
        int b = i * ROUND + next + 1;
        face(a, a + ROUND, b, out);
        face(b, a + ROUND, b + ROUND, out);
      }
    }
    return out.toString();
  }

  private static void vertex(Angle azimuth, Angle elevation, StringBuilder out) {
    Vec3 direction = Vec3.towards(azimuth, elevation);
    double inside = 0;
    double outside = 40;
    for (int i = 0; i < 50; i++) {
      double half = (inside + outside) / 2;
      if (isStone(MIDDLE.plus(direction.times(half)))) {
        inside = half;
      } else {
        outside = half;
      }
    }
    Vec3 at = MIDDLE.plus(direction.times(inside));
    out.append("v ")
        .append(Numbers.fixed(at.x(), 3))
        .append(' ')
        .append(Numbers.fixed(at.y(), 3))
        .append(' ')
        .append(Numbers.fixed(at.z(), 3))
        .append('\n');
  }

  private static boolean isStone(Vec3 p) {
    double field = 0;
    for (Blob blob : BLOBS) {
      field += blob.at(p);
    }
    return field > 0.5 && p.z() > 0;
  }

  private static void face(int a, int b, int c, StringBuilder out) {
    out.append("f ").append(a).append(' ').append(b).append(' ').append(c).append('\n');
  }
}
