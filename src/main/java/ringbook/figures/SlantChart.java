package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Unit;

/** How slanted a wall and a level top are seen, over the elevation of the ring. */
final class SlantChart {

  private static final String ELEVATION = "aim.elevation";
  private static final int MOST_ROWS = 12;

  private final Reckoning reckoning;
  private final Readings readings;

  private SlantChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new SlantChart(reckoning).model();
  }

  private double slant(double degrees, String key) {
    Curve there = Curve.with(reckoning, ELEVATION, Unit.DEGREE.toSi(degrees));
    return Unit.DEGREE.fromSi(there.si(key));
  }

  private double degrees(String key) {
    return Unit.DEGREE.fromSi(readings.si(key));
  }

  private ChartModel model() {
    double low = degrees("rings.lowest");
    double high = degrees("rings.highest");
    double left = Math.min(-30, 10 * Math.floor(low / 10));
    Axis across = Ticks.between("elevation of the ring, degrees", left, 90, left < -60 ? 20 : 10);
    Axis up = Ticks.between("slant of the view, degrees", 0, 90, 10);
    ChartDraft chart = new ChartDraft(across, up);
    chart.band(low, high, "the rings");
    Stroke wall = Stroke.dashed(Ink.SECOND, 2.5, "8 4");
    chart.curve("", wall, 0.5, new double[] {left, 0}, x -> slant(x, "ring.wallSlant"));
    chart.curve("upright wall", wall, 0.8, new double[] {0, 90}, x -> slant(x, "ring.wallSlant"));
    Stroke top = Stroke.solid(Ink.ACCENT, 2.8);
    chart.curve("level top", top, 0.12, new double[] {0, 90}, x -> slant(x, "ring.topSlant"));
    chart.rule(
        Along.UP,
        degrees("aim.incidenceLimit"),
        "most slanted that counts, " + readings.text("aim.incidenceLimit"),
        Stroke.solid(Ink.FAINT, 1.4));
    if (high > 0) {
      chart.mark(
          high,
          slant(high, "ring.topSlant"),
          readings.text("rings.topSlant"),
          Shape.DOT,
          Ink.ACCENT);
    }
    rows(chart);
    return chart.model(
        "How slanted wall and top are seen",
        description(),
        List.of("Elevation", name("ring.wallSlant"), name("ring.topSlant")));
  }

  private void rows(ChartDraft chart) {
    int count = (int) readings.si("rings.count");
    int every = Thinning.every(count, MOST_ROWS);
    for (int ring = 0; ring < count; ring += every) {
      double elevation = readings.si("rings.lowest") + ring * readings.si("rings.spacing");
      Curve there = Curve.with(reckoning, ELEVATION, elevation);
      String elevated = reckoning.ledger().get("rings.lowest").text(elevation);
      row(chart, "ring " + (ring + 1) + ", " + elevated, there);
    }
    row(
        chart,
        readings.text(ELEVATION) + " (the one ring)",
        Curve.with(reckoning, ELEVATION, readings.si(ELEVATION)));
  }

  private static void row(ChartDraft chart, String name, Curve there) {
    boolean seen = there.si("ring.topSlant") < Math.PI / 2;
    chart.row(name, there.text("ring.wallSlant"), seen ? there.text("ring.topSlant") : "not seen");
  }

  private String name(String key) {
    return Sentence.capital(reckoning.ledger().get(key).name());
  }

  private String description() {
    return "Two lines over the elevation. The upright wall is seen squarely from a level ring and"
        + " ever more slanted the higher or lower the ring lies. The level top is not seen at all"
        + " from a level ring; at "
        + readings.text("rings.highest")
        + ", the highest ring, its slant is "
        + readings.text("rings.topSlant")
        + ", against a limit of "
        + readings.text("aim.incidenceLimit")
        + ". No single ring sees both squarely.";
  }
}
