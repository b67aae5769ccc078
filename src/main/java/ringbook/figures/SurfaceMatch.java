package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;

/** What the surface does to a match: five surfaces, each in two photographs a step apart. */
final class SurfaceMatch {

  private static final double WIDTH = 560;
  private static final double ROW = 82;
  private static final double TOP = 66;
  private static final double BALL = 31;
  private static final double FIRST = 54;
  private static final double SECOND = 170;
  private static final double WORDS = 226;
  private static final double TURN = 9;

  /** Spots on a ball, as shares of its radius. */
  private static final double[][] SPOTS = {
    {-0.55, -0.3}, {0.1, -0.65}, {0.35, 0.1}, {-0.2, 0.35}, {0.05, 0.75}, {-0.6, 0.25}
  };

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;

  private SurfaceMatch(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TOP + 4 * ROW + 56, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new SurfaceMatch(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    svg.text(Label.small("first photograph", new Point(FIRST, 18), Anchor.MIDDLE));
    svg.text(Label.small("second", new Point(SECOND, 18), Anchor.MIDDLE));
    textured(TOP);
    plain(TOP + ROW);
    glossy(TOP + 2 * ROW);
    clear(TOP + 3 * ROW);
    alike(TOP + 4 * ROW);
    readings.tabulate(
        "fitness.textured",
        "fitness.matt",
        "fitness.opaque",
        "fitness.distinct",
        "subject.alike",
        "fitness.stepAdvised");
    return readings.figure(svg, "What the surface does to a match", description());
  }

  private void balls(double y, String title, String first, String second) {
    svg.circle(new Point(FIRST, y), BALL, Stroke.OUTLINE, Fill.FAINT);
    svg.circle(new Point(SECOND, y), BALL, Stroke.OUTLINE, Fill.FAINT);
    svg.text(Label.of(title, new Point(WORDS, y - 12), Anchor.START).bold());
    svg.text(Label.of(first, new Point(WORDS, y + 8), Anchor.START));
    svg.text(Label.of(second, new Point(WORDS, y + 26), Anchor.START));
  }

  private static Point on(double middle, double y, double[] spot) {
    return new Point(middle + spot[0] * BALL, y + spot[1] * BALL);
  }

  private void textured(double y) {
    balls(y, "Textured", "The specks move with the surface.", "Each is found again: matches.");
    for (double[] spot : SPOTS) {
      svg.line(on(FIRST, y, spot), on(SECOND, y, spot).plus(TURN, 0), Stroke.solid(Ink.ACCENT, 1));
    }
    for (double[] spot : SPOTS) {
      svg.dot(on(FIRST, y, spot), 3, Fill.TEXT);
      svg.dot(on(SECOND, y, spot).plus(TURN, 0), 3, Fill.TEXT);
    }
  }

  private void plain(double y) {
    balls(y, "Plain", "Nothing differs from the next place.", "Nothing can be found again.");
  }

  private void glossy(double y) {
    balls(
        y,
        "Glossy",
        "The bright patch stays with the lamp,",
        "not with the surface: a false match.");
    Point from = new Point(FIRST - 9, y - 11);
    Point to = new Point(SECOND - 9, y - 11);
    svg.line(from, to, Stroke.dashed(Ink.SECOND, 1.4, "5 4"));
    for (Point patch : List.of(from, to)) {
      svg.circle(patch, 8, Stroke.solid(Ink.SECOND, 1.2), Fill.PAPER);
    }
  }

  private void clear(double y) {
    balls(y, "Clear", "You see what lies behind, bent.", "It moves against the surface.");
    for (double middle : new double[] {FIRST, SECOND}) {
      double shift = middle == FIRST ? -6 : 8;
      for (double x = -2 * 12; x <= 24; x += 12) {
        double reach = Math.sqrt(BALL * BALL - x * x);
        svg.line(
            new Point(middle + x + shift / 4, y - reach + 3),
            new Point(middle + x - shift / 4, y + reach - 3),
            Stroke.solid(Ink.FAINT, 3));
      }
    }
  }

  private void alike(double y) {
    balls(y, "Alike all round", "The same panel again and again.", "Matched, but one panel off.");
    for (double middle : new double[] {FIRST, SECOND}) {
      for (int panel = -1; panel <= 1; panel++) {
        double x = middle + BALL * 0.92 * Num.sin(panel * 0.75);
        svg.polygon(
            List.of(
                new Point(x, y - 9), new Point(x + 5, y), new Point(x, y + 9), new Point(x - 5, y)),
            Stroke.solid(Ink.INK, 1.2),
            Fill.PAPER);
      }
    }
    svg.line(
        new Point(FIRST + 5, y),
        new Point(SECOND - BALL * 0.92 * Num.sin(0.75) - 5, y),
        Stroke.dashed(Ink.SECOND, 1.4, "5 4"));
  }

  private String description() {
    return "Five balls, each in two photographs a step apart. Textured: specks move with the"
        + " surface and are joined by lines, they match. Plain: nothing to join. Glossy: the"
        + " highlight is at the same place in both, because it belongs to the lamp; a dashed"
        + " line shows the false match. Clear: stripes of the background, bent differently."
        + " Alike all round: a panel is matched with the next one. For the "
        + reckoning.scene().subject().name()
        + ": textured "
        + readings.text("fitness.textured")
        + ", free of shine "
        + readings.text("fitness.matt")
        + ", opaque "
        + readings.text("fitness.opaque")
        + ", different from every side "
        + readings.text("fitness.distinct")
        + ".";
  }
}
