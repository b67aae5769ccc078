package ringbook.figures;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.optics.Lamp;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Unit;

/** How the light changes from one side of the object to the other: one lamp against two. */
final class LampChart {

  private final Reckoning reckoning;
  private final Readings readings;
  private final double lamp;
  private final double half;

  private LampChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    lamp = readings.si("place.lampDistance");
    half = readings.si("distance.turningWidth") / 2;
  }

  static ChartModel of(Reckoning reckoning) {
    return new LampChart(reckoning).model();
  }

  /** Stops above the middle, {@code metres} from it towards the lamp. */
  private double one(double metres) {
    return Num.log2(light(lamp - metres));
  }

  private double two(double metres) {
    return Num.log2((light(lamp - metres) + light(lamp + metres)) / 2);
  }

  private double light(double distance) {
    return Lamp.illuminanceLux(1, Length.ofMetres(lamp), Length.ofMetres(distance));
  }

  private ChartModel model() {
    readings.si("light.lampSpread");
    boolean metres = half > 1;
    Unit unit = half > 0.02 ? readings.lengths().axis(metres) : Unit.MILLIMETRE;
    double side = unit.fromSi(half);
    double step = Ticks.step(side / 3);
    double end = step * Math.ceil(side / step - 1e-9);
    Axis across =
        Ticks.between("from the middle towards the first lamp, " + unit.symbol(), -end, end, step);
    double high = Math.max(0.4, one(half)) * 1.12;
    double rise = Ticks.step(high / 4);
    Axis up =
        Ticks.between(
            "brighter than the middle, stops",
            -rise * Math.ceil(high / rise),
            rise * Math.ceil(high / rise),
            rise);
    ChartDraft chart = new ChartDraft(across, up);
    DoubleUnaryOperator single = x -> one(unit.toSi(x));
    DoubleUnaryOperator pair = x -> two(unit.toSi(x));
    double[] object = {-side, side};
    chart.rule(Along.UP, 0, "", Stroke.dashed(Ink.INK, 1, "2 3"));
    chart.rule(Along.ACROSS, -side, "far side", Stroke.solid(Ink.FAINT, 1));
    chart.rule(Along.ACROSS, side, "near side", Stroke.solid(Ink.FAINT, 1));
    chart.curve("one lamp", Stroke.solid(Ink.ACCENT, 2.6), 0.75, object, single);
    chart.curve("two lamps", Stroke.dashed(Ink.SECOND, 2.6, "8 4"), 0.25, object, pair);
    for (double at : object) {
      chart.mark(at, single.applyAsDouble(at), "", Shape.DOT, Ink.ACCENT);
      chart.mark(at, pair.applyAsDouble(at), "", Shape.SQUARE, Ink.SECOND);
    }
    for (String key :
        List.of(
            "place.lampDistance",
            "distance.turningWidth",
            "light.lampSpread",
            "light.farShare",
            "light.pairSpread",
            "light.evenDistance")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
    return chart.model("One lamp and two", description(), Readings.HEAD);
  }

  private String description() {
    return "Brightness across the object, which is "
        + readings.text("distance.turningWidth")
        + " wide. With one lamp "
        + readings.text("place.lampDistance")
        + " from the middle the curve rises steadily towards the lamp: the two sides are "
        + readings.text("light.lampSpread")
        + " apart. With two lamps on opposite sides it is nearly flat: the sides are only "
        + readings.text("light.pairSpread")
        + " brighter than the middle.";
  }
}
