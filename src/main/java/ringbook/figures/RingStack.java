package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;

/** All rings from the side, one station of each, and the arc over the top. */
final class RingStack {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 370;
  private static final double LABEL_GAP = 16;
  private static final int MOST_ROWS = 12;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final double halfWidth;
  private final double table;
  private final double middle;
  private final double radius;
  private final double low;
  private final double high;
  private final int count;
  private final View view;

  private RingStack(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(svg.paper().grown(-4));
    halfWidth = readings.si("distance.turningWidth") / 2;
    table = readings.si("place.tableHeight");
    middle = readings.si("ring.middleHeight");
    radius = readings.si("ring.radius");
    low = readings.si("rings.lowest");
    high = readings.si("rings.highest");
    count = (int) readings.si("rings.count");
    view = View.showing(shown(), new Box(30, 40, WIDTH - 150, HEIGHT - 30));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new RingStack(reckoning, idPrefix).figure();
  }

  private Box shown() {
    double bottom = Math.min(table, middle + radius * Num.sin(low));
    return new Box(
        -Math.max(1.2 * halfWidth, radius * Num.cos(high)), bottom, radius, middle + radius);
  }

  private Figure figure() {
    drawBody();
    svg.arc(
        view.at(0, middle), radius * view.scale(), new Sweep(low, Math.PI - high), Stroke.GUIDE);
    drawReach();
    drawSight(low);
    drawSight(high);
    for (int ring = 0; ring < count; ring++) {
      drawStation(elevation(ring), true);
    }
    drawTop();
    nameRings();
    tabulate();
    return readings.figure(svg, "Rings at heights, seen from the side", description());
  }

  private double elevation(int ring) {
    return low + ring * readings.si("rings.spacing");
  }

  private Point on(double elevation) {
    return view.at(radius * Num.cos(elevation), middle + radius * Num.sin(elevation));
  }

  private void drawBody() {
    Point foot = view.at(halfWidth, table);
    Point head = view.at(-halfWidth, table + readings.si("subject.height"));
    Box body = new Box(head.x(), head.y(), foot.x(), foot.y());
    svg.line(
        new Point(Math.max(8, head.x() - 40), foot.y()),
        new Point(foot.x() + 40, foot.y()),
        Stroke.solid(Ink.FAINT, 4));
    svg.box(body, Stroke.OUTLINE, Fill.FAINT);
    svg.dot(view.at(0, middle), 2.5, Fill.TEXT);
    Label name =
        Label.of(
                Sentence.fitted(reckoning.scene().subject().name(), Label.SIZE, 190),
                new Point(body.middleX(), foot.y() + 20),
                Anchor.MIDDLE)
            .bold();
    svg.text(placer.fixed(name));
  }

  private void drawSight(double elevation) {
    Point eye = on(elevation);
    svg.line(eye, view.at(0, middle), Stroke.solid(Ink.FAINT, 1));
  }

  private void drawStation(double elevation, boolean filled) {
    Point at = on(elevation);
    double inwards = at.directionTo(view.at(0, middle));
    svg.line(at.towards(inwards, 3), at.towards(inwards, 14), Stroke.solid(Ink.ACCENT, 2.2));
    if (filled) {
      svg.dot(at, 3.6, Fill.ACCENT);
    } else {
      svg.circle(at, 3.6, Stroke.solid(Ink.ACCENT, 1.5), Fill.PAPER);
    }
    placer.keepOff(at, at.towards(inwards, 14));
  }

  private void drawTop() {
    int views = (int) readings.si("rings.topViews");
    for (int i = 1; i <= views; i++) {
      drawStation(high + (Math.PI - 2 * high) * i / (views + 1), false);
    }
    Label top =
        Label.of(
            readings.text("rings.topViews") + " over the top",
            on(Math.PI / 2).plus(0, -12),
            Anchor.MIDDLE);
    svg.text(placer.place(top, List.of(top, top.movedTo(new Point(14, 22), Anchor.START))));
  }

  private void drawReach() {
    double y = view.at(0, readings.si("place.highestLens")).y();
    if (y < 12 || y > HEIGHT - 30) {
      return;
    }
    svg.line(new Point(14, y), new Point(WIDTH - 14, y), Stroke.dashed(Ink.SECOND, 1.2, "6 4"));
    placer.keepOff(new Point(14, y), new Point(WIDTH - 14, y));
    String words = "highest reach " + readings.text("place.highestLens");
    Label text = Label.small(words, new Point(WIDTH - 14, y - 5), Anchor.END);
    svg.text(
        placer.place(
            text,
            List.of(
                text,
                text.movedTo(new Point(14, y - 5), Anchor.START),
                text.movedTo(new Point(WIDTH - 14, y + 14), Anchor.END))));
  }

  /** From the lowest ring up, leaving out names that would lie on each other. */
  private void nameRings() {
    double last = Double.MAX_VALUE;
    for (int ring = 0; ring < count; ring++) {
      Point at = on(elevation(ring));
      boolean end = ring == count - 1;
      if (last - at.y() >= LABEL_GAP || (end && last == Double.MAX_VALUE)) {
        String words = (ring + 1) + ":  " + angle(ring) + ",  " + height(ring);
        svg.text(placer.fixed(Label.small(words, at.plus(10, 4), Anchor.START)));
        last = at.y();
      }
    }
  }

  private String angle(int ring) {
    return reckoning.ledger().get("rings.lowest").text(elevation(ring));
  }

  private Curve raised(int ring) {
    return Curve.with(reckoning, "aim.elevation", elevation(ring));
  }

  private String height(int ring) {
    return raised(ring).text("ring.lensHeight");
  }

  private void tabulate() {
    readings.tabulate("rings.count", "rings.spacing", "rings.photos");
    int every = Thinning.every(count, MOST_ROWS);
    for (int ring = 0; ring < count; ring += every) {
      readings.row(
          "Ring " + (ring + 1) + ": elevation, lens height, distance on the floor",
          angle(ring) + ", " + height(ring) + ", " + raised(ring).text("ring.floorDistance"));
    }
    readings.tabulate("rings.topViews", "rings.topHeight", "rings.topReachable");
  }

  private String description() {
    return "Seen from the side, one station for each ring: "
        + readings.count("rings.count", "ring")
        + " round the "
        + reckoning.scene().subject().name()
        + ", all "
        + readings.text("ring.radius")
        + " from its middle, from an elevation of "
        + readings.text("rings.lowest")
        + " with the lens "
        + readings.text("rings.lowestHeight")
        + " above the floor up to "
        + readings.text("rings.highest")
        + " at "
        + readings.text("rings.highestHeight")
        + ", "
        + readings.text("rings.spacing")
        + " apart. "
        + readings.count("rings.topViews", "hollow mark")
        + (readings.si("rings.topViews") == 1 ? " leads" : " lead")
        + " over the top to the other side.";
  }
}
