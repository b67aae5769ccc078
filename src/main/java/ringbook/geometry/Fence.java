package ringbook.geometry;

import java.util.ArrayList;
import java.util.List;
import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * A closed outline in plan, such as a wall or a table, seen from the origin.
 *
 * @param xs x of the corners in metres
 * @param ys y of the corners in metres, as many
 */
public record Fence(List<Double> xs, List<Double> ys) {

  public Fence {
    xs = List.copyOf(xs);
    ys = List.copyOf(ys);
    if (xs.size() < 3 || xs.size() != ys.size()) {
      throw new IllegalArgumentException("an outline needs at least three corners with x and y");
    }
  }

  /** {@code arcs} and the directions in which the outline comes within {@code radius} metres. */
  public ArcSet within(double radius, ArcSet arcs) {
    ArcSet all = arcs;
    for (int i = 0; i < xs.size(); i++) {
      all = edge(i).within(radius, all);
    }
    return all;
  }

  /** Metres from the origin to the nearest point of the outline; 0 if it goes round the origin. */
  public double nearest() {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < xs.size(); i++) {
      nearest = Math.min(nearest, edge(i).nearest());
    }
    return goesRound() ? 0 : nearest;
  }

  /** Metres from the origin to the farthest corner. */
  public double farthest() {
    double farthest = 0;
    for (int i = 0; i < xs.size(); i++) {
      farthest = Math.max(farthest, Num.hypot(xs.get(i), ys.get(i)));
    }
    return farthest;
  }

  /** Whether the origin lies inside. */
  public boolean goesRound() {
    boolean inside = false;
    for (int i = 0; i < xs.size(); i++) {
      Edge e = edge(i);
      if ((e.y1 > 0) != (e.y2 > 0) && e.x1 - e.y1 * (e.x2 - e.x1) / (e.y2 - e.y1) > 0) {
        inside = !inside;
      }
    }
    return inside;
  }

  private Edge edge(int i) {
    int next = (i + 1) % xs.size();
    return new Edge(xs.get(i), ys.get(i), xs.get(next), ys.get(next));
  }

  /** One side of the outline. */
  private record Edge(double x1, double y1, double x2, double y2) {

    double nearest() {
      double length = (x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1);
      double t = length == 0 ? 0 : -(x1 * (x2 - x1) + y1 * (y2 - y1)) / length;
      t = Math.max(0, Math.min(1, t));
      return Num.hypot(x1 + t * (x2 - x1), y1 + t * (y2 - y1));
    }

    /** Cuts the side to the part inside the circle and adds the arc that part is seen under. */
    ArcSet within(double radius, ArcSet arcs) {
      double a = (x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1);
      double b = x1 * (x2 - x1) + y1 * (y2 - y1);
      double c = x1 * x1 + y1 * y1 - radius * radius;
      double root = b * b - a * c;
      if (a == 0 || root < 0) {
        return arcs;
      }
      double from = Math.max(0, (-b - Math.sqrt(root)) / a);
      double to = Math.min(1, (-b + Math.sqrt(root)) / a);
      return from > to ? arcs : seen(from, to, arcs);
    }

    private ArcSet seen(double from, double to, ArcSet arcs) {
      double ax = x1 + from * (x2 - x1);
      double ay = y1 + from * (y2 - y1);
      double bx = x1 + to * (x2 - x1);
      double by = y1 + to * (y2 - y1);
      double turn = Num.atan2(ax * by - ay * bx, ax * bx + ay * by);
      return turn >= 0
          ? arcs.with(ArcSet.towards(ax, ay), new Angle(turn))
          : arcs.with(ArcSet.towards(bx, by), new Angle(-turn));
    }
  }

  /** The outline through corners given as x, y pairs in metres. */
  public static Fence of(double... xy) {
    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    for (int i = 0; i + 1 < xy.length; i += 2) {
      xs.add(xy[i]);
      ys.add(xy[i + 1]);
    }
    return new Fence(xs, ys);
  }
}
