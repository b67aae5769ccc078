package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.optics.Sensor;
import ringbook.units.Numbers;

/**
 * Why two lenses see the same: the sensor and a full frame, each at its focal length behind the
 * lens, cut from corner to corner and to one scale.
 */
final class Equivalence {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 350;
  private static final double LENS = 372;
  private static final double MIDDLE = 128;
  private static final double DEEP = 300;
  private static final double TALL = 208;

  private final Readings readings;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final double scale;

  private Equivalence(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    double deepest = Math.max(readings.si("kit.focalLength"), readings.si("kit.sameView"));
    double tallest = Math.max(readings.si("kit.diagonal"), full());
    scale = Math.min(DEEP / deepest, TALL / tallest);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new Equivalence(reckoning, idPrefix).figure();
  }

  private static double full() {
    return Sensor.FULL_FRAME_DIAGONAL.metres();
  }

  private Figure figure() {
    double own = readings.si("kit.focalLength");
    double same = readings.si("kit.sameView");
    rays(Math.max(own, same), own >= same ? readings.si("kit.diagonal") : full());
    sensor(same, full(), Stroke.solid(Ink.SECOND, 4));
    sensor(own, readings.si("kit.diagonal"), Stroke.solid(Ink.ACCENT, 6));
    lens();
    length(own, readings.text("kit.focalLength"), HEIGHT - 62, Stroke.solid(Ink.ACCENT, 1));
    length(same, readings.text("kit.sameView"), HEIGHT - 22, Stroke.dashed(Ink.SECOND, 1, "3 2"));
    names();
    readings.tabulate(
        "kit.diagonal",
        "kit.focalLength",
        "kit.cropFactor",
        "kit.sameView",
        "kit.areaRatio",
        "kit.angleDiagonal");
    return readings.figure(svg, "Two sensors with the same view", description());
  }

  private Point behind(double focalLength, double up) {
    return new Point(LENS - focalLength * scale, MIDDLE - up * scale);
  }

  /** From the corners of the deepest sensor through the lens and out. */
  private void rays(double focalLength, double side) {
    Point lens = new Point(LENS, MIDDLE);
    for (double up : new double[] {side / 2, -side / 2}) {
      Point corner = behind(focalLength, up);
      double out = Math.min(150, 150 * LENS / Math.max(1, corner.distanceTo(lens)));
      Point end = lens.towards(corner.directionTo(lens), Math.min(out, 118));
      svg.line(corner, end, Stroke.solid(Ink.FAINT, 1.4));
      placer.keepOff(corner, end);
    }
    svg.line(behind(focalLength, 0), new Point(WIDTH - 30, MIDDLE), Stroke.GUIDE);
  }

  private void sensor(double focalLength, double side, Stroke pen) {
    Point top = behind(focalLength, side / 2);
    Point bottom = behind(focalLength, -side / 2);
    svg.line(top, bottom, pen);
    placer.keepOff(new Box(top.x() - 4, top.y(), bottom.x() + 4, bottom.y()));
  }

  private void lens() {
    Point top = new Point(LENS, MIDDLE - 24);
    Point bottom = new Point(LENS, MIDDLE + 24);
    svg.polygon(
        List.of(top, new Point(LENS + 6, MIDDLE), bottom, new Point(LENS - 6, MIDDLE)),
        Stroke.OUTLINE,
        Fill.FAINT);
    placer.keepOff(new Box(LENS - 7, MIDDLE - 26, LENS + 7, MIDDLE + 26));
    svg.text(placer.fixed(Label.of("lens", new Point(LENS, MIDDLE - 32), Anchor.MIDDLE)));
    svg.text(
        placer.fixed(
            Label.of(
                readings.text("kit.angleDiagonal"),
                new Point(LENS + 66, MIDDLE + 5),
                Anchor.MIDDLE)));
    svg.text(
        placer.fixed(
            Label.small("the same angle", new Point(WIDTH - 12, MIDDLE + 24), Anchor.END)));
  }

  private void length(double focalLength, String text, double y, Stroke edge) {
    Point from = new Point(LENS - focalLength * scale, y);
    Point to = new Point(LENS, y);
    svg.line(from.plus(0, -16), from.plus(0, 4), edge);
    svg.line(to.plus(0, -16), to.plus(0, 4), edge);
    new Dimension(from, to, text).drawLine(svg, placer);
    svg.text(placer.fixed(Label.of("focal length " + text, to.plus(24, 5), Anchor.START)));
  }

  private void names() {
    boolean nearer = readings.si("kit.focalLength") <= readings.si("kit.sameView");
    name("full frame, " + diagonal(full()), readings.si("kit.sameView"), full(), nearer);
    name(
        "this sensor, " + readings.text("kit.diagonal"),
        readings.si("kit.focalLength"),
        readings.si("kit.diagonal"),
        !nearer);
  }

  private static String diagonal(double metres) {
    return Numbers.fixed(1000 * metres, 1) + "\u00a0mm";
  }

  /** The deeper sensor is named above, the other one below all rays. */
  private void name(String words, double focalLength, double side, boolean deeper) {
    Label label = Label.of(words, behind(focalLength, side / 2), Anchor.START).bold();
    if (deeper) {
      svg.text(placer.fixed(label.movedTo(label.at().plus(-4, -10), Anchor.START)));
      return;
    }
    Point foot = behind(focalLength, -side / 2);
    Point below = new Point(foot.x(), MIDDLE + TALL / 2 + 8);
    svg.line(foot, below, Stroke.solid(Ink.FAINT, 1));
    svg.text(placer.fixed(label.movedTo(below.plus(0, 14), Anchor.MIDDLE)));
  }

  private String description() {
    return "A cut from corner to corner through lens and sensor, to scale. The sensor, "
        + readings.text("kit.diagonal")
        + " from corner to corner, is "
        + readings.text("kit.focalLength")
        + " behind the lens. A full frame, "
        + readings.text("kit.cropFactor")
        + " times as large, takes in the same angle of "
        + readings.text("kit.angleDiagonal")
        + " if it is as many times further away, "
        + readings.text("kit.sameView")
        + ".";
  }
}
