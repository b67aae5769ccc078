package ringbook.figures;

import java.util.List;
import ringbook.assess.HoleView;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** What is in sight of a hole's wall and floor, over the angle from its axis. */
final class HoleChart {

  private static final int[] ROWS = {5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80};

  private final Reckoning reckoning;
  private final Readings readings;
  private final HoleView hole;
  private final Length depth;

  private HoleChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    depth = new Length(readings.si("subject.holeDepth"));
    hole = new HoleView(new Length(readings.si("subject.holeDiameter")), depth);
  }

  static ChartModel of(Reckoning reckoning) {
    return new HoleChart(reckoning).model();
  }

  private static Angle angle(double degrees) {
    return new Angle(Unit.DEGREE.toSi(degrees));
  }

  private double wall(double degrees) {
    return 100 * hole.wallSeen(angle(degrees)).over(depth);
  }

  private double floor(double degrees) {
    return 100 * hole.floorShare(angle(degrees));
  }

  private ChartModel model() {
    double best = Unit.DEGREE.fromSi(readings.si("hole.bestAngle"));
    double ring = Unit.DEGREE.fromSi(readings.si("hole.ringAngle"));
    Axis across = Ticks.between("angle from the axis of the hole, degrees", 0, 90, 10);
    Axis up = Ticks.between("in sight, %", 0, 100, 20);
    ChartDraft chart = new ChartDraft(across, up);
    chart.band(best, 90, "wall no more slanted than " + readings.text("aim.incidenceLimit"));
    chart.curve(
        "far wall", Stroke.solid(Ink.ACCENT, 2.8), 0.75, new double[] {0.5, 89.5}, this::wall);
    chart.curve(
        "floor", Stroke.dashed(Ink.SECOND, 2.5, "8 4"), 0.2, new double[] {0, 89.5}, this::floor);
    chart.mark(best, wall(best), readings.text("hole.wallShare"), Shape.DOT, Ink.ACCENT);
    chart.mark(best, floor(best), readings.text("hole.floorShare"), Shape.SQUARE, Ink.SECOND);
    chart.rule(Along.ACROSS, ring, "this ring", Stroke.solid(Ink.FAINT, 1.4));
    for (int degrees : ROWS) {
      row(chart, degrees + "°", percent(wall(degrees)), percent(floor(degrees)));
    }
    row(
        chart,
        readings.text("hole.bestAngle")
            + " (best for the wall; this ring: "
            + readings.text("hole.ringAngle")
            + ")",
        readings.text("hole.wallShare"),
        readings.text("hole.floorShare"));
    row(chart, name("hole.wallShare"), readings.text("hole.wallShare"), "");
    return chart.model(
        "Wall and floor of a hole in sight",
        description(),
        List.of("Angle from the axis", "Far wall in sight", name("hole.floorShare")));
  }

  private static void row(ChartDraft chart, String angle, String wall, String floor) {
    chart.row(angle, wall, floor);
  }

  private static String percent(double value) {
    return Numbers.fixed(value, 0) + "\u00a0%";
  }

  private String name(String key) {
    return Sentence.capital(reckoning.ledger().get(key).name());
  }

  private String description() {
    return "Two curves over the angle from the axis of a hole that is "
        + readings.text("subject.holeDiameter")
        + " across and "
        + readings.text("subject.holeDepth")
        + " deep. Straight in, all of the floor is in sight and the wall only along its surface."
        + " Farther to the side the floor goes out of sight and the far wall is seen less and less"
        + " deep. At "
        + readings.text("hole.bestAngle")
        + ", where the wall is seen just well enough, it is seen over "
        + readings.text("hole.wallShare")
        + " of its depth, and "
        + readings.text("hole.floorShare")
        + " of the floor.";
  }
}
