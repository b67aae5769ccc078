package ringbook.figures;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Unit;

/** Error of the object's size over the length of the bars, for one bar and for all. */
final class BarChart {

  private static final String LENGTH = "kit.barLength";

  private final Reckoning reckoning;
  private final Readings readings;

  private BarChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new BarChart(reckoning).model();
  }

  private ChartModel model() {
    double bar = readings.si(LENGTH);
    double longest = Math.max(2 * bar, Math.min(1.2 * readings.si("scale.longest"), 4 * bar));
    Unit unit = longest > 0.02 ? readings.lengths().axis(longest > 2) : Unit.MILLIMETRE;
    Axis across = Ticks.fromZero("length of a bar, " + unit.symbol(), unit.fromSi(longest));
    double here = Unit.MILLIMETRE.fromSi(readings.si("scale.carriedOne"));
    double tolerance = Unit.MILLIMETRE.fromSi(readings.si("aim.tolerance"));
    double most = tolerance < 12 * here ? Math.max(4 * here, 1.25 * tolerance) : 4 * here;
    Axis up = Ticks.fromZero("error of the longest side, mm", most);
    ChartDraft chart = new ChartDraft(across, up);
    double[] all = {across.high() / 60, across.high()};
    boolean several = readings.si("kit.barCount") > 1;
    DoubleUnaryOperator one = x -> error(unit.toSi(x), "scale.carriedOne");
    DoubleUnaryOperator every = x -> error(unit.toSi(x), "scale.carried");
    chart.curve("one bar", Stroke.solid(Ink.ACCENT, 2.6), 0.9, all, one);
    mark(chart, unit.fromSi(bar), "scale.carriedOne", Shape.DOT, Ink.ACCENT);
    if (several) {
      String name = readings.text("kit.barCount") + " bars";
      chart.curve(name, Stroke.dashed(Ink.SECOND, 2.6, "8 4"), 0.4, all, every);
      mark(chart, unit.fromSi(bar), "scale.carried", Shape.SQUARE, Ink.SECOND);
    }
    chart.rule(
        Along.UP,
        tolerance,
        "tolerance " + readings.text("aim.tolerance"),
        Stroke.dashed(Ink.INK, 1.4, "7 4"));
    for (String key :
        List.of(
            LENGTH,
            "kit.barCount",
            "scale.carriedOne",
            "scale.carried",
            "aim.tolerance",
            "scale.barNeeded")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
    return chart.model("Longer bars, truer size", description(), Readings.HEAD);
  }

  private double error(double metres, String key) {
    return Unit.MILLIMETRE.fromSi(Curve.with(reckoning, LENGTH, metres).si(key));
  }

  private void mark(ChartDraft chart, double x, String key, Shape shape, Ink ink) {
    double y = Unit.MILLIMETRE.fromSi(readings.si(key));
    chart.mark(x, y, readings.text(key), shape, ink);
  }

  private String description() {
    return "The error of the object's longest side falls as the bars get longer, steeply at first."
        + " With bars of "
        + readings.text(LENGTH)
        + " it is "
        + readings.text("scale.carriedOne")
        + " from one bar and "
        + readings.text("scale.carried")
        + " from all "
        + readings.text("kit.barCount")
        + ". The tolerance is "
        + readings.text("aim.tolerance")
        + "; it is reached with bars of "
        + readings.text("scale.barNeeded")
        + ".";
  }
}
