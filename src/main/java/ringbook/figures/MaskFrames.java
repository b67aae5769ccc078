package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** Two photographs of an object that turns before a room that does not, and one with a mask. */
final class MaskFrames {

  private static final double WIDTH = 560;
  private static final double TOP = 32;
  private static final double TALL = 190;
  private static final double WIDE = 164;
  private static final double PITCH = 186;

  /** Specks on the object, as shares of half its width and height. */
  private static final double[][] SPECKS = {
    {-0.7, 0.5}, {-0.35, -0.5}, {-0.1, 0.2}, {0.2, 0.7}, {0.3, -0.2}, {-0.6, -0.1}, {0.05, -0.8}
  };

  /** Specks in the room, as shares of the frame; those behind the object are not drawn. */
  private static final double[][] ROOM = {
    {0.05, 0.1},
    {0.3, 0.05},
    {0.55, 0.07},
    {0.8, 0.04},
    {0.94, 0.18},
    {0.06, 0.35},
    {0.95, 0.45},
    {0.04, 0.62},
    {0.96, 0.72},
    {0.07, 0.9},
    {0.35, 0.96},
    {0.6, 0.94},
    {0.9, 0.95}
  };

  private static final double TURN = 0.28;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double wide;
  private final double tall;

  private MaskFrames(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    double shape = readings.si("distance.sideAcross") / readings.si("distance.sideUp");
    double fits = Math.min(WIDE / shape, TALL);
    tall = fits;
    wide = fits * shape;
    svg = new SvgWriter(WIDTH, TOP + tall + 58, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new MaskFrames(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    String turned = "a turn of " + readings.text("ring.realStep") + " later";
    frame(0, "first photograph", 0, true);
    frame(1, turned, TURN, true);
    frame(2, "with a mask", TURN, false);
    double under = TOP + tall + 24;
    String share = readings.text("room.behind") + " shows the room";
    svg.text(Label.of(share, new Point(WIDTH / 2 - PITCH / 2, under), Anchor.MIDDLE).bold());
    svg.text(
        Label.small(
            "and none of it has moved",
            new Point(WIDTH / 2 - PITCH / 2, under + 18),
            Anchor.MIDDLE));
    svg.text(Label.of("only the object counts", new Point(middle(2), under), Anchor.MIDDLE));
    readings.tabulate(
        "distance.filledLong", "distance.filledShort", "room.behind", "ring.realStep");
    return readings.figure(svg, "What a turning object does to the room", description());
  }

  private static double middle(int number) {
    return WIDTH / 2 + (number - 1) * PITCH;
  }

  private void frame(int number, String name, double turn, boolean room) {
    double x = middle(number);
    Box frame = new Box(x - wide / 2, TOP, x + wide / 2, TOP + tall);
    svg.box(frame, Stroke.OUTLINE, room ? Fill.PAPER : Fill.FAINT);
    svg.text(Label.of(name, new Point(x, TOP - 12), Anchor.MIDDLE));
    Box body = body(frame);
    if (room) {
      for (double[] speck : ROOM) {
        Point at = new Point(frame.left() + speck[0] * wide, frame.top() + speck[1] * tall);
        if (!body.grown(4).holds(at)) {
          cross(at);
        }
      }
    }
    svg.box(body, Stroke.solid(Ink.ACCENT, 1.8), room ? Fill.FAINT : Fill.PAPER);
    for (double[] speck : SPECKS) {
      double across = (speck[0] + turn) * body.width() / 2;
      svg.dot(
          new Point(body.middleX() + across, body.middleY() + speck[1] * body.height() / 2 * 0.9),
          2.6,
          Fill.ACCENT);
    }
  }

  private Box body(Box frame) {
    boolean upright = readings.si("distance.sideUp") > readings.si("distance.sideAcross");
    double up = readings.si(upright ? "distance.filledLong" : "distance.filledShort") * tall;
    double across = readings.si(upright ? "distance.filledShort" : "distance.filledLong") * wide;
    return new Box(
        frame.middleX() - across / 2,
        frame.middleY() - up / 2,
        frame.middleX() + across / 2,
        frame.middleY() + up / 2);
  }

  private void cross(Point at) {
    svg.line(at.plus(-3.5, 0), at.plus(3.5, 0), Stroke.solid(Ink.SECOND, 1.4));
    svg.line(at.plus(0, -3.5), at.plus(0, 3.5), Stroke.solid(Ink.SECOND, 1.4));
  }

  private String description() {
    return "Three frames. In the first two the "
        + reckoning.scene().subject().name()
        + " has turned by "
        + readings.text("ring.realStep")
        + ": its specks have moved, but the crosses in the room behind it, "
        + readings.text("room.behind")
        + " of the picture, are where they were. In the third a mask covers the room, so that only"
        + " the specks of the object count.";
  }
}
