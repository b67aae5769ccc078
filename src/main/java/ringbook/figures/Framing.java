package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.shots.Aim;

/** The object in the picture: from half the standoff, from the standoff and from twice as far. */
final class Framing {

  private static final double WIDTH = 560;
  private static final double PANEL = 182;
  private static final double TALL = 156;
  private static final double FLAT = 118;
  private static final double TOP = 64;

  private final Reckoning reckoning;
  private final Readings readings;
  private final boolean upright;
  private final double frameWidth;
  private final double frameHeight;
  private final SvgWriter svg;

  private Framing(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    upright = reckoning.scene().aim().hold() == Aim.Hold.UPRIGHT;
    double shape = readings.si("kit.pixelsDown") / readings.si("kit.pixelsAcross");
    frameWidth = upright ? TALL * shape : FLAT;
    frameHeight = upright ? TALL : FLAT * shape;
    svg = new SvgWriter(WIDTH, TOP + frameHeight + 104, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new Framing(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    panel(0, "too near", 0.5);
    panel(1, "right", 1);
    panel(2, "too far", 2);
    readings.tabulate("distance.standoff", "distance.fieldLong", "distance.fieldShort", "aim.fill");
    row("half the standoff", 0.5);
    row("the standoff", 1);
    row("twice the standoff", 2);
    return readings.figure(svg, "The object in the picture", description());
  }

  private Curve at(double times) {
    return Curve.with(reckoning, "distance.standoff", times * readings.si("distance.standoff"));
  }

  private void panel(int number, String verdict, double times) {
    Curve there = at(times);
    Point middle = new Point(WIDTH / 2 + (number - 1) * (PANEL + 4), TOP + frameHeight / 2);
    double across = there.si(upright ? "distance.filledShort" : "distance.filledLong");
    double up = there.si(upright ? "distance.filledLong" : "distance.filledShort");
    Box frame = around(middle, frameWidth, frameHeight);
    Box object = around(middle, across * frameWidth, up * frameHeight);
    Box room = new Box(middle.x() - PANEL / 2, 26, middle.x() + PANEL / 2, TOP + frameHeight + 34);
    boolean cut = across > 1 || up > 1;
    svg.box(frame, null, Fill.PAPER);
    svg.polygon(Plan.clipped(corners(object), frame), Stroke.solid(Ink.FAINT, 0.5), Fill.FAINT);
    if (cut) {
      outside(object, room);
    } else {
      svg.box(object, Stroke.solid(Ink.ACCENT, 1.5), Fill.NONE);
    }
    svg.box(frame, Stroke.solid(Ink.INK, 2), Fill.NONE);
    svg.text(Label.of(verdict, new Point(middle.x(), 20), Anchor.MIDDLE).bold());
    write(middle.x(), there, times);
  }

  /** The outline, dashed; only the sides that are still in the panel. */
  private void outside(Box object, Box room) {
    Stroke dashed = Stroke.dashed(Ink.ACCENT, 1.5, "5 3");
    List<Point> corners = corners(object);
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      Box side = Plan.box(List.of(a, b));
      double left = Math.max(side.left(), room.left());
      double right = Math.min(side.right(), room.right());
      double top = Math.max(side.top(), room.top());
      double bottom = Math.min(side.bottom(), room.bottom());
      if (left <= right && top <= bottom) {
        svg.line(new Point(left, top), new Point(right, bottom), dashed);
      }
    }
  }

  private void write(double x, Curve there, double times) {
    double y = TOP + frameHeight + 48;
    svg.text(Label.of(there.text("distance.standoff"), new Point(x, y), Anchor.MIDDLE).bold());
    String first = "long side " + there.text("distance.filledLong") + " filled";
    String second = "short side " + there.text("distance.filledShort");
    svg.text(Label.small(first, new Point(x, y + 18), Anchor.MIDDLE));
    svg.text(Label.small(second, new Point(x, y + 34), Anchor.MIDDLE));
    if (times == 1) {
      String wanted = "wanted: at most " + readings.text("aim.fill");
      svg.text(Label.small(wanted, new Point(x, TOP - 10), Anchor.MIDDLE));
    }
    if (times * readings.si("distance.standoff") < readings.si("kit.closestFocus")) {
      svg.text(Label.small("too near to focus", new Point(x, y + 50), Anchor.MIDDLE));
    }
  }

  private void row(String where, double times) {
    Curve there = at(times);
    readings.row(
        "Filled from " + where + ", " + there.text("distance.standoff"),
        there.text("distance.filledLong")
            + " of the long side, "
            + there.text("distance.filledShort")
            + " of the short side");
  }

  private String description() {
    Curve near = at(0.5);
    Curve far = at(2);
    return "Three pictures, held "
        + (upright ? "upright" : "level")
        + ", of the "
        + reckoning.scene().subject().name()
        + ", drawn as the rectangle it covers. From "
        + readings.text("distance.standoff")
        + " it fills "
        + readings.text("distance.filledLong")
        + " of the long side and "
        + readings.text("distance.filledShort")
        + " of the short side. From half as far, "
        + near.text("distance.standoff")
        + ", it would take "
        + near.text("distance.filledLong")
        + " and "
        + near.text("distance.filledShort")
        + "; from twice as far, "
        + far.text("distance.standoff")
        + ", only "
        + far.text("distance.filledLong")
        + " and "
        + far.text("distance.filledShort")
        + ".";
  }

  private static Box around(Point middle, double width, double height) {
    return new Box(
        middle.x() - width / 2,
        middle.y() - height / 2,
        middle.x() + width / 2,
        middle.y() + height / 2);
  }

  private static List<Point> corners(Box box) {
    return List.of(
        new Point(box.left(), box.top()),
        new Point(box.right(), box.top()),
        new Point(box.right(), box.bottom()),
        new Point(box.left(), box.bottom()));
  }
}
