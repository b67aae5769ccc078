package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** A camera that rests on the table, right way up and turned over: where its lens looks from. */
final class TurnedOver {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 236;
  private static final double PANEL = 270;
  private static final double FOOT = 172;
  private static final double ROOM = 130;
  private static final double THICK = 9;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final double scale;

  private TurnedOver(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    double across = readings.si("distance.turningWidth") / 2 + readings.si("ring.radius");
    double up = Math.max(readings.si("subject.height"), camera());
    scale = Math.min((PANEL - 50) / across, ROOM / up);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new TurnedOver(reckoning, idPrefix).figure();
  }

  /** Metres from one edge of the camera to the opposite one. */
  private double camera() {
    return readings.si("kit.lensOffset") + readings.si("kit.lensFarOffset");
  }

  private Figure figure() {
    panel(0, "right way up", "low.uprightHeight", "low.uprightElevation");
    panel(1, "turned over", "low.turnedHeight", "low.turnedElevation");
    svg.line(new Point(WIDTH / 2, 20), new Point(WIDTH / 2, HEIGHT - 12), Stroke.GUIDE);
    readings.tabulate(
        "kit.lensOffset",
        "kit.lensFarOffset",
        "low.uprightHeight",
        "low.uprightElevation",
        "low.turnedHeight",
        "low.turnedElevation",
        "low.gain",
        "low.gainAngle");
    return readings.figure(svg, "The camera on the table, two ways up", description());
  }

  private void panel(int number, String name, String height, String elevation) {
    double left = number * (WIDTH - PANEL);
    View view = new View(scale, new Point(left + 16 + half() * scale, FOOT));
    svg.line(
        new Point(left + 6, FOOT), new Point(left + PANEL - 6, FOOT), Stroke.solid(Ink.FAINT, 4));
    drawBody(view);
    double above = readings.si(height) - readings.si("place.tableHeight");
    double rise = readings.si(height) - readings.si("ring.middleHeight");
    double radius = readings.si("ring.radius");
    double away = Math.sqrt(Math.max(0, radius * radius - rise * rise));
    Point lens = view.at(away, above);
    drawCamera(view, away);
    Point middle = view.at(0, readings.si("subject.height") / 2);
    svg.line(middle, view.at(away, readings.si("subject.height") / 2), Stroke.GUIDE);
    svg.line(lens, middle, Stroke.solid(Ink.ACCENT, 1.6));
    svg.circle(lens, 3.4, Stroke.solid(Ink.ACCENT, 1.8), Fill.PAPER);
    double mid = left + PANEL / 2;
    svg.text(placer.fixed(Label.of(name, new Point(mid, 24), Anchor.MIDDLE).bold()));
    svg.text(
        placer.fixed(
            Label.of(
                "elevation " + readings.text(elevation),
                new Point(mid, FOOT + 24),
                Anchor.MIDDLE)));
    svg.text(
        placer.fixed(
            Label.of(
                "lens " + readings.text(height) + " high",
                new Point(mid, FOOT + 44),
                Anchor.MIDDLE)));
  }

  private double half() {
    return readings.si("distance.turningWidth") / 2;
  }

  private void drawBody(View view) {
    Point foot = view.at(half(), 0);
    Point head = view.at(-half(), readings.si("subject.height"));
    svg.box(new Box(head.x(), head.y(), foot.x(), foot.y()), Stroke.OUTLINE, Fill.FAINT);
    svg.dot(view.at(0, readings.si("subject.height") / 2), 2.5, Fill.TEXT);
  }

  /** Behind the lens, standing on the table. */
  private void drawCamera(View view, double away) {
    Point foot = view.at(away, 0);
    Point head = view.at(away, camera());
    svg.box(
        new Box(foot.x(), head.y(), foot.x() + THICK, foot.y()),
        Stroke.solid(Ink.ACCENT, 1.6),
        Fill.PAPER);
  }

  private String description() {
    return "Two pictures from the side. On the left the "
        + reckoning.scene().kit().name()
        + " stands on the table right way up: its lens is "
        + readings.text("low.uprightHeight")
        + " above the floor and looks at the middle of the object from an elevation of "
        + readings.text("low.uprightElevation")
        + ". On the right it is turned over, with the lens at the table: "
        + readings.text("low.turnedHeight")
        + " and "
        + readings.text("low.turnedElevation")
        + ". Turning it over brings the lens "
        + readings.text("low.gain")
        + " lower.";
  }
}
