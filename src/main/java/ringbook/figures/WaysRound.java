package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.assess.Standing;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.geometry.ArcSet;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Unit;

/** The room from above: what a person needs, what is in the way, and the rings that pass it. */
final class WaysRound {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 330;
  private static final double SIDE = 330;
  private static final double KEY = 352;
  private static final double ROW = 44;
  private static final double FARTHEST = 2.2;
  private static final int PARTS = 720;

  private final Readings readings;
  private final Scene scene;
  private final SvgWriter svg;
  private final LabelPlacer placer;
  private final Box plan = new Box(4, 4, SIDE, HEIGHT - 4);
  private final View view;
  private double keyTop = 36;

  private WaysRound(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    scene = reckoning.scene();
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    placer = new LabelPlacer(plan.grown(-4));
    double reach = readings.si("room.standing");
    if (showsWider()) {
      reach = Math.max(reach, readings.si("room.wider"));
    }
    view = new View(0.47 * SIDE / reach, new Point(plan.middleX(), plan.middleY()));
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new WaysRound(reckoning, idPrefix).figure();
  }

  private boolean showsWider() {
    return readings.known("room.wider")
        && readings.si("room.wider") <= FARTHEST * readings.si("room.standing");
  }

  private Figure figure() {
    svg.box(plan, Stroke.solid(Ink.FAINT, 1), Fill.NONE);
    List<List<Label>> names = Plan.bodies(scene.place(), view, plan, svg, placer);
    ring("ring.floorDistance", "The ring", Stroke.solid(Ink.ACCENT, 2.2));
    ring("room.standing", "Room a person needs", Stroke.dashed(Ink.INK, 1.2, "3 3"));
    blocked();
    double free = readings.si("room.free");
    if (free > readings.si("distance.turningWidth") / 2 && free < readings.si("room.standing")) {
      ring("room.free", "Largest free ring", Stroke.dashed(Ink.SECOND, 1.6, "10 3 2 3"));
    }
    if (showsWider()) {
      ring("room.wider", "Ring outside the furniture", Stroke.dashed(Ink.SECOND, 1.6, "8 4"));
    }
    SubjectOutline.draw(svg, view, scene.subject());
    placer.keepOff(SubjectOutline.box(view, scene.subject()));
    Plan.write(names, svg, placer);
    readings.tabulate(
        "ring.floorDistance",
        "room.standing",
        "room.free",
        "room.missing",
        "room.blockedArc",
        "room.stationsLost",
        "room.gapTurn",
        "room.raised",
        "room.wider",
        "room.turntable");
    return readings.figure(svg, "The room from above", description());
  }

  private void ring(String key, String name, Stroke stroke) {
    double radius = view.scale() * readings.si(key);
    svg.circle(view.origin(), radius, stroke, Fill.NONE);
    placer.keepOff(view.origin(), radius);
    key(name, readings.text(key), stroke);
  }

  private void key(String name, String value, Stroke stroke) {
    svg.line(new Point(KEY, keyTop - 5), new Point(KEY + 24, keyTop - 5), stroke);
    svg.text(Label.small(name, new Point(KEY + 32, keyTop - 2), Anchor.START));
    svg.text(Label.of(value, new Point(KEY + 32, keyTop + 16), Anchor.START).bold());
    keyTop += ROW;
  }

  /** The directions in which something is in the way, as thick arcs where the person would be. */
  private void blocked() {
    ArcSet arcs = Standing.blocked(scene.place(), new Length(readings.si("room.standing")));
    Stroke thick = Stroke.solid(Ink.INK, 5);
    double radius = view.scale() * readings.si("room.standing");
    double part = 2 * Math.PI / PARTS;
    int from = -1;
    for (int i = 0; i <= PARTS; i++) {
      boolean held = i < PARTS && arcs.holds(new Angle((i + 0.5) * part));
      if (held && from < 0) {
        from = i;
      } else if (!held && from >= 0) {
        double to = Math.min(i * part, from * part + 2 * Math.PI - 0.01);
        svg.arc(view.origin(), radius, new Sweep(from * part, to), thick);
        from = -1;
      }
    }
    if (arcs.total().radians() > 0) {
      key("Something is in the way", readings.text("room.blockedArc"), thick);
    }
  }

  private String description() {
    String ring =
        "Seen from above: the ring of the lens, "
            + readings.text("ring.floorDistance")
            + " from the middle of the "
            + scene.subject().name()
            + ", and the wider circle that a person needs, "
            + readings.text("room.standing")
            + ". ";
    boolean free = Unit.DEGREE.fromSi(readings.si("room.blockedArc")) == 0;
    return ring
        + (free
            ? "Nothing is in the way of it."
            : "Thick arcs show where walls or furniture are in the way: "
                + readings.text("room.blockedArc")
                + " in all. The largest ring with nothing in the way has "
                + readings.text("room.free")
                + ".");
  }
}
