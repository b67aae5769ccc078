package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.optics.Filter;
import ringbook.units.Angle;
import ringbook.units.Numbers;

/** What two polarising filters let through as one of them is turned: the glint and the surface. */
final class PolariserChart {

  private static final double CROSSED = 90;
  private static final double HALF = 50;

  private final Reckoning reckoning;
  private final Readings readings;

  private PolariserChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new PolariserChart(reckoning).model();
  }

  private static double glint(double degrees) {
    return 100 * Filter.malus(Angle.ofDegrees(degrees));
  }

  private ChartModel model() {
    Axis across = Ticks.between("turn of the filter on the lens, degrees", 0, CROSSED, 15);
    Axis up = Ticks.between("light let through, %", 0, 100, 20);
    ChartDraft chart = new ChartDraft(across, up);
    double[] all = {0, CROSSED};
    double limit = CROSSED - new Angle(readings.si("light.crossingLimit")).degrees();
    chart.curve("the glint", Stroke.solid(Ink.ACCENT, 2.6), 0.3, all, PolariserChart::glint);
    chart.curve("the surface", Stroke.dashed(Ink.SECOND, 2.6, "8 4"), 0.75, all, degrees -> HALF);
    chart.rule(
        Along.ACROSS,
        limit,
        "within " + readings.text("light.crossingLimit"),
        Stroke.dashed(Ink.INK, 1.2, "2 3"));
    chart.mark(CROSSED, glint(CROSSED), "crossed", Shape.DOT, Ink.ACCENT);
    for (double degrees : new double[] {0, 15, 30, 45, 60, 75, 90}) {
      chart.row(
          Numbers.fixed(degrees, 0) + "° of turn",
          Numbers.fixed(glint(degrees), 1) + "\u00a0% of the glint");
    }
    for (String key :
        List.of(
            "light.polariserShare", "light.crossedStops", "light.crossingLimit", "light.glint")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
    return chart.model("Two filters turned against each other", description(), Readings.HEAD);
  }

  private String description() {
    return "One filter is before the lamp, one before the lens. As the second is turned, the light"
        + " of the glint falls to half at 45° and to nothing at 90°, where the filters are"
        + " crossed; the light of the surface itself stays at half of what ideal filters"
        + " could let through. Within "
        + readings.text("light.crossingLimit")
        + " of crossed no more than one percent of the glint is left. Real filters cost "
        + readings.text("light.crossedStops")
        + " of the light together.";
  }
}
