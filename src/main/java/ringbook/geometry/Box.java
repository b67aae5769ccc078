package ringbook.geometry;

import ringbook.units.Length;

/**
 * A block.
 *
 * @param width along x
 * @param depth along y
 * @param height along z
 */
public record Box(Length width, Length depth, Length height) implements Solid {

  public Box {
    Sizes.positive("width of a box", width);
    Sizes.positive("depth of a box", depth);
    Sizes.positive("height of a box", height);
  }

  @Override
  public double area() {
    double w = width.metres();
    double d = depth.metres();
    double h = height.metres();
    return 2 * (w * d + d * h + h * w);
  }

  @Override
  public double volume() {
    return width.metres() * depth.metres() * height.metres();
  }

  @Override
  public boolean contains(Vec3 p) {
    return Math.abs(p.x()) < width.metres() / 2
        && Math.abs(p.y()) < depth.metres() / 2
        && p.z() > 0
        && p.z() < height.metres();
  }

  @Override
  public Bounds bounds() {
    double x = width.metres() / 2;
    double y = depth.metres() / 2;
    return new Bounds(new Vec3(-x, -y, 0), new Vec3(x, y, height.metres()));
  }

  @Override
  public Mesh mesh(Length edge) {
    Bounds b = bounds();
    Vec3 low = b.low();
    Vec3 x = new Vec3(width.metres(), 0, 0);
    Vec3 y = new Vec3(0, depth.metres(), 0);
    Vec3 z = new Vec3(0, 0, height.metres());
    MeshDraft draft = new MeshDraft();
    Face face = new Face(draft, edge.metres());
    face.add("front", low, x, z);
    face.add("back", low.plus(x).plus(y), x.times(-1), z);
    face.add("left", low.plus(y), y.times(-1), z);
    face.add("right", low.plus(x), y, z);
    face.add("top", low.plus(z), x, y);
    face.add("base", low.plus(y), x, y.times(-1));
    return draft.mesh();
  }

  /** One flat face as a grid; faces that meet share the places of their points. */
  private record Face(MeshDraft draft, double edge) {

    void add(String part, Vec3 corner, Vec3 across, Vec3 up) {
      int columns = Math.max(1, (int) Math.ceil(across.norm() / edge));
      int rows = Math.max(1, (int) Math.ceil(up.norm() / edge));
      int number = draft.part(part);
      int[][] grid = new int[rows + 1][columns + 1];
      Vec3 right = corner.plus(across);
      Vec3 above = corner.plus(up);
      for (int r = 0; r <= rows; r++) {
        for (int c = 0; c <= columns; c++) {
          Vec3 foot = between(corner, right, c, columns);
          grid[r][c] = draft.point(pick(foot, between(corner, above, r, rows), across));
        }
      }
      for (int r = 0; r < rows; r++) {
        for (int c = 0; c < columns; c++) {
          draft.quad(
              new int[] {grid[r][c], grid[r][c + 1], grid[r + 1][c + 1], grid[r + 1][c]}, number);
        }
      }
    }

    private static Vec3 between(Vec3 from, Vec3 to, int step, int of) {
      return new Vec3(
          between(from.x(), to.x(), step, of),
          between(from.y(), to.y(), step, of),
          between(from.z(), to.z(), step, of));
    }

    /** Written so that it gives the same place when counted from the other end. */
    private static double between(double from, double to, int step, int of) {
      if (from == to || step == 0) {
        return from;
      }
      return step == of ? to : (from * (of - step) + to * step) / of;
    }

    /** Coordinates along {@code across} from the first point, the others from the second. */
    private static Vec3 pick(Vec3 foot, Vec3 rise, Vec3 across) {
      return new Vec3(
          across.x() == 0 ? rise.x() : foot.x(),
          across.y() == 0 ? rise.y() : foot.y(),
          across.z() == 0 ? rise.z() : foot.z());
    }
  }
}
