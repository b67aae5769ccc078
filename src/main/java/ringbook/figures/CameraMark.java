package ringbook.figures;

import java.util.List;

/** A camera seen from the side or from above: a body with its lens at a point. */
final class CameraMark {

  private static final double LENS = 7;
  private static final double BODY = 12;
  private static final double HALF = 10;

  private CameraMark() {}

  /**
   * Draws it.
   *
   * @param lens where the lens is
   * @param direction where it looks, in radians anticlockwise from "right"
   * @param fill hollow if it cannot stand there
   */
  static void draw(SvgWriter svg, Point lens, double direction, Fill fill) {
    double side = direction + Math.PI / 2;
    Point back = lens.towards(direction, -LENS);
    Point rear = back.towards(direction, -BODY);
    Stroke edge = Stroke.solid(Ink.ACCENT, 1.6);
    svg.polygon(
        List.of(
            lens.towards(side, 4.5),
            back.towards(side, 4.5),
            back.towards(side, -4.5),
            lens.towards(side, -4.5)),
        edge,
        fill);
    svg.polygon(
        List.of(
            back.towards(side, HALF),
            rear.towards(side, HALF),
            rear.towards(side, -HALF),
            back.towards(side, -HALF)),
        edge,
        fill);
  }
}
