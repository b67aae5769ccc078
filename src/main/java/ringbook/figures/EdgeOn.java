package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;

/** A thin plate from above: which stations of the ring see its front, its back, or neither well. */
final class EdgeOn {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 350;
  private static final double RADIUS = 128;
  private static final double PLATE = 60;
  private static final Point MIDDLE = new Point(WIDTH / 2, 172);
  private static final int MOST = 90;

  private static final Stroke FRONT = Stroke.solid(Ink.ACCENT, 4);
  private static final Stroke BACK = Stroke.dashed(Ink.SECOND, 4, "9 4");

  private final Readings readings;
  private final SvgWriter svg;
  private final double limit;

  private EdgeOn(Reckoning reckoning, String idPrefix) {
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    limit = readings.si("aim.incidenceLimit");
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new EdgeOn(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double front = -Math.PI / 2;
    svg.arc(MIDDLE, RADIUS + 14, new Sweep(front - limit, front + limit), FRONT);
    svg.arc(MIDDLE, RADIUS + 14, new Sweep(limit > 0 ? -front - limit : 0, -front + limit), BACK);
    for (double side : new double[] {0, Math.PI}) {
      Point edge = MIDDLE.plus(side == 0 ? PLATE : -PLATE, 0);
      for (double lean : new double[] {-1, 1}) {
        double at = side + lean * (Math.PI / 2 - limit);
        svg.line(edge, MIDDLE.towards(at, RADIUS - 8), Stroke.GUIDE);
      }
    }
    stations();
    svg.box(
        new Box(MIDDLE.x() - PLATE, MIDDLE.y() - 3, MIDDLE.x() + PLATE, MIDDLE.y() + 3),
        Stroke.OUTLINE,
        Fill.FAINT);
    words();
    readings.tabulate(
        "aim.incidenceLimit",
        "strip.edgeBlind",
        "ring.realStep",
        "strip.edgeLost",
        "strip.edgePhotos");
    return readings.figure(svg, "Round a thin edge", description());
  }

  private void stations() {
    int photos = (int) readings.si("ring.photos");
    int shown = Math.min(MOST, photos);
    for (int i = 0; i < shown; i++) {
      double at = -Math.PI / 2 + 2 * Math.PI * i / shown;
      Point on = MIDDLE.towards(at, RADIUS);
      double off = Math.abs(Math.abs(turned(at)) - Math.PI / 2);
      if (off <= limit + 1e-9) {
        svg.dot(on, 3, Fill.ACCENT);
      } else {
        svg.line(on.plus(-4, -4), on.plus(4, 4), Stroke.solid(Ink.INK, 1.6));
        svg.line(on.plus(-4, 4), on.plus(4, -4), Stroke.solid(Ink.INK, 1.6));
      }
    }
  }

  /** The direction between −π and π. */
  private static double turned(double at) {
    return at > Math.PI ? at - 2 * Math.PI : at;
  }

  private void words() {
    svg.text(Label.of("front seen well", MIDDLE.plus(0, RADIUS + 36), Anchor.MIDDLE));
    svg.text(Label.of("back seen well", MIDDLE.plus(0, -RADIUS - 24), Anchor.MIDDLE));
    double right = MIDDLE.x() + RADIUS + 22;
    svg.text(
        Label.of(readings.text("strip.edgeBlind"), new Point(right, MIDDLE.y() - 4), Anchor.START)
            .bold());
    svg.text(Label.small("neither", new Point(right, MIDDLE.y() + 14), Anchor.START));
    double left = MIDDLE.x() - RADIUS - 22;
    svg.text(
        Label.of(readings.text("strip.edgeBlind"), new Point(left, MIDDLE.y() - 4), Anchor.END)
            .bold());
    svg.text(Label.small("neither", new Point(left, MIDDLE.y() + 14), Anchor.END));
  }

  private String description() {
    return "A thin plate seen from above with a ring of stations. From the front and from the back"
        + " the stations, drawn as dots, see one side within "
        + readings.text("aim.incidenceLimit")
        + ". At each edge lies a turn of "
        + readings.text("strip.edgeBlind")
        + " from which neither side is seen well; the stations there are crosses.";
  }
}
