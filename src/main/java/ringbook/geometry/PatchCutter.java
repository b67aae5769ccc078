package ringbook.geometry;

import java.util.Arrays;

/**
 * Cuts a mesh into patches: large triangles fall into small pieces first, then the pieces of each
 * part are halved by place and by the way they face until each heap has the area of one patch.
 */
final class PatchCutter {

  /** A patch is made of at least about so many pieces. */
  private static final double PIECES = 6;

  private final Mesh mesh;
  private final double piece;
  private final double patch;

  /** Seven numbers a piece: middle, normal, area. */
  private double[] pieces = new double[7 * 1024];

  private int pieceCount;
  private int[] order;
  private double[] key;

  private double[] centre;
  private double[] normal;
  private double[] area;
  private int[] part;
  private int count;

  PatchCutter(Mesh mesh, int wanted) {
    this.mesh = mesh;
    this.patch = mesh.area() / wanted;
    this.piece = patch / PIECES;
    this.centre = new double[3 * wanted + 96];
    this.normal = new double[3 * wanted + 96];
    this.area = new double[wanted + 32];
    this.part = new int[wanted + 32];
  }

  Patches patches() {
    int[] from = new int[mesh.parts().size() + 1];
    for (int p = 0; p < mesh.parts().size(); p++) {
      for (int t = 0; t < mesh.triangles(); t++) {
        if (mesh.part(t) == p) {
          cutTriangle(t);
        }
      }
      from[p + 1] = pieceCount;
    }
    order = new int[pieceCount];
    key = new double[pieceCount];
    for (int i = 0; i < pieceCount; i++) {
      order[i] = i;
    }
    for (int p = 0; p < mesh.parts().size(); p++) {
      heap(from[p], from[p + 1], p);
    }
    return new Patches(
        Arrays.copyOf(centre, 3 * count),
        Arrays.copyOf(normal, 3 * count),
        Arrays.copyOf(area, count),
        Arrays.copyOf(part, count),
        mesh.parts());
  }

  private void cutTriangle(int t) {
    Vec3 twice = mesh.doubleNormal(t);
    double size = twice.norm() / 2;
    if (size > 0) {
      int number = (int) Math.max(1, Math.ceil(size / piece - 1e-9));
      cut(
          new Vec3[] {
            mesh.point(mesh.corner(t, 0)),
            mesh.point(mesh.corner(t, 1)),
            mesh.point(mesh.corner(t, 2))
          },
          twice.times(0.5 / size),
          size,
          number);
    }
  }

  /** Into so many pieces of the same area, always across the longest side. */
  private void cut(Vec3[] p, Vec3 unit, double size, int number) {
    if (number == 1) {
      add(p[0].plus(p[1]).plus(p[2]).times(1.0 / 3), unit, size);
      return;
    }
    int k = 0;
    for (int i = 1; i < 3; i++) {
      if (p[i].minus(p[(i + 1) % 3]).norm() > p[k].minus(p[(k + 1) % 3]).norm()) {
        k = i;
      }
    }
    Vec3 a = p[k];
    Vec3 b = p[(k + 1) % 3];
    Vec3 c = p[(k + 2) % 3];
    int first = number / 2;
    double share = (double) first / number;
    Vec3 between = a.plus(b.minus(a).times(share));
    cut(new Vec3[] {a, between, c}, unit, size * share, first);
    cut(new Vec3[] {between, b, c}, unit, size * (1 - share), number - first);
  }

  private void add(Vec3 middle, Vec3 unit, double size) {
    if (7 * (pieceCount + 1) > pieces.length) {
      pieces = Arrays.copyOf(pieces, 2 * pieces.length);
    }
    int at = 7 * pieceCount++;
    pieces[at] = middle.x();
    pieces[at + 1] = middle.y();
    pieces[at + 2] = middle.z();
    pieces[at + 3] = unit.x();
    pieces[at + 4] = unit.y();
    pieces[at + 5] = unit.z();
    pieces[at + 6] = size;
  }

  private void heap(int from, int to, int ofPart) {
    double size = sum(from, to, 6);
    if (size > 0) {
      int number = (int) Math.max(1, Math.floor(size / patch + 0.5));
      halve(from, to, size, number, ofPart);
    }
  }

