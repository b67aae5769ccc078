package ringbook.figures;

import java.util.ArrayList;
import java.util.List;

/**
 * All that a chart shows, without how it is drawn. Values are numbers of the axes; what lies off
 * the axes is not drawn.
 *
 * @param title a few words, plain text
 * @param description what there is to see with its numbers, plain text
 * @param across the horizontal axis
 * @param up the vertical axis
 * @param bands ranges along the horizontal axis
 * @param rules straight lines across the chart
 * @param series curves
 * @param marks single points
 * @param notes words at a point
 * @param tableHead column heads of its numbers
 * @param tableRows its numbers as printed
 */
public record ChartModel(
    String title,
    String description,
    Axis across,
    Axis up,
    List<Band> bands,
    List<Rule> rules,
    List<Series> series,
    List<Mark> marks,
    List<Note> notes,
    List<String> tableHead,
    List<List<String>> tableRows) {

  public ChartModel {
    bands = List.copyOf(bands);
    rules = List.copyOf(rules);
    series = List.copyOf(series);
    marks = List.copyOf(marks);
    notes = List.copyOf(notes);
    tableHead = List.copyOf(tableHead);
    tableRows = List.copyOf(tableRows);
  }

  /**
   * An axis, evenly divided from {@code low} to {@code high}.
   *
   * @param label what it shows, with the unit
   * @param low value at its beginning
   * @param high value at its end, above {@code low}
   * @param ticks where it is marked
   */
  public record Axis(String label, double low, double high, List<Tick> ticks) {
    public Axis {
      ticks = List.copyOf(ticks);
    }

    /** Whether the value lies on it. */
    public boolean holds(double value) {
      return value >= low && value <= high;
    }
  }

  /** A marked place on an axis with its text. */
  public record Tick(double at, String text) {}

  /**
   * A curve.
   *
   * @param label its name; empty if it needs none
   * @param stroke how it is drawn
   * @param points from left to right
   * @param labelAt the share of its points, 0 to 1, after which the name stands
   */
  public record Series(String label, Stroke stroke, List<Value> points, double labelAt) {
    public Series {
      points = List.copyOf(points);
    }
  }

  /** A value: {@code x} along the horizontal, {@code y} along the vertical axis. */
  public record Value(double x, double y) {}

  /**
   * A single point with its printed value.
   *
   * @param at where
   * @param text printed beside it; may be empty
   * @param shape how it looks
   * @param ink its colour
   * @param key whether it explains its shape; its text then stands right of it and nowhere else
   */
  public record Mark(Value at, String text, Shape shape, Ink ink, boolean key) {}

  /** How a mark looks; told apart without colour. */
  public enum Shape {
    /** A filled dot. */
    DOT,
    /** A hollow circle. */
    RING,
    /** A hollow square. */
    SQUARE,
    /** A hollow square on its corner. */
    DIAMOND,
    /** A hollow triangle. */
    TRIANGLE,
    /** Two crossed strokes. */
    CROSS
  }

  /** A range along the horizontal axis with its name above the chart. */
  public record Band(double from, double to, String text) {}

  /**
   * A straight line across the chart.
   *
   * @param along which axis it stands on
   * @param at the value on that axis
   * @param text its name; may be empty
   * @param stroke how it is drawn
   */
  public record Rule(Along along, double at, String text, Stroke stroke) {}

  /** Which axis a rule stands on. */
  public enum Along {
    /** It stands upright on the horizontal axis. */
    ACROSS,
    /** It lies level at a value of the vertical axis. */
    UP
  }

  /** Words that begin at a point. */
  public record Note(Value at, String text) {}

  /** A point list cut to what lies on the axes, without gaps: its first unbroken run. */
  static List<Value> onAxes(List<Value> points, Axis across, Axis up) {
    List<Value> run = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Value here = points.get(i);
      boolean on = across.holds(here.x()) && up.holds(here.y());
      if (i > 0 && on != (across.holds(points.get(i - 1).x()) && up.holds(points.get(i - 1).y()))) {
        edge(points.get(i - 1), here, across, up, run);
      }
      if (on) {
        run.add(here);
      } else if (!run.isEmpty()) {
        return run;
      }
    }
    return run;
  }

  /** Adds the point where the way from {@code a} to {@code b} crosses the vertical axis' end. */
  private static void edge(Value a, Value b, Axis across, Axis up, List<Value> into) {
    if (a.y() == b.y() || !across.holds(a.x()) || !across.holds(b.x())) {
      return;
    }
    double level = Math.max(a.y(), b.y()) > up.high() ? up.high() : up.low();
    double share = (level - a.y()) / (b.y() - a.y());
    into.add(new Value(a.x() + share * (b.x() - a.x()), level));
  }
}
