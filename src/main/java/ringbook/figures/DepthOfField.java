package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** What is sharp along the line of sight, against the depth of the object; to scale. */
final class DepthOfField {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 260;
  private static final double LEFT = 50;
  private static final double RIGHT = 540;
  private static final double AXIS = 130;
  private static final double HALF = 46;
  private static final double BROKEN = 96;
  private static final double WIDE = 0.6;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final double start;
  private final double end;

  private DepthOfField(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    double far = readings.si("distance.far");
    double limit = readings.si("sharp.farLimit");
    double most = far + 0.6 * (far - readings.si("distance.standoff")) + 0.2 * far;
    double last = Math.min(Math.max(far, limit), most);
    double first = Math.min(readings.si("sharp.nearLimit"), readings.si("distance.standoff"));
    double margin = 0.12 * (last - first);
    boolean wide = last - first > WIDE * last;
    start = wide ? 0 : first - margin;
    end = last + margin;
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new DepthOfField(reckoning, idPrefix).figure();
  }

  private double x(double metres) {
    double from = start == 0 ? LEFT : BROKEN;
    return from + (RIGHT - from) * Math.min(1, (metres - start) / (end - start));
  }

  private Figure figure() {
    drawSharp();
    drawObject();
    Point lens = new Point(LEFT, AXIS);
    svg.line(lens, new Point(RIGHT, AXIS), Stroke.GUIDE);
    CameraMark.draw(svg, lens, 0, Fill.FAINT);
    if (start > 0) {
      drawBreak();
    }
    drawMarks();
    drawSpan();
    readings.tabulate(
        "sharp.fNumber",
        "sharp.nearLimit",
        "sharp.focus",
        "sharp.farLimit",
        "sharp.depth",
        "sharp.near",
        "sharp.far",
        "distance.far");
    return readings.figure(svg, "What is sharp, and the object", description());
  }

  /** Two strokes that say: a part of the way is left out. */
  private void drawBreak() {
    double x = (LEFT + BROKEN) / 2;
    svg.box(new Box(x - 3, AXIS - 6, x + 3, AXIS + 6), null, Fill.PAPER);
    for (double side : new double[] {-3, 3}) {
      svg.line(new Point(x + side - 3, AXIS + 9), new Point(x + side + 3, AXIS - 9), Stroke.THIN);
    }
  }

  private void drawSharp() {
    double near = x(readings.si("sharp.nearLimit"));
    double far = x(readings.si("sharp.farLimit"));
    Box sharp = new Box(near, AXIS - HALF - 14, far, AXIS + HALF + 14);
    svg.box(sharp, null, Fill.FAINT);
    Stroke edge = Stroke.solid(Ink.ACCENT, 2);
    svg.line(new Point(near, sharp.top()), new Point(near, sharp.bottom()), edge);
    if (readings.si("sharp.farLimit") <= end) {
      svg.line(new Point(far, sharp.top()), new Point(far, sharp.bottom()), edge);
    }
    String words = "sharp at " + readings.text("sharp.fNumber");
    Label label = Label.of(words, new Point((near + far) / 2, 20), Anchor.MIDDLE).bold();
    double half = label.box().width() / 2;
    double middle = Math.max(8 + half, Math.min(WIDTH - 8 - half, label.at().x()));
    svg.text(placer.fixed(label.movedTo(new Point(middle, 20), Anchor.MIDDLE)));
    Dimension depth =
        new Dimension(new Point(near, 50), new Point(far, 50), readings.text("sharp.depth"));
    depth.drawLine(svg, placer);
    depth.drawText(svg, placer);
  }

