package ringbook.figures;

import ringbook.figures.ChartModel.Axis;

/**
 * Where the values of a chart lie on the paper.
 *
 * @param model the chart
 * @param area the rectangle between its axes
 */
record ChartScale(ChartModel model, Box area) {

  Point at(ChartModel.Value value) {
    return new Point(x(value.x()), y(value.y()));
  }

  double x(double value) {
    return area.left() + area.width() * share(model.across(), value);
  }

  double y(double value) {
    return area.bottom() - (area.bottom() - area.top()) * share(model.up(), value);
  }

  private static double share(Axis axis, double value) {
    return (value - axis.low()) / (axis.high() - axis.low());
  }
}
