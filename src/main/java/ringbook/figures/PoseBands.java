package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;
import ringbook.units.Whole;

/**
 * The elevations of both poses on the object itself: those of the second pose with their sign
 * changed, the rings that are planned as dots, and the band that both can photograph.
 */
final class PoseBands {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 350;
  private static final Point MIDDLE = new Point(132, 175);
  private static final double FIRST = 118;
  private static final double SECOND = 140;
  private static final double BODY = 62;
  private static final double WORDS = 362;
  private static final int MOST = 40;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double low;
  private final double high;

  private PoseBands(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    low = readings.si("rings.lowest");
    high = readings.si("rings.highest");
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new PoseBands(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double from = Math.max(low, -high);
    double to = Math.min(high, -low);
    if (from < to) {
      wedge(from, to, Stroke.solid(Ink.FAINT, 1), Fill.FAINT);
    } else if (isApart()) {
      wedge(to, from, Stroke.GUIDE, Fill.PAPER);
    }
    body();
    pose(FIRST, low, high, (int) readings.si("rings.count"), Ink.ACCENT);
    double tied = -Math.min(Math.abs(low), high);
    pose(SECOND, -high, -low, 0, Ink.SECOND);
    dots(SECOND, -high, tied, (int) readings.si("pose.rings"), Ink.SECOND);
    words();
    readings.tabulate("rings.lowest", "rings.highest", isApart() ? "pose.apart" : "pose.band");
    readings.tabulate("rings.spacing", "pose.rings");
    return readings.figure(svg, "What both poses can photograph", description());
  }

  /** Whether the poses leave a turn between them, rather than a band that both have. */
  private boolean isApart() {
    return readings.si("pose.apart") > 0;
  }

  private void wedge(double from, double to, Stroke stroke, Fill fill) {
    int steps = (int) Math.max(1, Whole.up((to - from) / 0.05));
    List<Point> corners = new ArrayList<>();
    corners.add(MIDDLE);
    for (int i = 0; i <= steps; i++) {
      corners.add(MIDDLE.towards(from + (to - from) * i / steps, SECOND + 14));
    }
    svg.polygon(corners, stroke, fill);
  }

  private void body() {
    double tall = readings.si("subject.height");
    double wide = readings.si("distance.turningWidth");
    double scale = BODY / (Num.hypot(tall, wide) / 2);
    double up = tall * scale / 2;
    double out = wide * scale / 2;
    svg.box(
        new Box(MIDDLE.x() - out, MIDDLE.y() - up, MIDDLE.x() + out, MIDDLE.y() + up),
        Stroke.OUTLINE,
        Fill.PAPER);
    svg.line(MIDDLE.plus(-out, up), MIDDLE.plus(out, up), Stroke.solid(Ink.INK, 4));
    svg.text(Label.small("underside", MIDDLE.plus(0, up + 18), Anchor.MIDDLE));
    svg.text(Label.small("top", MIDDLE.plus(0, -up - 9), Anchor.MIDDLE));
    svg.line(MIDDLE, MIDDLE.plus(SECOND + 30, 0), Stroke.GUIDE);
    svg.text(Label.small("0°", MIDDLE.plus(SECOND + 34, 4), Anchor.START));
  }

  private void pose(double radius, double from, double to, int rings, Ink ink) {
    if (from < to) {
      svg.arc(MIDDLE, radius, new Sweep(from, to), pen(ink));
    }
    dots(radius, from, to, rings, ink);
  }

  private static Stroke pen(Ink ink) {
    return ink == Ink.ACCENT ? Stroke.solid(ink, 2.4) : Stroke.dashed(ink, 2.4, "9 4");
  }

  private void dots(double radius, double from, double to, int rings, Ink ink) {
    int shown = Math.min(MOST, rings);
    for (int i = 0; i < shown; i++) {
      double at = shown == 1 ? to : from + (to - from) * i / (shown - 1);
      Point on = MIDDLE.towards(at, radius);
      if (ink == Ink.ACCENT) {
        svg.dot(on, 4, Fill.ACCENT);
      } else {
        svg.circle(on, 4.2, Stroke.solid(ink, 2), Fill.PAPER);
      }
    }
  }

  private void words() {
    say(70, "First pose", degrees(low) + " to " + degrees(high), Ink.ACCENT);
    say(150, "Second pose, on the object", degrees(-high) + " to " + degrees(-low), Ink.SECOND);
    double y = 250;
    boolean apart = isApart();
    String name = apart ? "Between the two" : "Both can see";
    String value = readings.text(apart ? "pose.apart" : "pose.band");
    svg.text(Label.of(name, new Point(WORDS, y), Anchor.START));
    svg.text(Label.of(value, new Point(WORDS, y + 20), Anchor.START).bold());
  }

  private void say(double y, String name, String value, Ink ink) {
    svg.line(new Point(WORDS - 26, y - 5), new Point(WORDS - 8, y - 5), pen(ink));
    svg.text(Label.of(name, new Point(WORDS, y), Anchor.START));
    svg.text(Label.of(value, new Point(WORDS, y + 20), Anchor.START).bold());
  }

  private String degrees(double elevation) {
    return reckoning.ledger().get("rings.lowest").text(elevation);
  }

  private String description() {
    boolean apart = isApart();
    return "The object from the side. One arc shows the elevations of the first pose, "
        + degrees(low)
        + " to "
        + degrees(high)
        + ". The other shows those of the second pose as they lie on the object, "
        + degrees(-high)
        + " to "
        + degrees(-low)
        + ". "
        + (apart
            ? "They do not meet: "
                + readings.text("pose.apart")
                + " lie between the two lowest rings."
            : "They share a band of " + readings.text("pose.band") + ".")
        + " Dots are rings that are planned, hollow ones those of the second pose.";
  }
}
