package ringbook.output.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringbook.charts.ColumnChart;
import ringbook.charts.Columns;
import ringbook.charts.Columns.Column;
import ringbook.figures.ChartModel.Axis;
import ringbook.figures.ChartModel.Tick;
import ringbook.figures.Figure;
import ringbook.sheets.ExerciseTally;
import ringbook.sheets.Points;

/** The charts of a class summary. */
final class ClassCharts {

  private static final int CLASSES = 10;

  /** Beyond this many exercises, their values stand in the table alone. */
  private static final int PRINTED = 18;

  /** Beyond so many exercises, the columns and their numbers would run into each other. */
  private static final int MOST = 40;

  private ClassCharts() {}

  /** How many learners have how much of all points. */
  static Figure points(Points points) {
    List<Long> counts = points.classes(CLASSES);
    long most = counts.stream().mapToLong(Long::longValue).max().orElse(0);
    List<Column> columns = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    int width = 100 / CLASSES;
    for (int i = 0; i < CLASSES; i++) {
      long count = counts.get(i);
      String text = String.valueOf(count);
      columns.add(new Column(width * i, width * (i + 1), (double) count, count == 0 ? "" : text));
      rows.add(List.of(width * i + " to " + width * (i + 1) + " %", text));
    }
    return ColumnChart.of(
        new Columns(
            "How the points are spread",
            "Learners by their share of all points, in steps of " + width + " per cent.",
            new Axis("share of all points, %", 0, 100, ticks(100, 10)),
            new Axis("learners", 0, top(most), ticks(top(most), step(top(most)))),
            columns,
            List.of("share of all points", "learners"),
            rows),
        "points-");
  }

  /** How many answers to each exercise are right; of a long course, where the fewest are. */
  static Figure exercises(List<ExerciseTally> exercises) {
    boolean all = exercises.size() <= MOST;
    List<Integer> shown = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < exercises.size(); i++) {
      shown.add(i);
      rows.add(List.of(i + 1 + ". " + exercises.get(i).exercise().id(), text(exercises.get(i))));
    }
    if (!all) {
      shown.sort(Comparator.comparingDouble(i -> share(exercises.get(i))));
      shown.subList(PRINTED, shown.size()).clear();
    }
    boolean printed = shown.size() <= PRINTED;
    List<Column> columns = new ArrayList<>();
    List<Tick> ticks = new ArrayList<>();
    for (int place = 1; place <= shown.size(); place++) {
      int number = shown.get(place - 1) + 1;
      ExerciseTally tally = exercises.get(number - 1);
      columns.add(
          new Column(
              place - 0.5,
              place + 0.5,
              share(tally),
              printed ? String.valueOf(Math.round(share(tally))) : ""));
      if (printed || number % 5 == 0) {
        ticks.add(new Tick(place, String.valueOf(number)));
      }
    }
    return ColumnChart.of(
        new Columns(
            all ? "How many answers are right" : "Where the fewest answers are right",
            all
                ? "The share of right answers, exercise by exercise in the order of the course."
                : "The share of right answers to the "
                    + PRINTED
                    + " exercises with the fewest, by their numbers in the course.",
            new Axis("exercise", 0.5, shown.size() + 0.5, ticks),
            new Axis("right, %", 0, 110, ticks(100, 20)),
            columns,
            List.of("exercise", "right"),
            rows),
        "right-");
  }

  private static double share(ExerciseTally tally) {
    return 100.0 * tally.right() / tally.handedIn();
  }

  private static String text(ExerciseTally tally) {
    return Math.round(share(tally)) + " %";
  }

  /** Leaves room for the number above the highest. */
  private static long top(long most) {
    return most + Math.max(1, most / 8);
  }

  /** 1, 2 or 5 times a power of ten, so that there are at most ten steps. */
  private static long step(long top) {
    for (long ten = 1; ; ten *= 10) {
      for (long times : new long[] {1, 2, 5}) {
        if (top / (times * ten) <= 10) {
          return times * ten;
        }
      }
    }
  }

  private static List<Tick> ticks(long top, long step) {
    List<Tick> ticks = new ArrayList<>();
    for (long at = 0; at <= top; at += step) {
      ticks.add(new Tick(at, String.valueOf(at)));
    }
    return ticks;
  }
}
