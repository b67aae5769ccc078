package ringbook.exercises;

import java.util.List;

/**
 * What a learner is told about an answer, in plain text.
 *
 * @param happened one kind sentence on what was found
 * @param working how the right answer comes about, line by line; empty where there is nothing to
 *     work out or the number is right
 * @param next what to do next; empty where nothing is left to do
 */
public record Feedback(String happened, List<String> working, String next) {

  public Feedback {
    working = List.copyOf(working);
  }

  /** What to tell the learner about {@code mark}. */
  public static Feedback of(Mark mark) {
    FeedbackWords words = new FeedbackWords(mark);
    return new Feedback(
        mark.verdict().show(words), working(mark), mark.verdict().show(new NextWords(mark)));
  }

  private static List<String> working(Mark mark) {
    boolean numberIsRight =
        mark.verdict() instanceof Verdict.Right || mark.verdict() instanceof Verdict.UnitMissing;
    return numberIsRight && mark.exercise().task().asked().isPresent()
        ? List.of()
        : mark.exercise().solution();
  }
}
