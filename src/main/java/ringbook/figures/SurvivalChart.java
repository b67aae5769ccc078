package ringbook.figures;

import java.util.List;
import ringbook.assess.TurnSurvival;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Angle;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * How matches die with the turn: counts measured on real photographs against the ledger's model.
 * Each measured set is scaled as a whole to the model, by least squares, so that only the fall is
 * compared: how many matches there are to begin with is a matter of texture and pixels.
 */
final class SurvivalChart {

  private static final String TURN = "ring.realStep";
  private static final double LAST = 90;
  private static final Angle FAST = Angle.ofDegrees(16);
  private static final Angle SLOW = Angle.ofDegrees(23);

  private static final List<Shape> SHAPES =
      List.of(Shape.RING, Shape.SQUARE, Shape.TRIANGLE, Shape.CROSS, Shape.DIAMOND);

  private final Reckoning reckoning;
  private final Readings readings;

  private SurvivalChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
  }

  static ChartModel of(Reckoning reckoning) {
    return new SurvivalChart(reckoning).model();
  }

  private double model(Angle turn, Angle decay) {
    return Curve.with(reckoning, TURN, turn.radians())
        .and("aim.decay", decay.radians())
        .si("pair.matchable");
  }

  private double modelPercent(double degrees, Angle decay) {
    return 100 * model(Angle.ofDegrees(degrees), decay);
  }

  private Angle decay() {
    return new Angle(readings.si("aim.decay"));
  }

  private ChartModel model() {
    Axis across = Ticks.between("turn between two photographs, degrees", 0, LAST, 10);
    Axis up = Ticks.between("matches left, %", 0, 100, 20);
    ChartDraft chart = new ChartDraft(across, up);
    double[] all = {0, LAST};
    Stroke thin = Stroke.dashed(Ink.FAINT, 1.4, "4 3");
    chart.curve("", thin, 0, all, x -> modelPercent(x, FAST));
    chart.curve("", thin, 0, all, x -> modelPercent(x, SLOW));
    chart.curve(
        "this course's model, decay " + readings.text("aim.decay"),
        Stroke.solid(Ink.ACCENT, 2.8),
        0.12,
        all,
        x -> modelPercent(x, decay()));
    for (int i = 0; i < TurnSurvival.ALL.size(); i++) {
      measured(chart, TurnSurvival.ALL.get(i), SHAPES.get(i));
      chart.key(31, 84 - 7 * i, TurnSurvival.ALL.get(i).name(), SHAPES.get(i));
    }
    chart.note(30, 91, "measured, each set scaled as a whole:");
    chart.note(30, 84 - 7 * TurnSurvival.ALL.size(), "thin curves: models with decay " + fits());
    return chart.model(
        "Matches that survive the turn",
        description(),
        List.of("Measured on", "Turn", "Matches counted", "Share on the model's scale", "Model"));
  }

  private void measured(ChartDraft chart, TurnSurvival set, Shape shape) {
    double scale = scale(set);
    for (TurnSurvival.Row row : set.rows()) {
      if (row.tied() < TurnSurvival.CHANCE) {
        continue;
      }
      double share = 100 * scale * row.tied();
      chart.mark(row.turn().degrees(), share, "", shape, Ink.INK);
      chart.row(
          set.name(),
          reckoning.ledger().get(TURN).text(row.turn().radians()),
          Numbers.significant(row.tied(), 4),
          Numbers.fixed(share, 0) + "\u00a0" + Unit.PERCENT.symbol(),
          reckoning.ledger().get("pair.matchable").text(model(row.turn(), decay())));
    }
  }

  /** The factor on the counts above chance that brings them nearest to the model. */
  private double scale(TurnSurvival set) {
    double both = 0;
    double counts = 0;
    for (TurnSurvival.Row row : set.rows()) {
      if (row.tied() >= TurnSurvival.CHANCE) {
        both += row.tied() * model(row.turn(), decay());
        counts += row.tied() * row.tied();
      }
    }
    return counts == 0 ? 0 : both / counts;
  }

  private String description() {
    return "Marks are measured: matches counted between photographs of "
        + TurnSurvival.ALL.size()
        + " published picture sets, each set scaled as a whole so that only the fall can be"
        + " compared; counts that chance can bring about are left out. Curves are the model. The"
        + " strong one has the decay used in this course, "
        + readings.text("aim.decay")
        + ": it leaves "
        + left(10)
        + " at a turn of 10°, "
        + left(20)
        + " at 20° and "
        + left(45)
        + " at 45°. The thin ones have decays of "
        + fits()
        + ", the lowest and highest that fit one of the sets. The marks fall in the same way whatever the object.";
  }

  private String fits() {
    Quantity decay = reckoning.ledger().get("aim.decay");
    return decay.text(FAST.radians()) + " and " + decay.text(SLOW.radians());
  }

  private String left(double degrees) {
    return reckoning.ledger().get("pair.matchable").text(model(Angle.ofDegrees(degrees), decay()));
  }
}
