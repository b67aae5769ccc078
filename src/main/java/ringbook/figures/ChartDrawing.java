package ringbook.figures;

import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Tick;
import ringbook.figures.Label.Anchor;

/** Draws a chart model as a figure: axes, bands, rules and curves; {@link ChartLabels} the rest. */
public final class ChartDrawing {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 350;

  private static final Stroke GRID = Stroke.solid(Ink.FAINT, 0.4);
  private static final Stroke AXIS = Stroke.solid(Ink.INK, 1.2);
  private static final double TICK = 4;

  /** Free space on both sides of the numbers of the upright axis. */
  private static final double BESIDE = 6;

  private final ChartModel model;
  private final SvgWriter svg;
  private final Box area;

  private ChartDrawing(ChartModel model, String idPrefix) {
    this.model = model;
    this.svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    double widest = 0;
    for (Tick tick : model.up().ticks()) {
      widest = Math.max(widest, TextWidth.of(tick.text(), Label.SMALL));
    }
    this.area = new Box(Math.ceil(widest) + 2 * BESIDE, 28, WIDTH - 14, HEIGHT - 45);
  }

  /**
   * The figure of {@code model}.
   *
   * @param idPrefix put before every id, so that ids stay unique on a page
   */
  public static Figure of(ChartModel model, String idPrefix) {
    ChartDrawing drawing = new ChartDrawing(model, idPrefix);
    drawing.draw();
    return new Figure(
        model.title(),
        model.description(),
        drawing.svg.svg(model.title(), model.description()),
        model.tableHead(),
        model.tableRows());
  }

  private void draw() {
    ChartScale scale = new ChartScale(model, area);
    for (Tick tick : model.up().ticks()) {
      level(scale.y(tick.at()), GRID);
    }
    for (ChartModel.Band band : model.bands()) {
      band(scale, band);
    }
    for (ChartModel.Rule rule : model.rules()) {
      rule(scale, rule);
    }
    acrossAxis(scale);
    upAxis(scale);
    for (ChartModel.Series series : model.series()) {
      svg.polyline(series.points().stream().map(scale::at).toList(), series.stroke());
    }
    new ChartLabels(model, scale, svg).write();
  }

  private void band(ChartScale scale, ChartModel.Band band) {
    double left = scale.x(Math.max(band.from(), model.across().low()));
    double right = scale.x(Math.min(band.to(), model.across().high()));
    if (right > left) {
      svg.area(new Box(left, area.top(), right, area.bottom()), Fill.FAINT);
    }
  }

  private void rule(ChartScale scale, ChartModel.Rule rule) {
    Axis axis = rule.along() == Along.ACROSS ? model.across() : model.up();
    if (!axis.holds(rule.at())) {
      return;
    }
    if (rule.along() == Along.ACROSS) {
      double x = scale.x(rule.at());
      svg.line(new Point(x, area.top()), new Point(x, area.bottom()), rule.stroke());
    } else {
      level(scale.y(rule.at()), rule.stroke());
    }
  }

  private void level(double y, Stroke stroke) {
    svg.line(new Point(area.left(), y), new Point(area.right(), y), stroke);
  }

  private void acrossAxis(ChartScale scale) {
    level(area.bottom(), AXIS);
    for (Tick tick : model.across().ticks()) {
      Point at = new Point(scale.x(tick.at()), area.bottom());
      svg.line(at, at.plus(0, TICK), Stroke.THIN);
      svg.bare(Label.small(tick.text(), at.plus(0, 16), Anchor.MIDDLE));
    }
    Point middle = new Point((area.left() + area.right()) / 2, area.bottom() + 34.5);
    svg.bare(
        new Label(
            model.across().label(), middle, Anchor.MIDDLE, Label.SMALL + 1, Label.Weight.NORMAL));
  }

  private void upAxis(ChartScale scale) {
    svg.line(new Point(area.left(), area.top()), new Point(area.left(), area.bottom()), AXIS);
    for (Tick tick : model.up().ticks()) {
      Point at = new Point(area.left(), scale.y(tick.at()));
      svg.line(at.plus(-TICK, 0), at, Stroke.THIN);
      svg.bare(Label.small(tick.text(), at.plus(-BESIDE, 4), Anchor.END));
    }
  }
}
