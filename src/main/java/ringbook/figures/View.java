package ringbook.figures;

/**
 * Puts metres on the drawing, at one scale in both directions.
 *
 * @param scale drawing units to the metre
 * @param origin where the zero of the metres lies
 */
record View(double scale, Point origin) {

  /** The point at so many metres right of and above the origin. */
  Point at(double right, double up) {
    return new Point(origin.x() + scale * right, origin.y() - scale * up);
  }

  /** The view that shows a rectangle in metres, centred in a box, as large as it goes. */
  static View showing(Box metres, Box box) {
    double scale = Math.min(box.width() / metres.width(), box.height() / metres.height());
    return new View(
        scale,
        new Point(
            box.middleX() - scale * (metres.left() + metres.right()) / 2,
            box.middleY() + scale * (metres.top() + metres.bottom()) / 2));
  }
}
