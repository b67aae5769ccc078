package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;

/** A hole cut open along its axis: the view that sees the wall and the view that sees the floor. */
final class HoleSection {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 340;
  private static final double PANEL = 270;
  private static final double MOUTH = 112;
  private static final double DEEP = 150;
  private static final double WIDE = 130;
  private static final double SIGHT = 92;
  private static final double RIM = 30;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double half;
  private final double deep;

  private HoleSection(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    double across = readings.si("subject.holeDiameter");
    double down = readings.si("subject.holeDepth");
    double scale = Math.min(WIDE / across, DEEP / down);
    half = Math.max(4, scale * across / 2);
    deep = Math.max(4, scale * down);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new HoleSection(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    svg.line(new Point(WIDTH / 2, 14), new Point(WIDTH / 2, HEIGHT - 10), Stroke.GUIDE);
    wall(PANEL / 2);
    floor(WIDTH - PANEL / 2);
    readings.tabulate(
        "subject.holeDiameter",
        "subject.holeDepth",
        "hole.bestAngle",
        "hole.wallSeen",
        "hole.wallShare",
        "hole.floorShare",
        "hole.floorMiddle",
        "hole.floorRays");
    return readings.figure(svg, "Into a hole: the wall and the floor", description());
  }

  private void hole(double x, String title) {
    svg.text(Label.of(title, new Point(x, 24), Anchor.MIDDLE).bold());
    double side = half + RIM;
    Point[] line = {
      new Point(x - side, MOUTH),
      new Point(x - half, MOUTH),
      new Point(x - half, MOUTH + deep),
      new Point(x + half, MOUTH + deep),
      new Point(x + half, MOUTH),
      new Point(x + side, MOUTH)
    };
    svg.polygon(
        List.of(
            line[0],
            line[1],
            line[2],
            line[3],
            line[4],
            line[5],
            new Point(x + side, MOUTH + deep + 16),
            new Point(x - side, MOUTH + deep + 16)),
        Stroke.solid(Ink.FAINT, 1),
        Fill.FAINT);
    svg.polyline(List.of(line), Stroke.OUTLINE);
    svg.line(new Point(x, 36), new Point(x, MOUTH + deep), Stroke.GUIDE);
  }

  private void words(double x, String first, String second) {
    svg.text(Label.of(first, new Point(x, HEIGHT - 36), Anchor.MIDDLE));
    svg.text(Label.small(second, new Point(x, HEIGHT - 16), Anchor.MIDDLE));
  }

  /** A line of sight that leans by an angle from the axis and ends at a point. */
  private void sight(Point end, double angle, Stroke pen) {
    double rise = end.y() - (MOUTH - SIGHT + 22);
    Point eye = end.plus(-rise * Num.sin(angle) / Num.cos(angle), -rise);
    if (eye.x() < 8 || eye.x() > WIDTH - 8 || eye.x() < end.x() - PANEL / 2) {
      double shift = Math.min(PANEL / 2, end.x() - 8) * Num.cos(angle) / Num.sin(angle);
      eye = new Point(end.x() - Math.min(PANEL / 2, end.x() - 8), end.y() - shift);
    }
    svg.line(eye, end, pen);
    svg.arrowHead(end, eye.directionTo(end));
  }

  private void wall(double x) {
    hole(x, "for the wall");
    double angle = readings.si("hole.bestAngle");
    double seen = deep * readings.si("hole.wallShare");
    svg.line(
        new Point(x + half, MOUTH), new Point(x + half, MOUTH + seen), Stroke.solid(Ink.ACCENT, 5));
    sight(new Point(x + half - 2, MOUTH + seen), angle, Stroke.solid(Ink.ACCENT, 1.6));
    sight(new Point(x + half - 2, MOUTH + seen / 2), angle, Stroke.solid(Ink.ACCENT, 1));
    words(
        x,
        readings.text("hole.bestAngle") + " from the axis",
        "wall seen well: " + readings.text("hole.wallSeen") + " deep");
  }

  private void floor(double x) {
    hole(x, "for the floor");
    double angle = readings.si("hole.floorMiddle");
    Point middle = new Point(x, MOUTH + deep);
    svg.line(
        new Point(x, MOUTH + deep), new Point(x + half, MOUTH + deep), Stroke.solid(Ink.ACCENT, 5));
    sight(middle.plus(0, -2), angle, Stroke.solid(Ink.ACCENT, 1.6));
    sight(middle.plus(half - 3, -2), angle, Stroke.solid(Ink.ACCENT, 1));
    words(
        x,
        "up to " + readings.text("hole.floorMiddle") + " from the axis",
        "the middle of the floor is in sight");
  }

  private String description() {
    return "A hole in the "
        + reckoning.scene().subject().name()
        + " cut open, "
        + readings.text("subject.holeDiameter")
        + " across and "
        + readings.text("subject.holeDepth")
        + " deep, twice. Left: looking in at "
        + readings.text("hole.bestAngle")
        + " from the axis, the far wall is seen well down to "
        + readings.text("hole.wallSeen")
        + ". Right: the middle of the floor is in sight up to "
        + readings.text("hole.floorMiddle")
        + " from the axis, and only half of it or less from farther to the side.";
  }
}
