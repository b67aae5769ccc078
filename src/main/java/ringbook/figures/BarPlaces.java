package ringbook.figures;

import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/**
 * Object and bars from the side, at one scale: a bar that lies, a bar that stands, and a spare one
 * for the check only.
 */
final class BarPlaces {

  private static final double WIDTH = 560;
  private static final double TABLE = 244;
  private static final double TALLEST = 190;
  private static final double WIDEST = 500;
  private static final double GAP = 34;
  private static final double THICK = 9;
  private static final double LEAST = 3;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double width;
  private final double height;
  private final double bar;

  private BarPlaces(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, TABLE + 76, idPrefix);
    double trueWidth = readings.si("subject.width");
    double trueHeight = readings.si("subject.height");
    double trueBar = readings.si("kit.barLength");
    double scale =
        Math.min(
            TALLEST / Math.max(trueHeight, trueBar),
            (WIDEST - 3 * GAP) / (trueWidth + 2 * trueBar));
    width = Math.max(LEAST, scale * trueWidth);
    height = Math.max(LEAST, scale * trueHeight);
    bar = Math.max(LEAST, scale * trueBar);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new BarPlaces(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double left = (WIDTH - (2 * bar + width + 3 * GAP)) / 2;
    double object = left + bar + GAP;
    double standing = object + width + GAP;
    svg.line(new Point(14, TABLE), new Point(WIDTH - 14, TABLE), Stroke.solid(Ink.FAINT, 3));
    svg.box(
        new Box(object, TABLE - height, object + width, TABLE - 1.5), Stroke.OUTLINE, Fill.FAINT);
    lying(left, Fill.ACCENT);
    standing(standing);
    spare(standing + GAP);
    names(left + bar / 2, object + width / 2, standing);
    readings.tabulate(
        "kit.barCount",
        "kit.barLength",
        "kit.barError",
        "scale.longest",
        "scale.times",
        "scale.checkLimit");
    return readings.figure(svg, "Where the scale bars go", description());
  }

  private void lying(double left, Fill fill) {
    Box box = new Box(left, TABLE - THICK - 1.5, left + bar, TABLE - 1.5);
    svg.box(box, Stroke.THIN, fill);
    target(new Point(box.left(), box.middleY()));
    target(new Point(box.right(), box.middleY()));
  }

  private void standing(double x) {
    Box box = new Box(x - THICK / 2, TABLE - 1.5 - bar, x + THICK / 2, TABLE - 1.5);
    svg.box(box, Stroke.THIN, onlyOne() ? Fill.PAPER : Fill.ACCENT);
    target(new Point(x, box.top()));
    target(new Point(x, box.bottom()));
  }

  /** Where more than one bar sets the scale, the spare one lies on the other side. */
  private void spare(double left) {
    if (!onlyOne()) {
      lying(left, Fill.PAPER);
    }
  }

  private boolean onlyOne() {
    return readings.si("kit.barCount") < 2;
  }

  private void target(Point at) {
    svg.circle(at, 4.5, Stroke.THIN, Fill.PAPER);
    svg.dot(at, 1.8, Fill.TEXT);
  }

  private void names(double lying, double object, double standing) {
    double low = TABLE + 22;
    text(onlyOne() ? "sets the scale, lying" : "1 lies, sets the scale", lying, low, true);
    text(readings.text("kit.barLength"), lying, low + 17, false);
    String name = reckoning.scene().subject().name();
    String fitted = Sentence.fitted(name, Label.SMALL, WIDTH / 2);
    svg.text(Label.small(fitted, new Point(object, TABLE - height - 9), Anchor.MIDDLE));
    standingName(onlyOne() ? "spare: check only" : "2 stands, sets the scale", standing);
    if (!onlyOne()) {
      text("spare: check only", standing + GAP + bar / 2, low, true);
    }
  }

  /** Above the bar and to its right; above the object where there is no room. */
  private void standingName(String words, double standing) {
    Label label = Label.of(words, new Point(standing, 0), Anchor.START).bold();
    double left = Math.min(standing - 6, WIDTH - 8 - label.box().width());
    double top = TABLE - bar - 12;
    boolean free = left > standing - GAP || top < TABLE - height - 30;
    double y = free ? top : Math.min(top, TABLE - height - 30);
    svg.text(label.movedTo(new Point(left, y), Anchor.START));
  }

  /** A text as near to {@code x} as the paper lets it. */
  private void text(String words, double x, double y, boolean bold) {
    Label label = Label.of(words, new Point(x, y), Anchor.MIDDLE);
    label = bold ? label.bold() : label;
    double half = label.box().width() / 2;
    double inside = Math.max(half + 8, Math.min(WIDTH - half - 8, x));
    svg.text(label.movedTo(new Point(inside, y), Anchor.MIDDLE));
  }

  private String description() {
    String bars =
        onlyOne()
            ? "Beside it lies one bar, which sets the scale, and a spare bar stands for the check"
            : "On one side a bar lies, on the other a bar stands; both set the scale. Further out"
                + " lies a spare bar, hollow, for the check";
    return "The "
        + reckoning.scene().subject().name()
        + " from the side, its longest side "
        + readings.text("scale.longest")
        + ". "
        + bars
        + ". Every bar is "
        + readings.text("kit.barLength")
        + " long and has a target at either end. Bars that set the scale here: "
        + readings.text("kit.barCount")
        + ".";
  }
}
