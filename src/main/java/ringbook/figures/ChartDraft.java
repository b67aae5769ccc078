package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import ringbook.figures.ChartModel.Along;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Band;
import ringbook.figures.ChartModel.Mark;
import ringbook.figures.ChartModel.Note;
import ringbook.figures.ChartModel.Rule;
import ringbook.figures.ChartModel.Series;
import ringbook.figures.ChartModel.Shape;
import ringbook.figures.ChartModel.Value;

/** Gathers what a chart shows; leaves out what lies off its axes. */
final class ChartDraft {

  private static final int STEPS = 120;

  private final Axis across;
  private final Axis up;
  private final List<Band> bands = new ArrayList<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<Series> series = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();
  private final List<List<String>> rows = new ArrayList<>();

  ChartDraft(Axis across, Axis up) {
    this.across = across;
    this.up = up;
  }

  /** A curve of a function over a range. */
  void curve(String label, Stroke stroke, double labelAt, double[] range, DoubleUnaryOperator y) {
    double from = Math.max(across.low(), range[0]);
    double to = Math.min(across.high(), range[1]);
    List<Value> points = new ArrayList<>();
    for (int i = 0; i <= STEPS && from < to; i++) {
      double x = from + (to - from) * i / STEPS;
      points.add(new Value(x, y.applyAsDouble(x)));
    }
    List<Value> seen = ChartModel.onAxes(points, across, up);
    if (seen.size() > 1) {
      series.add(new Series(label, stroke, seen, labelAt));
    }
  }

  void band(double from, double to, String text) {
    double left = Math.max(across.low(), from);
    double right = Math.min(across.high(), to);
    if (left <= right) {
      bands.add(new Band(left, right, text));
    }
  }

  void rule(Along along, double at, String text, Stroke stroke) {
    Axis axis = along == Along.ACROSS ? across : up;
    if (axis.holds(at)) {
      rules.add(new Rule(along, at, text, stroke));
    }
  }

  void mark(double x, double y, String text, Shape shape, Ink ink) {
    if (across.holds(x) && up.holds(y)) {
      marks.add(new Mark(new Value(x, y), text, shape, ink, false));
    }
  }

  /** A mark that says what its shape stands for. */
  void key(double x, double y, String text, Shape shape) {
    marks.add(new Mark(new Value(x, y), text, shape, Ink.INK, true));
  }

  void note(double x, double y, String text) {
    notes.add(new Note(new Value(x, y), text));
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  ChartModel model(String title, String description, List<String> head) {
    return new ChartModel(
        title, description, across, up, bands, rules, series, marks, notes, head, rows);
  }
}
