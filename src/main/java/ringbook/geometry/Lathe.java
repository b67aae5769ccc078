package ringbook.geometry;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Require;

/**
 * A body turned on a lathe, solid or an open vessel. {@code outside} runs from foot to top, {@code
 * inside} from the top down to the floor of the hollow; both are joined by a rim at the top and by
 * the base at the foot. A hollow that ends away from the axis on the base has a hole there.
 *
 * @param outside at least two points
 * @param inside empty for a solid body
 */
public record Lathe(List<Point> outside, List<Point> inside) implements Solid {

  /**
   * A point of the outline.
   *
   * @param radius from the axis, at least 0
   * @param height above the foot, at least 0
   */
  public record Point(Length radius, Length height) {
    public Point {
      Require.notNegative("radius of a point", "m", radius.metres());
      Require.notNegative("height of a point", "m", height.metres());
    }

    double r() {
      return radius.metres();
    }

    double z() {
      return height.metres();
    }
  }

  public Lathe {
    outside = List.copyOf(outside);
    inside = List.copyOf(inside);
    if (outside.size() < 2) {
      throw new IllegalArgumentException("the outside of a turned body needs two points or more");
    }
    Outline.of(outside, inside).check();
  }

  private Outline outline() {
    return Outline.of(outside, inside);
  }

  /** By Pappus: each stretch of the outline sweeps a cone. */
  @Override
  public double area() {
    Outline outline = outline();
    double sum = 0;
    for (int i = 0; i + 1 < outline.size(); i++) {
      Point a = outline.at(i);
      Point b = outline.at(i + 1);
      sum += Math.PI * (a.r() + b.r()) * Num.hypot(b.r() - a.r(), b.z() - a.z());
    }
    return sum;
  }

  @Override
  public double volume() {
    return outline().volume();
  }

  @Override
  public boolean contains(Vec3 p) {
    double radius = Num.hypot(p.x(), p.y());
    // Lines from and to the axis are level and so cross nothing.
    boolean in = isCrossed(outside, radius, p.z()) ^ isCrossed(inside, radius, p.z());
    if (inside.isEmpty()) {
      return in;
    }
    Point foot = outside.get(0);
    Point top = outside.get(outside.size() - 1);
    Point end = inside.get(inside.size() - 1);
    boolean hole = end.r() > 0 && isCrossed(end, foot, radius, p.z());
    return in ^ isCrossed(top, inside.get(0), radius, p.z()) ^ hole;
  }

  /** Whether a level line from a point outwards crosses some lines an odd number of times. */
  private static boolean isCrossed(List<Point> points, double radius, double height) {
    boolean odd = false;
    for (int i = 0; i + 1 < points.size(); i++) {
      odd ^= isCrossed(points.get(i), points.get(i + 1), radius, height);
    }
    return odd;
  }

  private static boolean isCrossed(Point a, Point b, double radius, double height) {
    return a.z() > height != b.z() > height
        && radius < a.r() + (height - a.z()) * (b.r() - a.r()) / (b.z() - a.z());
  }

  @Override
  public Bounds bounds() {
    double radius = 0;
    double top = 0;
    double foot = Double.POSITIVE_INFINITY;
    for (Point point : outside) {
      radius = Math.max(radius, point.r());
      top = Math.max(top, point.z());
      foot = Math.min(foot, point.z());
    }
    return new Bounds(new Vec3(-radius, -radius, foot), new Vec3(radius, radius, top));
  }

  /** Parts: side, rim, inside, floor, hole, base; top for a solid body. */
  @Override
  public Mesh mesh(Length edge) {
    Outline outline = outline();
    Turning turning = new Turning(edge, outline.at(0).r(), outline.at(0).z());
    for (int i = 1; i < outline.size(); i++) {
      turning.line(outline.at(i).r(), outline.at(i).z(), outline.part(i));
    }
    return turning.mesh();
  }

  /** The outline in one go, from the axis to the axis or round to where it began. */
  private record Outline(List<Point> points, List<String> parts) {

    static Outline of(List<Point> outside, List<Point> inside) {
      Outline outline = new Outline(new ArrayList<>(), new ArrayList<>());
      Point foot = outside.get(0);
      Point end = inside.isEmpty() ? null : inside.get(inside.size() - 1);
      boolean hole = end != null && end.r() > 0;
      if (!hole && foot.r() > 0) {
        outline.add(new Point(Length.ZERO, foot.height()), "base");
      } else if (hole) {
        outline.add(end, "base");
      }
      outline.add(foot, "base");
      for (Point point : outside.subList(1, outside.size())) {
        outline.add(point, "side");
      }
      Point top = outside.get(outside.size() - 1);
      if (end == null && top.r() > 0) {
        outline.add(new Point(Length.ZERO, top.height()), "top");
      }
      outline.hollow(inside);
      return outline;
    }

    private void hollow(List<Point> inside) {
      boolean floor = false;
      for (int i = 0; i < inside.size(); i++) {
        Point from = points.get(points.size() - 1);
        Point to = inside.get(i);
        double across = Math.abs(to.r() - from.r());
        double down = Math.abs(to.z() - from.z());
        boolean level = across > 2 * down;
        String part = i == 0 ? "rim" : floor && !level ? "hole" : level ? "floor" : "inside";
        floor |= part.equals("floor");
        add(to, part);
      }
    }

    private void add(Point point, String part) {
      points.add(point);
      parts.add(part);
    }

    int size() {
      return points.size();
    }

    Point at(int i) {
      return points.get(i);
    }

    String part(int i) {
      return parts.get(i);
    }

    double volume() {
      double sum = 0;
      for (int i = 0; i + 1 < size(); i++) {
        double a = at(i).r();
        double b = at(i + 1).r();
        sum += (at(i + 1).z() - at(i).z()) * (a * a + a * b + b * b);
      }
      return Math.PI * sum / 3;
    }

    void check() {
      if (!(volume() > 0)) {
        throw new IllegalArgumentException(
            "the outline of the turned body encloses nothing: the outside runs from foot to top,"
                + " the inside from top to floor");
      }
      for (int i = 0; i + 1 < size(); i++) {
        for (int j = i + 2; j + 1 < size(); j++) {
          if (crosses(i, j)) {
            throw new IllegalArgumentException(
                "the outline of the turned body crosses itself between "
                    + parts.get(i + 1)
                    + " and "
                    + parts.get(j + 1));
          }
        }
      }
    }

    private boolean crosses(int i, int j) {
      Point a = at(i);
      Point b = at(i + 1);
      Point c = at(j);
      Point d = at(j + 1);
      return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    }

    private static double side(Point a, Point b, Point p) {
      return (b.r() - a.r()) * (p.z() - a.z()) - (b.z() - a.z()) * (p.r() - a.r());
    }
  }
}
