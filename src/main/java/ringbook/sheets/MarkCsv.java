package ringbook.sheets;

import java.io.IOException;
import java.util.List;
import ringbook.exercises.Feedback;

/** The marks of a class as comma-separated values, one answer a line; see {@link CsvLine}. */
public final class MarkCsv implements MarkSink {

  private final Appendable out;
  private boolean begun;

  /** Writes to {@code out}. */
  public MarkCsv(Appendable out) {
    this.out = out;
  }

  @Override
  public void learner(LearnerMarks marks) throws IOException {
    if (!begun) {
      begun = true;
      line("learner", "exercise", "answer", "verdict", "points", "feedback", "next");
    }
    for (OneMark one : marks.marks()) {
      Feedback feedback = one.feedback();
      line(
          marks.learner(),
          one.mark().answer().exercise(),
          one.mark().answer().text(),
          one.mark().verdict().label(),
          one.mark().credit().text(),
          feedback.happened(),
          feedback.next());
    }
  }

  @Override
  public void end(ClassTally tally) {
    // Every line stands by itself.
  }

  private void line(String... cells) throws IOException {
    CsvLine.COMMAS.write(List.of(cells), out);
  }
}
