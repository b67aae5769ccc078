package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;

/** Outlines in plan: what lies inside, and what of it is on the paper. */
final class Plan {

  private Plan() {}

  /** The corners on the drawing. */
  static List<Point> outline(List<Corner> corners, View view) {
    List<Point> outline = new ArrayList<>();
    for (Corner corner : corners) {
      outline.add(view.at(corner.x().metres(), corner.y().metres()));
    }
    return outline;
  }

  /** Draws a wall or a piece of furniture; its name for later, or none if it is off the paper. */
  static Optional<Label> body(Obstacle obstacle, View view, Box paper, SvgWriter svg) {
    List<Point> outline = clipped(outline(obstacle.corners(), view), paper);
    if (outline.size() < 3) {
      return Optional.empty();
    }
    svg.polygon(outline, Stroke.solid(Ink.FAINT, 1), Fill.FAINT);
    Box box = box(outline);
    Point middle = new Point(box.middleX(), box.middleY());
    return Optional.of(Label.small(obstacle.name(), middle, Label.Anchor.MIDDLE));
  }

  /** The part of an outline inside a box (Sutherland and Hodgman 1974); may be empty. */
  static List<Point> clipped(List<Point> outline, Box box) {
    List<Point> rest = cut(outline, p -> p.x() - box.left());
    rest = cut(rest, p -> box.right() - p.x());
    rest = cut(rest, p -> p.y() - box.top());
    return cut(rest, p -> box.bottom() - p.y());
  }

  private static List<Point> cut(List<Point> outline, ToDoubleFunction<Point> depth) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      double da = depth.applyAsDouble(a);
      double db = depth.applyAsDouble(b);
      if (da >= 0) {
        kept.add(a);
      }
      if (da >= 0 != db >= 0) {
        kept.add(a.between(b, da / (da - db)));
      }
    }
    return kept;
  }

  /** The point of an outline that lies nearest to {@code point}. */
  static Point nearest(List<Point> outline, Point point) {
    Point best = outline.get(0);
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      double length = a.distanceTo(b);
      double along =
          length == 0
              ? 0
              : ((point.x() - a.x()) * (b.x() - a.x()) + (point.y() - a.y()) * (b.y() - a.y()))
                  / (length * length);
      Point on = a.between(b, Math.max(0, Math.min(1, along)));
      best = point.distanceTo(on) < point.distanceTo(best) ? on : best;
    }
    return best;
  }

  /** The smallest box round some points; at least one. */
  static Box box(List<Point> points) {
    Point first = points.get(0);
    Box box = new Box(first.x(), first.y(), first.x(), first.y());
    for (Point p : points) {
      box =
          new Box(
              Math.min(box.left(), p.x()),
              Math.min(box.top(), p.y()),
              Math.max(box.right(), p.x()),
              Math.max(box.bottom(), p.y()));
    }
    return box;
  }
}
