package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.ledger.RefusedException;
import ringbook.units.Decimal;

/**
 * Many photographs against few, seen from above, with what two neighbours both see of the wall.
 * Options {@code many} and {@code few} set how many; 30 and 5 if not said.
 */
final class FewOrMany {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 340;
  private static final double RADIUS = 104;
  private static final double MIDDLE = 148;
  private static final int LEAST = 3;
  private static final int MOST = 120;
  private static final double LEAST_WALL = 0.25;
  private static final double FIRST = -Math.PI / 2;

  private static final Stroke ONE = Stroke.solid(Ink.SECOND, 2.5);
  private static final Stroke NEIGHBOUR = Stroke.dashed(Ink.THIRD, 2.5, "5 3");
  private static final Stroke BOTH = Stroke.solid(Ink.ACCENT, 7);

  private final Reckoning reckoning;
  private final Readings readings;
  private final SvgWriter svg;

  private FewOrMany(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    int many = count(options, "many", 30);
    int few = count(options, "few", 5);
    return new FewOrMany(reckoning, idPrefix).figure(many, few);
  }

  /** The author's count; below 3 there is no ring. */
  private static int count(Map<String, String> options, String name, int otherwise) {
    String written = options.get(name);
    if (written == null) {
      return otherwise;
    }
    double count = Decimal.parse(written).orElse(0);
    if (count < LEAST || count > MOST || count != Math.floor(count)) {
      throw new RefusedException(
          "The option '" + name + "' of this figure is '" + written + "'.",
          "Write a whole number from " + LEAST + " to " + MOST + ".");
    }
    return (int) count;
  }

  private Figure figure(int many, int few) {
    ring(many, 144);
    ring(few, WIDTH - 144);
    drawKey();
    readings.tabulate("ring.halfArc", "aim.decay");
    tabulate(many);
    tabulate(few);
    return readings.figure(svg, "Many photographs against few", said(many) + " " + said(few));
  }

  private Curve with(int photos) {
    return Curve.with(reckoning, "ring.photos", photos);
  }

  private void ring(int photos, double middleX) {
    Curve ring = with(photos);
    Point middle = new Point(middleX, MIDDLE);
    double step = ring.si("ring.realStep");
    double wall = RADIUS * wallShare();
    double seen = ring.si("ring.halfArc");
    svg.circle(middle, RADIUS, Stroke.GUIDE, Fill.NONE);
    svg.circle(middle, wall, Stroke.OUTLINE, Fill.FAINT);
    for (int i = 0; i < photos; i++) {
      station(middle, FIRST + i * step, i < 2);
    }
    seenArc(middle, wall + 6, FIRST, seen, ONE);
    seenArc(middle, wall + 11, FIRST + step, seen, NEIGHBOUR);
    if (2 * seen > step) {
      svg.arc(middle, wall - 7, new Sweep(FIRST + step - seen, FIRST + seen), BOTH);
    }
    double y = MIDDLE + RADIUS + 34;
    write(photos + " photographs, turn " + ring.text("ring.realStep"), middleX, y, true);
    write("seen well by both neighbours: " + ring.text("ring.sharedArc"), middleX, y + 19, false);
  }

  private void drawKey() {
    double y = HEIGHT - 14;
    double x = key(24, y, ONE, "seen well from one");
    x = key(x, y, NEIGHBOUR, "from its neighbour");
    x = key(x, y, BOTH, "from both");
    if (trueShare() < LEAST_WALL) {
      svg.text(Label.small("object enlarged", new Point(x, y), Anchor.START));
    }
  }

  private double key(double x, double y, Stroke stroke, String text) {
    svg.line(new Point(x, y - 4), new Point(x + 18, y - 4), stroke);
    svg.text(Label.small(text, new Point(x + 24, y), Anchor.START));
    return x + 24 + TextWidth.of(text, Label.SMALL) + 24;
  }

  /** The wall's radius as a share of the ring's, both on the floor. */
  private double trueShare() {
    return readings.si("subject.width") / 2 / readings.si("ring.floorDistance");
  }

  private double wallShare() {
    return Math.max(LEAST_WALL, Math.min(0.85, trueShare()));
  }

  private void station(Point middle, double direction, boolean strong) {
    Point at = middle.towards(direction, RADIUS);
    svg.line(
        at,
        middle.towards(direction, RADIUS - 10),
        Stroke.solid(strong ? Ink.INK : Ink.FAINT, strong ? 3 : 2));
    svg.circle(
        at,
        strong ? 3.2 : 2,
        Stroke.solid(strong ? Ink.INK : Ink.FAINT, 1),
        strong ? Fill.TEXT : Fill.PAPER);
  }

  private void seenArc(Point middle, double radius, double direction, double seen, Stroke stroke) {
    svg.arc(middle, radius, new Sweep(direction - seen, direction + seen), stroke);
  }

  private void write(String text, double x, double y, boolean strong) {
    Label label = Label.of(text, new Point(x, y), Anchor.MIDDLE);
    svg.text(strong ? label.bold() : label);
  }

  private void tabulate(int photos) {
    Curve ring = with(photos);
    for (String key :
        List.of("ring.realStep", "ring.sharedArc", "pair.shared", "pair.alike", "pair.matchable")) {
      readings.row(
          Sentence.capital(reckoning.ledger().get(key).name()) + ", " + photos + " photographs",
          ring.text(key));
    }
  }

  private String said(int photos) {
    Curve ring = with(photos);
    return "With "
        + photos
        + " photographs neighbours are a turn of "
        + ring.text("ring.realStep")
        + " apart: of the wall that one sees well, "
        + ring.text("ring.sharedArc")
        + " is seen well by the next one too, and "
        + ring.text("pair.matchable")
        + " of its spots can be matched there.";
  }
}
