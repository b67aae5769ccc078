package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import ringbook.ledger.Working;

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
    return mark.exercise()
        .task()
        .show(
            new Task.Cases<List<String>>() {
              @Override
              public List<String> number(NumberTask task) {
                return numberIsRight ? List.of() : lines(mark.exercise());
              }

              @Override
              public List<String> choice(ChoiceTask task) {
                ChoiceTask.Option right = task.options().get(task.rightIndex());
                return List.of(mark.exercise().answerText(), right.because().markdown());
              }
            });
  }

  /** The workings in plain lines; where there are several, each under its name. */
  private static List<String> lines(Exercise exercise) {
    List<Working> workings = exercise.workings();
    List<String> lines = new ArrayList<>();
    for (Working working : workings) {
      if (workings.size() > 1) {
        lines.add(exercise.reckoning().ledger().get(working.key()).name() + ":");
      }
      lines.addAll(lines(working));
    }
    return lines;
  }

  /** One working in plain lines: formula or rule, numbers put in, result. */
  private static List<String> lines(Working working) {
    List<String> lines = new ArrayList<>();
    working.formula().ifPresent(line -> lines.add(line.text()));
    if (!working.rule().isEmpty()) {
      lines.add(working.rule());
    }
    working.numbers().ifPresent(line -> lines.add(line.text()));
    lines.add(working.result().text());
    return lines;
  }
}
