package ringbook.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import ringbook.exercises.Credit;
import ringbook.exercises.Exercise;
import ringbook.units.Numbers;

/**
 * The grade book: a line a learner, a column an exercise with the points from 0 to 1, empty where
 * nothing was handed in; then how many were answered, the points, and their share of all exercises
 * in per cent. Learners of the class list who handed in nothing stand at the end.
 *
 * <p>With semicolons between cells, decimals are written with a comma, as spreadsheets that expect
 * the one expect the other.
 */
public final class GradeBook implements MarkSink {

  private static final int LAST_COLUMNS = 3;

  private final Appendable out;
  private final CsvLine line;
  private final List<String> ids;
  private boolean begun;

  /** Writes to {@code out}, with semicolons or else commas between cells. */
  public GradeBook(Appendable out, List<Exercise> exercises, boolean semicolons) {
    this.out = out;
    this.line = new CsvLine(semicolons ? ';' : ',');
    this.ids = exercises.stream().map(Exercise::id).toList();
  }

  private void begin() throws IOException {
    if (!begun) {
      begun = true;
      List<String> head = new ArrayList<>(List.of("learner"));
      head.addAll(ids);
      head.addAll(List.of("answered", "points", "per cent"));
      line.write(head, out);
    }
  }

  @Override
  public void learner(LearnerMarks marks) throws IOException {
    begin();
    List<String> cells = new ArrayList<>(List.of(marks.learner()));
    ids.forEach(id -> cells.add(""));
    for (OneMark one : marks.marks()) {
      if (one.answered()) {
        cells.set(1 + one.exercise(), number(one.mark().credit().text()));
      }
    }
    cells.add(String.valueOf(marks.answered()));
    cells.add(number(Credit.text(marks.quarters())));
    cells.add(number(Numbers.fixed(25.0 * marks.quarters() / marks.asked(), 1)));
    line.write(cells, out);
  }

  @Override
  public void end(ClassTally tally) throws IOException {
    begin();
    for (String name : tally.absent()) {
      List<String> cells = new ArrayList<>(List.of(name));
      for (int i = 0; i < ids.size() + LAST_COLUMNS; i++) {
        cells.add("");
      }
      line.write(cells, out);
    }
  }

  private String number(String text) {
    return line.delimiter() == ';' ? text.replace('.', ',') : text;
  }
}
