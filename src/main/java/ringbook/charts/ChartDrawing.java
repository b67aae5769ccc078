package ringbook.charts;

import ringbook.figures.ChartModel;
import ringbook.figures.Figure;
import ringbook.figures.SvgWriter;

/** Draws a chart model as a figure. */
final class ChartDrawing {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 350;

  private ChartDrawing() {}

  static Figure of(ChartModel model, String idPrefix) {
    ChartSvg.Drawn drawn = ChartSvg.draw(ChartPlot.of(model), WIDTH, HEIGHT);
    SvgWriter svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    svg.append(drawn.shapes());
    new ChartLabels(model, drawn.dataArea(), svg).write();
    return new Figure(
        model.title(),
        model.description(),
        svg.svg(model.title(), model.description()),
        model.tableHead(),
        model.tableRows());
  }
}