  private void drawObject() {
    double near = x(readings.si("distance.standoff"));
    double far = x(readings.si("distance.far"));
    double half = Math.min(HALF, (far - near) / 2);
    svg.box(new Box(near, AXIS - half, far, AXIS + half), Stroke.OUTLINE, Fill.NONE);
    double limit = x(readings.si("sharp.farLimit"));
    placer.keepOff(new Point(limit, AXIS - HALF), new Point(limit, AXIS + HALF));
    placer.keepOff(new Point(near, AXIS - half), new Point(near, AXIS + half));
    Label name = Label.of(reckoning.scene().subject().name(), new Point(far, AXIS), Anchor.MIDDLE);
    double inside = AXIS + half - 8;
    double above = AXIS - half - 6;
    svg.text(
        placer.place(
            name,
            List.of(
                name.movedTo(new Point(far - 8, inside), Anchor.END),
                name.movedTo(new Point((near + far) / 2, above), Anchor.MIDDLE),
                name.movedTo(new Point(far, above), Anchor.END))));
  }

  private void drawMarks() {
    double row = AXIS + HALF + 34;
    mark("near limit", "sharp.nearLimit", row, Anchor.END);
    mark("focus", "sharp.focus", row, Anchor.MIDDLE);
    if (readings.si("sharp.farLimit") <= end) {
      mark("far limit", "sharp.farLimit", row, Anchor.START);
    } else {
      String words = "far limit " + readings.text("sharp.farLimit") + " →";
      Label label = Label.small(words, new Point(RIGHT + 12, row), Anchor.END);
      svg.text(placer.fixed(label));
    }
    double focus = x(readings.si("sharp.focus"));
    svg.line(
        new Point(focus, AXIS - HALF - 14),
        new Point(focus, AXIS + HALF + 14),
        Stroke.dashed(Ink.ACCENT, 1.4, "5 3"));
    svg.dot(new Point(focus, AXIS), 3, Fill.ACCENT);
  }

  private void mark(String word, String key, double row, Anchor anchor) {
    Point at = new Point(x(readings.si(key)), row);
    Label label = Label.small(word + " " + readings.text(key), at, anchor);
    svg.text(
        placer.place(
            label,
            List.of(
                label,
                label.movedTo(at, Anchor.MIDDLE),
                label.movedTo(at.plus(0, 16), anchor),
                label.movedTo(at.plus(0, 16), Anchor.START),
                label.movedTo(at.plus(0, 16), Anchor.END),
                label.movedTo(at.plus(0, 32), anchor),
                label.movedTo(at.plus(0, 32), Anchor.START))));
  }

  /** The depth that must be sharp. */
  private void drawSpan() {
    double row = HEIGHT - 22;
    double near = x(readings.si("sharp.near"));
    double far = x(readings.si("sharp.far"));
    svg.line(new Point(near, row), new Point(far, row), Stroke.solid(Ink.SECOND, 4));
    String words =
        "must be sharp: " + readings.text("sharp.near") + " to " + readings.text("sharp.far");
    Label label = Label.small(words, new Point(near - 8, row + 4), Anchor.END);
    Label below = label.movedTo(new Point((near + far) / 2, row + 17), Anchor.MIDDLE);
    svg.text(placer.place(label, List.of(label, below)));
  }

  private boolean covered() {
    double slack = 1e-9 * readings.si("sharp.far");
    return readings.si("sharp.nearLimit") <= readings.si("sharp.near") + slack
        && readings.si("sharp.farLimit") >= readings.si("sharp.far") - slack;
  }

  private String description() {
    return "Along the line of sight: focused at "
        + readings.text("sharp.focus")
        + " and set to "
        + readings.text("sharp.fNumber")
        + ", the lens draws sharply from "
        + readings.text("sharp.nearLimit")
        + " to "
        + readings.text("sharp.farLimit")
        + ". The object reaches from "
        + readings.text("distance.standoff")
        + " to "
        + readings.text("distance.far")
        + "; what must be sharp, "
        + readings.text("sharp.near")
        + " to "
        + readings.text("sharp.far")
        + ", "
        + (covered() ? "lies inside." : "does not fit inside.");
  }
}
