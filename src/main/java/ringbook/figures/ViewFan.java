package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.shots.Aim;

/**
 * What the camera sees from above, to scale, with the object in it; and with twice the focal
 * length.
 */
final class ViewFan {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 366;
  private static final double REACH = 262;
  private static final Point LENS = new Point(280, 318);

  private final Reckoning reckoning;
  private final Readings readings;
  private final String angle;
  private final String field;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final double scale;

  private ViewFan(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    boolean upright = reckoning.scene().aim().hold() == Aim.Hold.UPRIGHT;
    angle = upright ? "kit.angleShort" : "kit.angleLong";
    field = upright ? "distance.fieldShort" : "distance.fieldLong";
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    scale = REACH / (1.06 * readings.si("distance.far"));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new ViewFan(reckoning, idPrefix).figure();
  }

  private Curve twice() {
    return Curve.with(reckoning, "kit.focalLength", 2 * readings.si("kit.focalLength"));
  }

  private Figure figure() {
    double half = readings.si(angle) / 2;
    double narrow = twice().si(angle) / 2;
    wedge(half, Stroke.solid(Ink.ACCENT, 2));
    object();
    wedge(narrow, Stroke.dashed(Ink.SECOND, 1.6, "6 4"));
    CameraMark.draw(svg, LENS, Math.PI / 2, Fill.FAINT);
    placer.keepOff(new Box(LENS.x() - 12, LENS.y() - 4, LENS.x() + 12, LENS.y() + 22));
    words(half);
    readings.tabulate(
        "kit.focalLength",
        "kit.angleLong",
        "kit.angleShort",
        "kit.angleDiagonal",
        "distance.standoff",
        field);
    readings.row("Angle of view with twice the focal length", twice().text(angle));
    return readings.figure(svg, "What the camera sees", description());
  }

  private void wedge(double half, Stroke pen) {
    for (double direction : new double[] {Math.PI / 2 - half, Math.PI / 2 + half}) {
      Point end = LENS.towards(direction, REACH);
      svg.line(LENS, end, pen);
      placer.keepOff(LENS, end);
    }
    svg.arc(LENS, REACH, new Sweep(Math.PI / 2 - half, Math.PI / 2 + half), pen);
  }

  private void object() {
    double radius = scale * readings.si("distance.turningWidth") / 2;
    Point middle = LENS.plus(0, -scale * readings.si("distance.middle"));
    svg.circle(middle, radius, Stroke.OUTLINE, Fill.FAINT);
    double room = Math.max(60, 2 * radius - 10);
    List<String> lines = Sentence.lines(reckoning.scene().subject().name(), Label.SMALL, room);
    double y = middle.y() + 4 - 7.5 * (lines.size() - 1);
    for (String line : lines) {
      String fitted = Sentence.fitted(line, Label.SMALL, room);
      svg.text(placer.fixed(Label.small(fitted, new Point(middle.x(), y), Anchor.MIDDLE)));
      y += 15;
    }
    Point near = LENS.plus(0, -scale * readings.si("distance.standoff"));
    svg.line(LENS, near, Stroke.GUIDE);
  }

  private void words(double half) {
    Point wide = LENS.towards(Math.PI / 2 + half, 0.42 * REACH);
    Label first = Label.of(readings.text(angle), wide, Anchor.END).bold();
    svg.text(
        placer.place(
            first,
            List.of(
                first.movedTo(wide.plus(-10, 4), Anchor.END),
                first.movedTo(wide.plus(-10, 20), Anchor.END))));
    Point slim = LENS.towards(Math.PI / 2 - half, 0.42 * REACH);
    String other = "twice the focal length: " + twice().text(angle);
    Label second = Label.of(other, slim, Anchor.START);
    svg.text(
        placer.place(
            second,
            List.of(
                second.movedTo(slim.plus(10, 12), Anchor.START),
                second.movedTo(slim.plus(10, 32), Anchor.START),
                second.movedTo(new Point(WIDTH - 8, LENS.y() + 4), Anchor.END))));
    String stand = "near face at " + readings.text("distance.standoff");
    svg.text(placer.fixed(Label.small(stand, new Point(24, HEIGHT - 14), Anchor.START)));
    ScaleBar.draw(svg, readings.lengths(), placer, new Point(WIDTH - 140, HEIGHT - 14), scale);
  }

  private String description() {
    return "A wedge from the lens over the object, from above and to scale. With a focal length of "
        + readings.text("kit.focalLength")
        + " it opens by "
        + readings.text(angle)
        + " from side to side and takes in "
        + readings.text(field)
        + " at the near face, "
        + readings.text("distance.standoff")
        + " away. With twice the focal length it would open by only "
        + twice().text(angle)
        + ".";
  }
}
