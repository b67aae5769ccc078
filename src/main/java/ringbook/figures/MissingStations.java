package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.figures.SvgWriter.Sweep;
import ringbook.ledger.Reckoning;
import ringbook.units.Numbers;
import ringbook.units.Whole;

/** A ring with no, one and two photographs missing in a row, and what the gap costs. */
final class MissingStations {

  private static final double WIDTH = 560;
  private static final double PANEL = 184;
  private static final double RADIUS = 76;
  private static final double MIDDLE = 134;
  private static final double WIDEST = Math.PI / 2;
  private static final int MOST = 60;
  private static final String[] TITLES = {"none missing", "one missing", "two missing"};

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double step;

  private MissingStations(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    step = readings.si("ring.realStep");
    svg = new SvgWriter(WIDTH, 224, idPrefix);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new MissingStations(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    for (int missing = 0; missing < TITLES.length; missing++) {
      panel(missing);
      readings.row(
          "Turn and spots matched, " + TITLES[missing],
          turn(missing) + ", " + matched(missing) + ", " + verdict(missing));
    }
    readings.tabulate(
        "ring.realStep", "aim.stepLimit", "check.gapOne", "check.gapMatchable", "check.bearable");
    return readings.figure(svg, "What a missing photograph costs", description());
  }

  private void panel(int missing) {
    Point middle = new Point(WIDTH / 2 + (missing - 1) * PANEL, MIDDLE);
    svg.text(Label.of(TITLES[missing], new Point(middle.x(), 20), Anchor.MIDDLE).bold());
    double half = (missing + 1) * step / 2;
    if (half <= WIDEST) {
      for (int side = -1; side <= 1; side += 2) {
        Point lens = middle.towards(Math.PI / 2 + side * half, RADIUS);
        svg.line(middle, lens, Stroke.solid(Ink.ACCENT, 1.6));
      }
      Sweep sweep = new Sweep(Math.PI / 2 - half, Math.PI / 2 + half);
      svg.arc(middle, RADIUS * 0.55, sweep, Stroke.solid(Ink.INK, 1.4));
    }
    stations(middle, missing, half);
    svg.circle(middle, 15, Stroke.OUTLINE, Fill.FAINT);
    text(middle, 34, turn(missing) + ", " + verdict(missing));
    text(middle, 53, matched(missing) + " of the spots");
    text(middle, 70, "can be matched");
  }

  private void text(Point middle, double below, String words) {
    svg.text(Label.of(words, middle.plus(0, below), Anchor.MIDDLE));
  }

  /** All stations of the upper half; the ones in the gap are hollow. */
  private void stations(Point middle, int missing, double half) {
    double first = missing % 2 == 0 ? step / 2 : 0;
    for (int i = 0; i < MOST && first + i * step <= WIDEST + 1e-9; i++) {
      double away = first + i * step;
      Fill fill = away < half - 1e-9 ? Fill.PAPER : Fill.TEXT;
      station(middle, away, fill);
      if (away > 0) {
        station(middle, -away, fill);
      }
    }
  }

  private void station(Point middle, double away, Fill fill) {
    svg.circle(middle.towards(Math.PI / 2 + away, RADIUS), 4.2, Stroke.THIN, fill);
  }

  private Curve at(int missing) {
    return Curve.with(reckoning, "ring.realStep", (missing + 1) * step);
  }

  private String turn(int missing) {
    return at(missing).text("ring.realStep");
  }

  private String matched(int missing) {
    return at(missing).text("pair.matchable");
  }

  private String verdict(int missing) {
    boolean kept = Whole.atMost((missing + 1) * step, readings.si("aim.stepLimit"));
    return kept ? "within the limit" : "too much";
  }

  private String description() {
    StringBuilder told = new StringBuilder("Three parts of a ring from above. ");
    for (int missing = 0; missing < TITLES.length; missing++) {
      told.append(Sentence.capital(TITLES[missing]))
          .append(": the turn is ")
          .append(turn(missing))
          .append(", ")
          .append(verdict(missing))
          .append(", and ")
          .append(matched(missing))
          .append(" of the spots can be matched. ");
    }
    return told.append("The limit is ")
        .append(readings.text("aim.stepLimit"))
        .append(", which is ")
        .append(Numbers.significant(readings.si("aim.stepLimit") / step, 2))
        .append(" steps of this ring.")
        .toString();
  }
}
