package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * Two rays that meet in a point, for three turns between the photographs: half the turn of the
 * ring, its own, and a quarter turn. A ray is drawn as the strip in which the spot may lie; the
 * width of the strips is exaggerated, their directions are true.
 */
final class TwoRays {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 318;
  private static final double PANEL = 186;
  private static final double SPOT = 92;
  private static final double AWAY = 104;
  private static final double BEHIND = 62;
  private static final double LONGEST = 52;
  private static final double WIDEST = 6;
  private static final Angle QUARTER = Angle.ofDegrees(90);
  private static final String TURN = "ring.realStep";
  private static final String DEPTH = "precision.pairDepth";
  private static final String ALIKE = "pair.alike";

  private final Reckoning reckoning;
  private final Readings readings;
  private final SvgWriter svg;
  private final double strip;

  private TwoRays(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    double narrow = at(0.5 * readings.si(TURN)).si("ring.rayAngle");
    strip = Math.min(WIDEST, LONGEST * Num.sin(narrow / 2));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new TwoRays(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double own = readings.si(TURN);
    panel(0, "half the turn", 0.5 * own);
    panel(1, "this ring", own);
    panel(2, "a quarter turn", QUARTER.radians());
    readings.tabulate(TURN, "ring.rayAngle", DEPTH, "precision.pairAcross", ALIKE);
    row("half the turn", 0.5 * own);
    row("a quarter turn", QUARTER.radians());
    return readings.figure(svg, "Two rays fix a point", description());
  }

  private Curve at(double turn) {
    return Curve.with(reckoning, TURN, turn);
  }

  private void panel(int number, String name, double turn) {
    Curve there = at(turn);
    double half = there.si("ring.rayAngle") / 2;
    Point spot = new Point(WIDTH / 2 + (number - 1) * PANEL, SPOT);
    double down = -Math.PI / 2;
    ray(spot, down - half, Stroke.solid(Ink.SECOND, 1.2));
    ray(spot, down + half, Stroke.dashed(Ink.SECOND, 1.2, "6 4"));
    double deep = Math.min(AWAY - 14, strip / Math.max(1e-6, Num.sin(half)));
    double wide = Math.min(PANEL / 2 - 6, strip / Math.max(1e-6, Num.cos(half)));
    svg.polygon(
        List.of(spot.plus(0, -deep), spot.plus(wide, 0), spot.plus(0, deep), spot.plus(-wide, 0)),
        Stroke.solid(Ink.ACCENT, 1),
        Fill.ACCENT);
    station(spot, down - half);
    station(spot, down + half);
    write(spot.x(), name, there);
  }

  /** The two edges of a strip, from the station past the spot. */
  private void ray(Point spot, double direction, Stroke stroke) {
    Point from = spot.towards(direction, AWAY);
    Point to = spot.towards(direction, -BEHIND);
    double side = direction + Math.PI / 2;
    for (double shift : new double[] {strip, -strip}) {
      svg.line(from.towards(side, shift), to.towards(side, shift), stroke);
    }
  }

  private void station(Point spot, double direction) {
    Point at = spot.towards(direction, AWAY);
    svg.line(at, spot.towards(direction, AWAY + 12), Stroke.solid(Ink.INK, 3));
    svg.dot(at, 3, Fill.TEXT);
  }

  private void write(double x, String name, Curve there) {
    double y = SPOT + AWAY + 42;
    svg.text(Label.of(name + ", " + there.text(TURN), new Point(x, y), Anchor.MIDDLE).bold());
    small("depth: " + there.text(DEPTH), x, y + 22);
    small("up and down: " + there.text("precision.pairAcross"), x, y + 39);
    small("spots still alike: " + there.text(ALIKE), x, y + 56);
  }

  private void small(String text, double x, double y) {
    svg.text(Label.small(text, new Point(x, y), Anchor.MIDDLE));
  }

  private void row(String name, double turn) {
    Curve there = at(turn);
    readings.row(
        "At " + name + ", " + there.text(TURN),
        "depth " + there.text(DEPTH) + ", spots still alike " + there.text(ALIKE));
  }

  private String description() {
    Curve near = at(0.5 * readings.si(TURN));
    Curve far = at(QUARTER.radians());
    return "Two cameras look at the same spot; each ray is a strip, because a spot is never found"
        + " exactly. Where the strips cross lies the point. At this ring's turn of "
        + readings.text(TURN)
        + " the crossing is long and thin: uncertain by "
        + readings.text(DEPTH)
        + " in depth, and "
        + readings.text(ALIKE)
        + " of the spots still look alike. At half that turn it is longer, "
        + near.text(DEPTH)
        + ". At a quarter turn it is short, "
        + far.text(DEPTH)
        + ", but only "
        + far.text(ALIKE)
        + " of the spots still look alike.";
  }
}
