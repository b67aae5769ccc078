package ringbook.figures;

/**
 * A rectangle with sides along the axes.
 *
 * @param left smaller x
 * @param top smaller y
 * @param right larger x
 * @param bottom larger y
 */
public record Box(double left, double top, double right, double bottom) {

  /** Its width. */
  public double width() {
    return right - left;
  }

  /** Its height. */
  public double height() {
    return bottom - top;
  }

  /** Half way between left and right. */
  public double middleX() {
    return (left + right) / 2;
  }

  /** Half way between top and bottom. */
  public double middleY() {
    return (top + bottom) / 2;
  }

  /** The area shared with {@code other}; 0 if none. */
  public double overlap(Box other) {
    double across = Math.min(right, other.right) - Math.max(left, other.left);
    double down = Math.min(bottom, other.bottom) - Math.max(top, other.top);
    return across <= 0 || down <= 0 ? 0 : across * down;
  }

  /** The rectangle, larger by {@code by} on each side. */
  public Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  /** Whether a point lies in it or on its edge. */
  public boolean holds(Point point) {
    return point.x() >= left && point.x() <= right && point.y() >= top && point.y() <= bottom;
  }

  /**
   * The part of a way from 0 at its start to 1 at its end.
   *
   * @param from where it begins
   * @param to where it ends; not after {@code from} if there is no such part
   */
  record Part(double from, double to) {

    private Part within(double start, double step, double low, double high) {
      if (step == 0) {
        return start >= low && start <= high ? this : new Part(0, 0);
      }
      double one = (low - start) / step;
      double other = (high - start) / step;
      return new Part(Math.max(from, Math.min(one, other)), Math.min(to, Math.max(one, other)));
    }
  }

  /** The part of the straight way between two points that lies in it. */
  Part partOf(Point start, Point end) {
    return new Part(0, 1)
        .within(start.x(), end.x() - start.x(), left, right)
        .within(start.y(), end.y() - start.y(), top, bottom);
  }
}
