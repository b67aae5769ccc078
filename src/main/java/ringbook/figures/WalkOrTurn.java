package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;

/** Two ways to the same photographs of the object: the camera walks, or the object turns. */
final class WalkOrTurn {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 320;
  private static final double PANEL = 270;
  private static final double BODY = 34;
  private static final double RING = 92;
  private static final double MIDDLE = 138;
  private static final double WALL = 34;
  private static final int STATIONS = 3;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double step;

  private WalkOrTurn(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    step = Math.max(0.42, Math.min(0.7, readings.si("ring.realStep")));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new WalkOrTurn(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    svg.line(new Point(WIDTH / 2, 14), new Point(WIDTH / 2, HEIGHT - 10), Stroke.GUIDE);
    walk(new Point(PANEL / 2, MIDDLE));
    turn(new Point(WIDTH - PANEL / 2, MIDDLE));
    readings.tabulate("ring.photos", "ring.realStep", "room.turntable");
    return readings.figure(svg, "The camera walks or the object turns", description());
  }

  private void words(double x, String title, String first, String second) {
    svg.text(Label.of(title, new Point(x, HEIGHT - 62), Anchor.MIDDLE).bold());
    svg.text(Label.small(first, new Point(x, HEIGHT - 40), Anchor.MIDDLE));
    svg.text(Label.small(second, new Point(x, HEIGHT - 22), Anchor.MIDDLE));
  }

  private void wall(double x) {
    Box wall = new Box(x - 110, WALL - 14, x + 110, WALL);
    svg.box(wall, Stroke.solid(Ink.FAINT, 1), Fill.FAINT);
    for (int i = -4; i <= 4; i++) {
      Point on = new Point(x + 25 * i + (i % 2 == 0 ? 4 : -3), WALL - 7);
      svg.dot(on, i % 3 == 0 ? 3.4 : 2.2, Fill.TEXT);
    }
  }

  private void body(Point middle) {
    svg.circle(middle, BODY, Stroke.OUTLINE, Fill.FAINT);
    for (int i = 0; i < 7; i++) {
      svg.dot(middle.towards(2.4 * i, 8 + 3.2 * i), 2.2, Fill.TEXT);
    }
  }

  private void walk(Point middle) {
    wall(middle.x());
    body(middle);
    double down = -Math.PI / 2;
    double half = step * (STATIONS - 1) / 2;
    svg.arc(middle, RING, new Sweep(down - half - 0.3, down + half + 0.3), Stroke.GUIDE);
    for (int i = 0; i < STATIONS; i++) {
      double at = down - half + i * step;
      CameraMark.draw(svg, middle.towards(at, RING - 14), at + Math.PI, Fill.PAPER);
    }
    words(
        middle.x(),
        "The camera walks",
        "Object and wall agree:",
        "the camera has moved by " + readings.text("ring.realStep") + ".");
  }

  private void turn(Point middle) {
    wall(middle.x());
    svg.circle(middle, 1.5 * BODY, Stroke.solid(Ink.INK, 1), Fill.PAPER);
    double mark = 2 * Math.PI / Math.min(36, readings.si("ring.photos"));
    for (double at = 0; at < 2 * Math.PI - mark / 2; at += mark) {
      svg.line(middle.towards(at, 1.5 * BODY), middle.towards(at, 1.5 * BODY - 6), Stroke.THIN);
    }
    body(middle);
    double arc = 1.5 * BODY + 12;
    double end = 0.25 + step;
    svg.arc(middle, arc, new Sweep(0.25, end), Stroke.solid(Ink.ACCENT, 1.8));
    Point tip = middle.towards(end + 0.06, arc);
    svg.arrowHead(tip, end + Math.PI / 2);
    svg.text(
        Label.of(
            readings.text("ring.realStep"), middle.plus(arc * Num.cos(0.4) + 8, -6), Anchor.START));
    CameraMark.draw(svg, middle.plus(0, RING - 14), Math.PI / 2, Fill.PAPER);
    words(
        middle.x(),
        "The object turns",
        "The object says: moved by " + readings.text("ring.realStep") + ".",
        "The wall says: not moved at all.");
  }

  private String description() {
    return "Two pictures from above. On the left the camera walks round the "
        + reckoning.scene().subject().name()
        + "; object and wall stand still and agree how far the camera has moved, "
        + readings.text("ring.realStep")
        + " a photograph. On the right the camera stands still and the object turns on a disc with "
        + readings.text("ring.photos")
        + " marks. The object looks as if the camera had moved; the wall behind it says that the"
        + " camera has not moved at all.";
  }
}
