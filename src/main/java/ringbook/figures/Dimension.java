package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.figures.Label.Anchor;

/**
 * A dimension line with arrow heads at both ends and its measure written on it; where it is too
 * short for that, the heads point in from outside.
 *
 * @param from one end
 * @param to other end
 * @param text what it measures
 */
record Dimension(Point from, Point to, String text) {

  private static final double SHORT = 26;
  private static final double TAIL = 14;

  /** Draws the line and takes note of it, so that labels keep off. */
  void drawLine(SvgWriter svg, LabelPlacer placer) {
    double along = from.directionTo(to);
    boolean tight = from.distanceTo(to) < SHORT;
    Point start = tight ? from.towards(along, -TAIL) : from;
    Point end = tight ? to.towards(along, TAIL) : to;
    svg.line(start, end, Stroke.THIN);
    svg.arrowHead(from, tight ? along : along + Math.PI);
    svg.arrowHead(to, tight ? along + Math.PI : along);
    placer.keepOff(start, end);
  }

  /** Writes the measure on the line or, where it is too short, beside it. */
  void drawText(SvgWriter svg, LabelPlacer placer) {
    Point middle = from.between(to, 0.5);
    Label label = Label.of(text, middle.plus(0, 5), Anchor.MIDDLE);
    double room = from.distanceTo(to) - 24;
    boolean level = Math.abs(from.y() - to.y()) < Math.abs(from.x() - to.x());
    if (room > (level ? TextWidth.of(text, Label.SIZE) : Label.SIZE)) {
      List<Label> places = new ArrayList<>();
      for (double share : new double[] {0.5, 0.6, 0.4, 0.7, 0.3}) {
        Point on = from.between(to, share);
        places.add(label.movedTo(on.plus(0, 5), Anchor.MIDDLE));
        places.add(label.movedTo(on.plus(0, -5), Anchor.MIDDLE));
        places.add(label.movedTo(on.plus(6, 5), Anchor.START));
        places.add(label.movedTo(on.plus(-6, 5), Anchor.END));
      }
      svg.text(placer.place(label, places));
    } else {
      svg.text(placer.beside(label.movedTo(middle, Anchor.MIDDLE), 10));
    }
  }
}
