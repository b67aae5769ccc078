package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import ringbook.figures.Label.Anchor;
import ringbook.shots.Place;
import ringbook.shots.Place.Corner;
import ringbook.shots.Place.Obstacle;

/** Outlines in plan: what lies inside, and what of it is on the paper. */
final class Plan {

  /** Between an outline and a name beside it. */
  private static final double GAP = 7;

  /** Half the height of small capitals. */
  private static final double HALF_HIGH = 4;

  private Plan() {}

  /** The corners on the drawing. */
  static List<Point> outline(List<Corner> corners, View view) {
    List<Point> outline = new ArrayList<>();
    for (Corner corner : corners) {
      outline.add(view.at(corner.x().metres(), corner.y().metres()));
    }
    return outline;
  }

  /**
   * Draws a wall or a piece of furniture, and keeps labels off its edges.
   *
   * @return where its name may stand, the best first: inside, above, below, beside; none if it is
   *     off the paper
   */
  static List<Label> body(
      Obstacle obstacle, View view, Box paper, SvgWriter svg, LabelPlacer placer) {
    List<Point> outline = clipped(outline(obstacle.corners(), view), paper);
    if (outline.size() < 3) {
      return List.of();
    }
    svg.polygon(outline, Stroke.solid(Ink.FAINT, 1), Fill.FAINT);
    for (int i = 0; i < outline.size(); i++) {
      placer.keepOff(outline.get(i), outline.get((i + 1) % outline.size()));
    }
    Box box = box(outline);
    double room = TextWidth.of(obstacle.name(), Label.SMALL) / 2 + GAP;
    double x = Math.max(paper.left() + room, Math.min(paper.right() - room, box.middleX()));
    Label inside =
        Label.small(obstacle.name(), new Point(x, box.middleY() + HALF_HIGH), Anchor.MIDDLE);
    List<Label> places = new ArrayList<>();
    places.add(inside);
    places.add(inside.movedTo(new Point(x, box.top() - GAP), Anchor.MIDDLE));
    places.add(inside.movedTo(new Point(x, box.bottom() + GAP + 2 * HALF_HIGH), Anchor.MIDDLE));
    places.add(inside.movedTo(new Point(box.left() - GAP, inside.at().y()), Anchor.END));
    places.add(inside.movedTo(new Point(box.right() + GAP, inside.at().y()), Anchor.START));
    places.addAll(LabelPlacer.around(inside, 0));
    return places;
  }

  /** Draws all of them, and gives the places for the names of those that are on the paper. */
  static List<List<Label>> bodies(
      Place place, View view, Box paper, SvgWriter svg, LabelPlacer placer) {
    List<List<Label>> names = new ArrayList<>();
    for (Obstacle obstacle : place.obstacles()) {
      List<Label> places = body(obstacle, view, paper, svg, placer);
      if (!places.isEmpty()) {
        names.add(places);
      }
    }
    return names;
  }

  /** Writes names where they are free. */
  static void write(List<List<Label>> names, SvgWriter svg, LabelPlacer placer) {
    for (List<Label> places : names) {
      svg.text(placer.place(places.get(0), places));
    }
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
