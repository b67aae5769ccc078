package ringbook.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import ringbook.units.Numbers;
import ringbook.units.Words;

/** What the class did, as text: how the points are spread, then exercise by exercise. */
public final class SummaryText implements MarkSink {

  private final Appendable out;

  /** Writes to {@code out}. */
  public SummaryText(Appendable out) {
    this.out = out;
  }

  @Override
  public void learner(LearnerMarks marks) {
    // The counts are all that is needed.
  }

  @Override
  public void end(ClassTally tally) throws IOException {
    out.append(points(tally.points())).append('\n');
    if (!tally.absent().isEmpty()) {
      out.append("Nothing came from ").append(names(tally.absent())).append(".\n");
    }
    out.append('\n').append(exercises(tally));
  }

  /** One sentence or two on the points. */
  public static String points(Points points) {
    return Words.count((int) points.learners(), "learner")
        + ", "
        + Words.count(points.most(), "point")
        + " to be had. Half of them have "
        + decimal(points.quantile(0.5))
        + " or more; the middle half lies between "
        + decimal(points.quantile(0.25))
        + " and "
        + decimal(points.quantile(0.75))
        + ". Mean "
        + decimal(points.mean())
        + ", standard deviation "
        + decimal(points.deviation())
        + ".";
  }

  private static String decimal(double number) {
    return Numbers.trimmed(Numbers.fixed(number, 2));
  }

  /** The table of the exercises. */
  static String exercises(ClassTally tally) {
    TextTable table = new TextTable("exercise", "answered", "right", "what went wrong");
    for (ExerciseTally exercise : tally.asked()) {
      List<String> wrong = new ArrayList<>();
      exercise.wrong().forEach(way -> wrong.add(way.count() + " × " + way.label()));
      table.row(
          exercise.exercise().id(),
          String.valueOf(exercise.answered()),
          String.valueOf(exercise.right()),
          String.join(", ", wrong));
    }
    return table.toString();
  }

  /** {@code Ida, Mats and Zoë}. */
  public static String names(List<String> names) {
    List<String> shown = names.stream().map(Quote::of).toList();
    return shown.size() < 2
        ? String.join("", shown)
        : String.join(", ", shown.subList(0, shown.size() - 1))
            + " and "
            + shown.get(shown.size() - 1);
  }
}
