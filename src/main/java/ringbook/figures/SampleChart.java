package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;

/** The chance that a sample shows a bad photograph, over the size of the sample. */
final class SampleChart {

  private static final double WANTED = 95;

  private final Reckoning reckoning;
  private final Readings readings;

  private SampleChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new SampleChart(reckoning).model();
  }

  private ChartModel model() {
    double sample = readings.si("check.sample");
    Axis across = Ticks.fromZero("photographs looked at closely", Math.max(6, 1.6 * sample));
    Axis up = Ticks.between("chance to meet a bad one, %", 0, 100, 20);
    ChartDraft chart = new ChartDraft(across, up);
    double[] all = {0, across.high()};
    double spare = readings.si("aim.spare");
    Stroke first = Stroke.solid(Ink.ACCENT, 2.6);
    Stroke second = Stroke.dashed(Ink.SECOND, 2.6, "8 4");
    chart.curve("as many bad as spare", first, 0.16, all, x -> chance(x, spare));
    chart.curve("half as many", second, 0.5, all, x -> chance(x, spare / 2));
    Stroke wanted = Stroke.dashed(Ink.INK, 1.4, "7 4");
    chart.rule(Along.UP, WANTED, "19 times out of 20", wanted);
    String text = readings.text("check.sample") + " photographs";
    chart.mark(sample, chance(sample, spare), text, Shape.DOT, Ink.ACCENT);
    for (String key : List.of("job.photos", "aim.spare", "check.sample", "check.chance")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
    return chart.model("How many to look at", description(), Readings.HEAD);
  }

  private double chance(double photographs, double spare) {
    Curve there = Curve.with(reckoning, "check.sample", photographs).and("aim.spare", spare);
    return 100 * there.si("check.chance");
  }

  private String description() {
    return "Two curves rise quickly and then flatten. If as many photographs are bad as there are"
        + " spare ones ("
        + readings.text("aim.spare")
        + " on top), "
        + readings.text("check.sample")
        + " of "
        + readings.text("job.photos")
        + " show at least one of them with a chance of "
        + readings.text("check.chance")
        + ". If half as many are bad, the curve rises more slowly.";
  }
}
