package ringbook.figures;

import java.util.List;
import ringbook.assess.Standing;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Lengths;
import ringbook.units.Num;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** The room that an object of this form needs, over its longest side: which sizes fit at all. */
final class SizeRoom {

  private static final double LARGER = 2.5;

  private final Reckoning reckoning;
  private final Readings readings;
  private final double longest;
  private final Lengths lengths;

  private SizeRoom(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    longest = readings.si("scale.longest");
    lengths = reckoning.scene().aim().lengths();
  }

  static ChartModel of(Reckoning reckoning) {
    return new SizeRoom(reckoning).model();
  }

  /** Metres from the middle of an object of this form and another size. */
  private double room(double size) {
    double times = size / longest;
    return Curve.with(reckoning, "subject.height", times * readings.si("subject.height"))
        .and("distance.turningWidth", times * readings.si("distance.turningWidth"))
        .si("room.standing");
  }

  private ChartModel model() {
    double nearest = Standing.nearestMetres(reckoning.scene().place());
    boolean walls = nearest < 1e3;
    Unit near = lengths.axis(false);
    Unit far = lengths.axis(true);
    Axis across =
        Ticks.fromZero(
            "longest side of the object, " + near.symbol(), near.fromSi(LARGER * longest));
    double most = Math.max(room(near.toSi(across.high())), walls ? nearest : 0);
    Axis up = Ticks.fromZero("room from its middle, " + far.symbol(), far.fromSi(most) * 1.05);
    ChartDraft chart = new ChartDraft(across, up);
    chart.curve(
        "",
        Stroke.solid(Ink.ACCENT, 2.5),
        1,
        new double[] {across.high() / 100, across.high()},
        x -> far.fromSi(room(near.toSi(x))));
    double needed = readings.si("room.standing");
    String name = "here: " + readings.text("room.standing");
    chart.mark(near.fromSi(longest), far.fromSi(needed), name, Shape.DOT, Ink.ACCENT);
    row(chart, "scale.longest");
    row(chart, "room.standing");
    String free = "";
    if (walls) {
      free = metres(nearest);
      chart.rule(
          Along.UP,
          far.fromSi(nearest),
          "nearest thing: " + free,
          Stroke.dashed(Ink.SECOND, 1.4, "6 4"));
      chart.row("Nearest wall or piece of furniture", free);
    }
    double smallest = smallest();
    if (smallest > 0) {
      String told = "too small for this lens below " + closely(smallest);
      chart.rule(Along.ACROSS, near.fromSi(smallest), told, Stroke.dashed(Ink.INK, 1.2, "2 3"));
      chart.row("Smallest that fills the frame", closely(smallest));
    }
    return chart.model(
        "Which sizes fit the room", description(walls, free), List.of("Quantity", "Value"));
  }

  /** Longest side of an object of this form that just fills the frame at the closest focus. */
  private double smallest() {
    if (!readings.known("fitness.smallestAcross") || !readings.known("fitness.smallestUp")) {
      return 0;
    }
    double across = readings.si("fitness.smallestAcross") / readings.si("distance.turningWidth");
    double up = readings.si("fitness.smallestUp") / readings.si("subject.height");
    return longest * Math.min(across, up);
  }

  private void row(ChartDraft chart, String key) {
    chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
  }

  private String metres(double metres) {
    return reckoning.ledger().get("room.standing").text(metres);
  }

  private String closely(double metres) {
    if (lengths == Lengths.IMPERIAL) {
      return lengths.closely(metres, 1);
    }
    double shown = Num.round(Unit.CENTIMETRE.fromSi(metres) * 10) / 10;
    return Numbers.trimmed(Numbers.fixed(shown, 1)) + "\u00a0cm";
  }

  private String description(boolean walls, String free) {
    return "The room that must be free, measured from the middle of the object, grows with the size"
        + " of the object. For "
        + readings.text("scale.longest")
        + " it is "
        + readings.text("room.standing")
        + ". "
        + (walls
            ? "The nearest wall or piece of furniture is at " + free + "."
            : "No wall is near.");
  }
}
