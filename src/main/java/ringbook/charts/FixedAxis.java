package ringbook.charts;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Tick;
import ringbook.figures.Ink;
import ringbook.figures.Label;

/** An axis whose marks and texts are all given, so that no locale has a say. */
final class FixedAxis extends NumberAxis {

  private static final long serialVersionUID = 1L;

  private final transient Axis axis;

  FixedAxis(Axis axis, String label) {
    super(label.isEmpty() ? null : label);
    this.axis = axis;
    setRange(axis.low(), axis.high());
    setTickLabelFont(ChartFont.ofSize(Label.SMALL));
    setLabelFont(ChartFont.ofSize(Label.SMALL + 1));
    setTickLabelPaint(Palette.of(Ink.INK));
    setLabelPaint(Palette.of(Ink.INK));
    setAxisLinePaint(Palette.of(Ink.INK));
    setTickMarkPaint(Palette.of(Ink.INK));
    setAxisLineStroke(new BasicStroke(1.2f));
    setTickMarkStroke(new BasicStroke(1f));
    setTickMarkOutsideLength(4);
    setTickLabelInsets(new RectangleInsets(3, 4, 2, 4));
  }

  @Override
  public List<NumberTick> refreshTicks(
      Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
    boolean level = RectangleEdge.isTopOrBottom(edge);
    TextAnchor anchor = level ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
    List<NumberTick> ticks = new ArrayList<>();
    for (Tick tick : axis.ticks()) {
      ticks.add(new NumberTick(tick.at(), tick.text(), anchor, TextAnchor.CENTER, 0));
    }
    return ticks;
  }
}
