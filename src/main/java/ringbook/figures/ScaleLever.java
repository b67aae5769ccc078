package ringbook.figures;

import java.util.List;
import java.util.Map;
import ringbook.figures.Label.Anchor;
import ringbook.ledger.Reckoning;

/** How an error of the bar grows over the object: a wedge through the end of the bar. */
final class ScaleLever {

  private static final double WIDTH = 560;
  private static final double LEFT = 40;
  private static final double RIGHT = 400;
  private static final double AXIS = 120;
  private static final double WIDEST = 64;
  private static final double LEAST = 26;

  private final Readings readings;
  private final Reckoning reckoning;
  private final SvgWriter svg;
  private final double bar;
  private final double side;
  private final double scale;

  private ScaleLever(Reckoning reckoning, String idPrefix) {
    this.reckoning = reckoning;
    readings = new Readings(reckoning);
    svg = new SvgWriter(WIDTH, 250, idPrefix);
    bar = readings.si("kit.barLength");
    side = readings.si("scale.longest");
    scale = (RIGHT - LEFT) / Math.max(bar, side);
  }

  static Figure draw(Reckoning reckoning, Map<String, String> options, String idPrefix) {
    return new ScaleLever(reckoning, idPrefix).figure();
  }

  private Figure figure() {
    double end = Math.max(bar, side);
    Point zero = new Point(LEFT, AXIS);
    svg.polygon(List.of(zero, at(end, -1), at(end, 1)), Stroke.solid(Ink.ACCENT, 1.4), Fill.FAINT);
    svg.line(zero, at(end, 0), Stroke.GUIDE);
    boolean first = bar <= side;
    end("bar " + readings.text("kit.barLength"), atBar(), bar, !first);
    end("object " + readings.text("scale.longest"), readings.text("scale.carriedOne"), side, first);
    svg.dot(zero, 3.5, Fill.TEXT);
    svg.text(Label.small("one end of both", new Point(LEFT - 20, AXIS + 84), Anchor.START));
    svg.line(new Point(LEFT, AXIS + 8), new Point(LEFT, AXIS + 70), Stroke.GUIDE);
    readings.tabulate(
        "kit.barLength",
        "kit.barError",
        "scale.measured",
        "scale.oneBar",
        "scale.longest",
        "scale.times",
        "scale.carriedOne",
        "scale.carried");
    readings.row("Error at the end of the bar", atBar());
    return readings.figure(svg, "A small error at the bar, carried on", description());
  }

  /** A place along the wedge, so many of its half widths below the axis. */
  private Point at(double metres, double half) {
    double share = metres / Math.max(bar, side);
    return new Point(LEFT + scale * metres, AXIS + half * share * WIDEST);
  }

  /** Both ends are named, one above the wedge and the other below, so that they keep apart. */
  private void end(String name, String error, double metres, boolean above) {
    Point foot = at(metres, 0);
    double half = Math.max(LEAST, at(metres, 1).y() - AXIS);
    svg.line(foot.plus(0, -half), foot.plus(0, half), Stroke.solid(Ink.INK, 2.4));
    double y = above ? AXIS - WIDEST - 32 : AXIS + WIDEST + 44;
    double from = above ? AXIS - half : AXIS + half;
    svg.line(new Point(foot.x(), from), new Point(foot.x(), above ? y + 24 : y - 16), Stroke.GUIDE);
    Label label = Label.of(name, new Point(foot.x(), y), Anchor.MIDDLE).bold();
    double inside = Math.max(LEFT + 130, Math.min(WIDTH - 90, foot.x()));
    svg.text(label.movedTo(new Point(inside, y), Anchor.MIDDLE));
    svg.text(Label.of("± " + error, new Point(inside, y + 18), Anchor.MIDDLE));
  }

  private String atBar() {
    double error = readings.si("scale.oneBar") * bar;
    return reckoning.ledger().get("scale.carriedOne").text(error);
  }

  private String description() {
    return "A wedge that opens from one end to the other; its width is drawn far too large. At the"
        + " end of the bar, "
        + readings.text("kit.barLength")
        + " on, it is ± "
        + atBar()
        + ". At the end of the object, "
        + readings.text("scale.longest")
        + " on, it is ± "
        + readings.text("scale.carriedOne")
        + ": the object is "
        + readings.text("scale.times")
        + " times as long as the bar, and so is its error.";
  }
}
