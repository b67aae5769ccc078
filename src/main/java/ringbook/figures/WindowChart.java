package ringbook.figures;

import java.util.List;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Shape;
import ringbook.ledger.Reckoning;
import ringbook.units.Num;

/** Blur from depth and spread from the aperture over the f-number, and the window between them. */
final class WindowChart {

  private static final String SET = "sharp.fNumber";

  private final Reckoning reckoning;
  private final Readings readings;
  private final double open;
  private final double closed;
  private final double set;

  private WindowChart(Reckoning reckoning) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    open = readings.si("sharp.open");
    closed = readings.si("sharp.closed");
    set = readings.si(SET);
  }

  static ChartModel of(Reckoning reckoning) {
    return new WindowChart(reckoning).model();
  }

  private ChartModel model() {
    double widest = readings.si("kit.widest");
    double narrowest = readings.si("kit.narrowest");
    double low = Math.min(widest, Math.max(open, widest / 4)) / 1.3;
    double high = Math.max(narrowest, Math.min(closed, narrowest * 4)) * 1.3;
    double limit = Math.max(readings.si("aim.blurLimit"), readings.si("aim.diffractionLimit"));
    double spot = Math.max(at(set, "sharp.blurFarPixels"), at(set, "sharp.airyPixels"));
    Axis across = Ticks.stops("f-number", low, high);
    Axis up =
        Ticks.fromZero(
            "size of a point, pixels", Math.min(4 * limit, Math.max(2.6 * limit, spot * 1.2)));
    ChartDraft chart = new ChartDraft(across, up);
    window(chart);
    curves(chart, across);
    limits(chart);
    lens(chart, widest, narrowest);
    setting(chart);
    table(chart);
    return chart.model("The window of f-numbers", description(), List.of("Quantity", "Value"));
  }

  private double at(double fNumber, String key) {
    return Curve.with(reckoning, SET, fNumber).si(key);
  }

  private void window(ChartDraft chart) {
    if (open > closed) {
      double middle = Num.log2(Math.sqrt(open * closed));
      chart.band(middle, middle, "no window");
    } else {
      String words = readings.yes("sharp.window") ? "window" : "window, but not of this lens";
      chart.band(Num.log2(open), Num.log2(closed), words);
    }
  }

  private void curves(ChartDraft chart, Axis across) {
    double[] all = {across.low(), across.high()};
    chart.curve(
        "blur at the near and far end",
        Stroke.solid(Ink.ACCENT, 2.5),
        0,
        all,
        x -> at(Num.pow(2, x), "sharp.blurFarPixels"));
    chart.curve(
        "diffraction disc",
        Stroke.dashed(Ink.SECOND, 2.5, "8 4"),
        1,
        all,
        x -> at(Num.pow(2, x), "sharp.airyPixels"));
  }

  private void limits(ChartDraft chart) {
    double blur = readings.si("aim.blurLimit");
    double disc = readings.si("aim.diffractionLimit");
    Stroke pen = Stroke.dashed(Ink.INK, 1.2, "2 3");
    boolean same = Math.abs(blur - disc) < 1e-9;
    chart.rule(
        Along.UP, blur, (same ? "limits " : "blur limit ") + readings.text("aim.blurLimit"), pen);
    if (!same) {
      chart.rule(Along.UP, disc, "diffraction limit " + readings.text("aim.diffractionLimit"), pen);
    }
  }

  private void lens(ChartDraft chart, double widest, double narrowest) {
    Stroke pen = Stroke.solid(Ink.INK, 4);
    if (single()) {
      chart.rule(
          Along.ACROSS,
          Num.log2(widest),
          "the lens: only " + readings.text("kit.widest"),
          Stroke.solid(Ink.INK, 1.6));
      return;
    }
    String range =
        "the lens: " + readings.text("kit.widest") + " to " + readings.text("kit.narrowest");
    chart.curve(range, pen, 0.5, new double[] {Num.log2(widest), Num.log2(narrowest)}, x -> 0);
  }

  private void setting(ChartDraft chart) {
    double x = Num.log2(set);
    chart.mark(
        x,
        readings.si("sharp.blurFarPixels"),
        readings.text("sharp.blurFarPixels"),
        Shape.DOT,
        Ink.ACCENT);
    chart.mark(
        x,
        readings.si("sharp.airyPixels"),
        readings.text("sharp.airyPixels"),
        Shape.SQUARE,
        Ink.SECOND);
    if (!single()) {
      chart.rule(
          Along.ACROSS, x, "set " + readings.text(SET), Stroke.dashed(Ink.ACCENT, 1.2, "5 3"));
    }
  }

  private void table(ChartDraft chart) {
    for (String key :
        List.of(
            "sharp.open",
            "sharp.closed",
            "kit.widest",
            "kit.narrowest",
            "sharp.window",
            SET,
            "sharp.blurNearPixels",
            "sharp.blurFarPixels",
            "sharp.airyPixels",
            "aim.blurLimit",
            "aim.diffractionLimit")) {
      chart.row(Sentence.capital(reckoning.ledger().get(key).name()), readings.text(key));
    }
  }

  private String description() {
    return "Two curves over the f-number. Blur at the ends of the depth falls as the f-number"
        + " grows and keeps to "
        + readings.text("aim.blurLimit")
        + " from "
        + readings.text("sharp.open")
        + " on; the diffraction disc grows with it and keeps to "
        + readings.text("aim.diffractionLimit")
        + " up to "
        + readings.text("sharp.closed")
        + ". The lens has "
        + lensWords()
        + ". "
        + (readings.yes("sharp.window") ? inWords() : "That leaves no window.")
        + " At "
        + readings.text(SET)
        + " the blur is "
        + readings.text("sharp.blurFarPixels")
        + " and the disc "
        + readings.text("sharp.airyPixels")
        + ".";
  }

  private String inWords() {
    return single()
        ? "That lies in the window."
        : "The window that is left reaches from "
            + readings.text("sharp.windowFrom")
            + " to "
            + readings.text("sharp.windowTo")
            + ".";
  }

  private boolean single() {
    return readings.si("kit.widest") == readings.si("kit.narrowest");
  }

  private String lensWords() {
    return single()
        ? "only " + readings.text("kit.widest")
        : readings.text("kit.widest") + " to " + readings.text("kit.narrowest");
  }
}
