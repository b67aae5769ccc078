package ringbook.sheets;

import java.util.List;

/**
 * All that one learner handed in, marked.
 *
 * @param learner the name
 * @param marks in the order of the course
 * @param asked how many exercises the course has
 */
public record LearnerMarks(String learner, List<OneMark> marks, int asked) {

  public LearnerMarks {
    marks = List.copyOf(marks);
  }

  /** How many exercises were answered. */
  public int answered() {
    return (int) marks.stream().filter(OneMark::answered).count();
  }

  /** How many answers are worth the whole point. */
  public int right() {
    return (int) marks.stream().filter(OneMark::right).count();
  }

  /** The points in quarters. */
  public int quarters() {
    return marks.stream().mapToInt(mark -> mark.mark().credit().quarters()).sum();
  }
}
