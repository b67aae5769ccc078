package ringbook.charts;

import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import ringbook.figures.ChartModel;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.Fill;
import ringbook.figures.Ink;
import ringbook.figures.Stroke;

/** Turns axes, bands, rules and curves of a model into a chart of the chart library. */
final class ChartPlot {

  private static final Stroke GRID = Stroke.solid(Ink.FAINT, 0.4);

  private ChartPlot() {}

  static JFreeChart of(ChartModel model) {
    XYPlot plot =
        new XYPlot(
            null,
            new FixedAxis(model.across(), model.across().label()),
            new FixedAxis(model.up(), ""),
            null);
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(new RectangleInsets(28, 4, 4, 14));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setRangeGridlinePaint(Palette.of(GRID.ink()));
    plot.setRangeGridlineStroke(Palette.of(GRID));
    plot.setDomainGridlinesVisible(false);
    addBands(plot, model);
    addRules(plot, model);
    addSeries(plot, model);
    JFreeChart chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint(null);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    return chart;
  }

  private static void addBands(XYPlot plot, ChartModel model) {
    for (ChartModel.Band band : model.bands()) {
      IntervalMarker marker = new IntervalMarker(band.from(), band.to(), Palette.of(Fill.FAINT));
      marker.setAlpha(1);
      plot.addDomainMarker(marker, Layer.BACKGROUND);
    }
  }

  private static void addRules(XYPlot plot, ChartModel model) {
    for (ChartModel.Rule rule : model.rules()) {
      ValueMarker marker =
          new ValueMarker(rule.at(), Palette.of(rule.stroke().ink()), Palette.of(rule.stroke()));
      marker.setAlpha(1);
      if (rule.along() == Along.ACROSS) {
        plot.addDomainMarker(marker, Layer.BACKGROUND);
      } else {
        plot.addRangeMarker(marker, Layer.BACKGROUND);
      }
    }
  }

  private static void addSeries(XYPlot plot, ChartModel model) {
    XYSeriesCollection curves = new XYSeriesCollection();
    XYLineAndShapeRenderer pens = new XYLineAndShapeRenderer(true, false);
    pens.setDrawSeriesLineAsPath(true);
    for (int i = 0; i < model.series().size(); i++) {
      ChartModel.Series series = model.series().get(i);
      XYSeries curve = new XYSeries(Integer.valueOf(i), false);
      for (ChartModel.Value value : series.points()) {
        curve.add(value.x(), value.y());
      }
      curves.addSeries(curve);
      pens.setSeriesPaint(i, Palette.of(series.stroke().ink()));
      pens.setSeriesStroke(i, Palette.of(series.stroke()));
    }
    plot.setDataset(curves);
    plot.setRenderer(pens);
  }
}
