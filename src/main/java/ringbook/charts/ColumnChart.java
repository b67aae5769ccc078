package ringbook.charts;

import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import ringbook.figures.Figure;
import ringbook.figures.Fill;
import ringbook.figures.Ink;
import ringbook.figures.Label;
import ringbook.figures.Label.Anchor;
import ringbook.figures.Point;
import ringbook.figures.Stroke;
import ringbook.figures.SvgWriter;

/** Draws {@link Columns} as a figure. */
public final class ColumnChart {

  private static final double WIDTH = 560;
  private static final double HEIGHT = 350;

  /** Where the plot begins; the name of the vertical axis lies level above it. */
  private static final double TOP = 28;

  private static final Stroke GRID = Stroke.solid(Ink.FAINT, 0.4);
  private static final Stroke EDGE = Stroke.solid(Ink.ACCENT, 1);

  /** Share of a column's place that stays empty, so that neighbours do not merge. */
  private static final double GAP = 0.15;

  private ColumnChart() {}

  /**
   * The figure of {@code model}.
   *
   * @param idPrefix put before every id, so that ids stay unique on a page
   */
  public static Figure of(Columns model, String idPrefix) {
    SvgWriter svg = new SvgWriter(WIDTH, HEIGHT, idPrefix);
    svg.append(ChartSvg.draw(chart(model), WIDTH, HEIGHT));
    Point corner = new Point(4, TOP - 11);
    svg.bare(new Label(model.up().label(), corner, Anchor.START, 13, Label.Weight.NORMAL));
    return new Figure(
        model.title(),
        model.description(),
        svg.svg(model.title(), model.description()),
        model.tableHead(),
        model.tableRows());
  }

  private static JFreeChart chart(Columns model) {
    XYPlot plot =
        new XYPlot(
            places(model.columns()),
            new FixedAxis(model.across(), model.across().label()),
            new FixedAxis(model.up(), ""),
            pens(model.columns()));
    plot.setBackgroundPaint(null);
    plot.setOutlineVisible(false);
    plot.setInsets(new RectangleInsets(TOP, 4, 4, 14));
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    plot.setRangeGridlinePaint(Palette.of(GRID.ink()));
    plot.setRangeGridlineStroke(Palette.of(GRID));
    plot.setDomainGridlinesVisible(false);
    JFreeChart chart = new JFreeChart(null, null, plot, false);
    chart.setBackgroundPaint(null);
    chart.setPadding(RectangleInsets.ZERO_INSETS);
    return chart;
  }

  private static XYIntervalSeriesCollection places(List<Columns.Column> columns) {
    XYIntervalSeries series = new XYIntervalSeries("", false, true);
    for (Columns.Column column : columns) {
      double middle = (column.from() + column.to()) / 2;
      series.add(middle, column.from(), column.to(), column.height(), 0, column.height());
    }
    XYIntervalSeriesCollection places = new XYIntervalSeriesCollection();
    places.addSeries(series);
    return places;
  }

  private static XYBarRenderer pens(List<Columns.Column> columns) {
    XYBarRenderer pens = new XYBarRenderer(GAP);
    pens.setBarPainter(new StandardXYBarPainter());
    pens.setShadowVisible(false);
    pens.setDrawBarOutline(true);
    pens.setSeriesPaint(0, Palette.of(Fill.TONE_3));
    pens.setSeriesOutlinePaint(0, Palette.of(EDGE.ink()));
    pens.setSeriesOutlineStroke(0, Palette.of(EDGE));
    pens.setDefaultItemLabelGenerator((places, series, item) -> columns.get(item).text());
    pens.setDefaultItemLabelsVisible(true);
    pens.setDefaultItemLabelFont(ChartFont.ofSize(Label.SMALL));
    pens.setDefaultItemLabelPaint(Palette.of(Fill.TEXT));
    pens.setDefaultPositiveItemLabelPosition(
        new ItemLabelPosition(ItemLabelAnchor.OUTSIDE12, TextAnchor.BOTTOM_CENTER));
    return pens;
  }
}
