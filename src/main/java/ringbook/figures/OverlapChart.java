package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Unit;

/** What two neighbours both see, and what of it can be matched, over the turn between them. */
final class OverlapChart {

  private static final String TURN = "ring.realStep";
  private static final double FIVE = 72;

  private final Reckoning reckoning;
  private final Readings readings;

  private OverlapChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new OverlapChart(reckoning).model();
  }

  private Curve at(double degrees) {
    return Curve.with(reckoning, TURN, Unit.DEGREE.toSi(degrees));
  }

  private double percent(double degrees, String key) {
    return 100 * at(degrees).si(key);
  }

  private ChartModel model() {
    Axis across = Ticks.between("turn from one photograph to the next, degrees", 0, 130, 10);
    Axis up = Ticks.between("share, %", 0, 100, 20);
    ChartDraft chart = new ChartDraft(across, up);
    double[] all = {0, 130};
    chart.curve(
        "both could see it",
        Stroke.dashed(Ink.SECOND, 2.5, "8 4"),
        0.45,
        all,
        x -> percent(x, "pair.shared"));
    chart.curve(
        "can be matched",
        Stroke.solid(Ink.ACCENT, 2.8),
        0.2,
        all,
        x -> percent(x, "pair.matchable"));
    double step = Unit.DEGREE.fromSi(readings.si(TURN));
    turn(chart, step, "this ring " + readings.text(TURN));
    if (Math.abs(step - FIVE) > 0.5) {
      turn(chart, FIVE, "5 photographs " + at(FIVE).text(TURN));
    }
    for (double degrees : new double[] {5, 10, 15, 20, 30, 45, FIVE, 90, 120}) {
      row(chart, degrees);
    }
    chart.row(
        readings.text(TURN) + " (this ring)",
        readings.text("pair.shared"),
        readings.text("pair.alike"),
        readings.text("pair.matchable"));
    return chart.model(
        "What neighbours share over the turn",
        description(),
        List.of("Turn", name("pair.shared"), name("pair.alike"), name("pair.matchable")));
  }

  private String name(String key) {
    return Sentence.capital(reckoning.ledger().get(key).name());
  }

  private void turn(ChartDraft chart, double degrees, String text) {
    chart.rule(Along.ACROSS, degrees, text, Stroke.solid(Ink.FAINT, 1.2));
    chart.mark(
        degrees,
        percent(degrees, "pair.shared"),
        at(degrees).text("pair.shared"),
        Shape.SQUARE,
        Ink.SECOND);
    chart.mark(
        degrees,
        percent(degrees, "pair.matchable"),
        at(degrees).text("pair.matchable"),
        Shape.DOT,
        Ink.ACCENT);
  }

  private void row(ChartDraft chart, double degrees) {
    Curve there = at(degrees);
    chart.row(
        there.text(TURN),
        there.text("pair.shared"),
        there.text("pair.alike"),
        there.text("pair.matchable"));
  }

  private String description() {
    Curve five = at(FIVE);
    return "Two curves fall as the turn grows. The upper one is the surface that both neighbours"
        + " could see: "
        + readings.text("pair.shared")
        + " at this ring's turn of "
        + readings.text(TURN)
        + ", "
        + five.text("pair.shared")
        + " at "
        + five.text(TURN)
        + ", the turn of 5 photographs. The lower one is what of it still looks alike and can be"
        + " matched: "
        + readings.text("pair.matchable")
        + " and "
        + five.text("pair.matchable")
        + ".";
  }
}