  private double sum(int from, int to, int column) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += pieces[7 * order[i] + column];
    }
    return sum;
  }

  private void halve(int from, int to, double size, int number, int ofPart) {
    if (number == 1 || to - from == 1) {
      finish(from, to, size, ofPart);
      return;
    }
    int axis = widest(from, to, Math.sqrt(size));
    for (int i = from; i < to; i++) {
      key[order[i]] = pieces[7 * order[i] + axis];
    }
    int first = number / 2;
    double goal = size * first / number;
    int middle = split(from, to, goal);
    double got = sum(from, middle, 6);
    halve(from, middle, got, first, ofPart);
    halve(middle, to, size - got, number - first, ofPart);
  }

  /** The coordinate, or the normal's one times {@code size}, along which the heap is longest. */
  private int widest(int from, int to, double size) {
    int widest = 0;
    double most = -1;
    for (int axis = 0; axis < 6; axis++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = from; i < to; i++) {
        double x = pieces[7 * order[i] + axis];
        low = Math.min(low, x);
        high = Math.max(high, x);
      }
      double span = (high - low) * (axis < 3 ? 1 : size / 2);
      if (span > most) {
        most = span;
        widest = axis;
      }
    }
    return widest;
  }

  /** Reorders so that the pieces of the smallest keys come first, up to the area wanted. */
  private int split(int from, int to, double goal) {
    int low = from;
    int high = to;
    double before = 0;
    while (high - low > 1) {
      double pivot = key[order[(low + high) / 2]];
      int less = low;
      int more = high;
      int i = low;
      double lessArea = 0;
      double sameArea = 0;
      while (i < more) {
        double k = key[order[i]];
        double a = pieces[7 * order[i] + 6];
        if (k < pivot) {
          lessArea += a;
          swap(i++, less++);
        } else if (k > pivot) {
          swap(i, --more);
        } else {
          sameArea += a;
          i++;
        }
      }
      if (before + lessArea > goal && less > low) {
        high = less;
      } else if (before + lessArea + sameArea >= goal || more == high) {
        before += lessArea;
        low = less;
        high = more;
        break;
      } else {
        before += lessArea + sameArea;
        low = more;
      }
    }
    int at = low;
    while (at < to - 1 && before + pieces[7 * order[at] + 6] / 2 < goal) {
      before += pieces[7 * order[at] + 6];
      at++;
    }
    return Math.max(from + 1, Math.min(to - 1, at));
  }

  private void swap(int i, int j) {
    int other = order[i];
    order[i] = order[j];
    order[j] = other;
  }

  /** One patch: its point is the middle of the piece nearest to the middle of all. */
  private void finish(int from, int to, double size, int ofPart) {
    double[] mean = new double[6];
    for (int i = from; i < to; i++) {
      for (int k = 0; k < 6; k++) {
        mean[k] += pieces[7 * order[i] + k] * pieces[7 * order[i] + 6] / size;
      }
    }
    int best = order[from];
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < to; i++) {
      double far = 0;
      for (int k = 0; k < 6; k++) {
        double d = pieces[7 * order[i] + k] - mean[k];
        far += d * d * (k < 3 ? 1 : size);
      }
      if (far < least) {
        least = far;
        best = order[i];
      }
    }
    room();
    for (int k = 0; k < 3; k++) {
      centre[3 * count + k] = pieces[7 * best + k];
    }
    facing(mean, best);
    area[count] = size;
    part[count] = ofPart;
    count++;
  }

  /** The mean normal, or that of the patch's point where the patch bends too much for a mean. */
  private void facing(double[] mean, int best) {
    double x = mean[3];
    double y = mean[4];
    double z = mean[5];
    double length = Math.sqrt(x * x + y * y + z * z);
    boolean bent = length < 0.7;
    normal[3 * count] = bent ? pieces[7 * best + 3] : x / length;
    normal[3 * count + 1] = bent ? pieces[7 * best + 4] : y / length;
    normal[3 * count + 2] = bent ? pieces[7 * best + 5] : z / length;
  }

  private void room() {
    if (count == area.length) {
      centre = Arrays.copyOf(centre, 2 * centre.length);
      normal = Arrays.copyOf(normal, 2 * normal.length);
      area = Arrays.copyOf(area, 2 * area.length);
      part = Arrays.copyOf(part, 2 * part.length);
    }
  }
}
