package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Unit;

/** How much of the object falls on one pixel, over the distance from the lens. */
final class SamplingChart {

  private static final String NEAR = "distance.standoff";

  private final Reckoning reckoning;
  private final Readings readings;

  private SamplingChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new SamplingChart(reckoning).model();
  }

  /** Where the sampling is just as wanted. */
  private double reach() {
    return readings.si("distance.largest") + readings.si("distance.turningWidth");
  }

  private ChartModel model() {
    double far = readings.si("distance.far");
    boolean known = readings.known("distance.largest");
    double longest = far * 1.25;
    if (known && reach() < 3 * far) {
      longest = Math.max(longest, reach() * 1.08);
    }
    boolean metres = longest > 3;
    Unit unit = readings.lengths().axis(metres);
    double wanted = Unit.MILLIMETRE.fromSi(readings.si("distance.samplingWanted"));
    double coarsest = Unit.MILLIMETRE.fromSi(sampling(longest));
    Axis across = Ticks.fromZero("distance from the lens, " + unit.symbol(), unit.fromSi(longest));
    double most = wanted > 4 * coarsest ? coarsest : Math.max(coarsest, wanted);
    Axis up = Ticks.fromZero("on the object, mm per pixel", most * 1.05);
    ChartDraft chart = new ChartDraft(across, up);
    double from = unit.fromSi(readings.si("kit.focalLength"));
    chart.curve(
        "",
        Stroke.solid(Ink.ACCENT, 2.5),
        1,
        new double[] {from, across.high()},
        x -> Unit.MILLIMETRE.fromSi(sampling(unit.toSi(x))));
    chart.rule(
        Along.UP,
        wanted,
        "wanted: at most " + readings.text("distance.samplingWanted"),
        Stroke.dashed(Ink.INK, 1.4, "7 4"));
    face(chart, unit, "near face", NEAR, "distance.samplingNear");
    face(chart, unit, "middle", "distance.middle", "distance.samplingMiddle");
    face(chart, unit, "far face", "distance.far", "distance.samplingFar");
    if (known) {
      chart.rule(
          Along.ACROSS,
          unit.fromSi(reach()),
          "far face at the largest standoff",
          Stroke.dashed(Ink.SECOND, 1.4, "2 3"));
    }
    table(chart);
    return chart.model(
        "Size of a pixel on the object", description(), List.of("Quantity", "Value"));
  }

  private double sampling(double metres) {
    return Curve.with(reckoning, NEAR, metres).si("distance.samplingNear");
  }

  private void face(ChartDraft chart, Unit unit, String name, String distance, String sampling) {
    chart.mark(
        unit.fromSi(readings.si(distance)),
        Unit.MILLIMETRE.fromSi(readings.si(sampling)),
        name + " " + readings.text(sampling),
        Shape.DOT,
        Ink.ACCENT);
  }

  private void table(ChartDraft chart) {
    for (String key :
        List.of(
            NEAR,
            "distance.samplingNear",
            "distance.middle",
            "distance.samplingMiddle",
            "distance.far",
            "distance.samplingFar",
            "distance.samplingWanted",
            "distance.largest")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
  }

  private String description() {
    return "The length on the object that falls on one pixel grows evenly with the distance: "
        + readings.text("distance.samplingNear")
        + " at the near face, "
        + readings.text(NEAR)
        + " from the lens, "
        + readings.text("distance.samplingMiddle")
        + " at the middle and "
        + readings.text("distance.samplingFar")
        + " at the far face. Wanted is at most "
        + readings.text("distance.samplingWanted")
        + (readings.yes("distance.fine")
            ? ", which even the far face keeps."
            : ", which the far face does not keep.")
        + (readings.known("distance.largest")
            ? " The largest standoff that keeps it is " + readings.text("distance.largest") + "."
            : " " + readings.text("distance.largest"));
  }
}
