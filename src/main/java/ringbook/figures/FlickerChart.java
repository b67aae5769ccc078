package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Axis;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;

/**
 * The pulsing light of lamps with the time that the shutter is open, once at its luckiest and once
 * at its unluckiest moment.
 */
final class FlickerChart {

  private static final double LONGEST_IN_PULSES = 10;

  /** The curve is drawn in so many pieces, so that its crests stay round. */
  private static final int PIECES = 4;

  private final Reckoning reckoning;
  private final Readings readings;
  private final double pulse;
  private final double open;
  private final double share;

  private FlickerChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    pulse = readings.si("flicker.shortest");
    open = readings.si("motion.time");
    share = readings.si("place.flickerShare");
  }

  static ChartModel of(Reckoning reckoning) {
    return new FlickerChart(reckoning).model();
  }

  private double light(double seconds) {
    return 100 * (1 + share * Num.sin(2 * Math.PI * seconds / pulse));
  }

  /** The middle of the brightest exposure: a crest, early enough that it begins on the axis. */
  private double crest() {
    return pulse * (Math.ceil(open / 2 / pulse) + 0.25);
  }

  /** The middle of the darkest exposure: the first trough after the other window has closed. */
  private double trough() {
    double after = crest() + open + 0.4 * pulse;
    return pulse * (Math.ceil(after / pulse - 0.75) + 0.75);
  }

  private ChartModel model() {
    Axis across = Ticks.fromZero("time, milliseconds", 1000 * end());
    Axis up = Ticks.between("light of the lamps, % of its mean", 0, 220, 50);
    ChartDraft chart = new ChartDraft(across, up);
    if (isLong()) {
      chart.band(0, across.high(), "open all this time, and longer");
    } else {
      window(chart, crest(), "brightest");
      window(chart, trough(), "darkest");
    }
    for (int i = 0; i < PIECES; i++) {
      double[] piece = {across.high() * i / PIECES, across.high() * (i + 1) / PIECES};
      chart.curve("", Stroke.solid(Ink.ACCENT, 2.4), 0.5, piece, x -> light(x / 1000));
    }
    for (String key :
        List.of(
            "flicker.pulses",
            "place.flickerShare",
            "motion.time",
            "flicker.during",
            "flicker.left",
            "flicker.swing",
            "flicker.swingStops",
            "flicker.steady",
            "flicker.shortest",
            "flicker.time")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
    return chart.model("The shutter and the pulse of the lamps", description(), Readings.HEAD);
  }

  private boolean isLong() {
    return open > LONGEST_IN_PULSES / 2 * pulse;
  }

  private double end() {
    return isLong() ? LONGEST_IN_PULSES * pulse : trough() + open / 2 + pulse / 2;
  }

  private void window(ChartDraft chart, double middle, String name) {
    chart.band(1000 * (middle - open / 2), 1000 * (middle + open / 2), name);
  }

  private String description() {
    return "The light of the lamps goes up and down "
        + readings.text("flicker.pulses")
        + ". The shutter is open for "
        + readings.text("motion.time")
        + (isLong()
            ? ", longer than the whole drawing, so that many pulses are averaged."
            : ", shown as a band round a crest and as one round a trough.")
        + " The brightest photograph gets "
        + readings.text("flicker.swing")
        + " times the light of the darkest. A time of whole pulses, such as "
        + readings.text("flicker.shortest")
        + ", catches the same light each time.";
  }
}
