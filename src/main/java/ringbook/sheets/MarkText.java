package ringbook.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import ringbook.exercises.Credit;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;

/** The marks of a class as text to read: feedback for each learner, then two tables. */
public final class MarkText implements MarkSink {

  private record Line(String learner, int answered, int right, int quarters) {}

  private final Appendable out;
  private final List<Line> lines = new ArrayList<>();

  /** Writes to {@code out}. */
  public MarkText(Appendable out) {
    this.out = out;
  }

  @Override
  public void learner(LearnerMarks marks) throws IOException {
    lines.add(new Line(marks.learner(), marks.answered(), marks.right(), marks.quarters()));
    StringBuilder text = new StringBuilder();
    text.append(Quote.of(marks.learner())).append('\n');
    marks.marks().forEach(mark -> feedback(mark, text));
    out.append(text.append('\n'));
  }

  @Override
  public void end(ClassTally tally) throws IOException {
    TextTable table = new TextTable("learner", "answered", "right", "points");
    int asked = tally.asked().size();
    for (Line line : lines) {
      table.row(
          Quote.of(line.learner),
          line.answered + " of " + asked,
          String.valueOf(line.right),
          Credit.text(line.quarters));
    }
    out.append(table.toString()).append('\n');
    out.append(SummaryText.exercises(tally));
    if (!tally.absent().isEmpty()) {
      out.append("\nNothing came from ").append(SummaryText.names(tally.absent())).append(".\n");
    }
  }

  private static void feedback(OneMark one, StringBuilder out) {
    Mark mark = one.mark();
    Feedback feedback = one.feedback();
    line(out, 2, mark.exercise().title() + " (" + mark.exercise().id() + ")");
    line(out, 4, feedback.happened());
    if (!feedback.next().isEmpty()) {
      boolean named = feedback.working().stream().anyMatch(MarkText::isName);
      for (String working : feedback.working()) {
        line(out, named && !isName(working) ? 8 : 6, working);
      }
      line(out, 4, feedback.next());
    }
    if (mark.credit().quarters() > 0 && mark.credit().quarters() < 4) {
      line(out, 4, "Points: " + mark.credit().text() + " of 1.");
    }
  }

  /** Where an answer takes several workings, each stands under the name of what it gives. */
  private static boolean isName(String line) {
    return line.endsWith(":");
  }

  private static void line(StringBuilder out, int indent, String text) {
    out.append(" ".repeat(indent)).append(plain(text)).append('\n');
  }

  /** No-break spaces keep a number and its unit together on a page; a terminal needs plain ones. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\n', ' ');
  }
}
