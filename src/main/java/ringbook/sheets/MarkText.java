package ringbook.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.exercises.Credit;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;

/** The marks of a group as text to read: feedback for each learner, then two tables. */
public final class MarkText {

  private MarkText() {}

  /** The whole text; ends with a line end. */
  public static String of(MarkList list) {
    StringBuilder out = new StringBuilder();
    for (Map.Entry<String, List<Mark>> learner : list.byLearner().entrySet()) {
      out.append(Quote.of(learner.getKey())).append('\n');
      learner.getValue().forEach(mark -> feedback(mark, out));
      out.append('\n');
    }
    learners(list, out);
    out.append('\n');
    exercises(list, out);
    return out.toString();
  }

  private static void feedback(Mark mark, StringBuilder out) {
    Feedback feedback = mark.feedback();
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

  private static void learners(MarkList list, StringBuilder out) {
    int asked = list.byExercise().size();
    TextTable table = new TextTable("learner", "answered", "right", "points");
    for (Map.Entry<String, List<Mark>> learner : list.byLearner().entrySet()) {
      List<Mark> marks = learner.getValue();
      int quarters = marks.stream().mapToInt(mark -> mark.credit().quarters()).sum();
      table.row(
          Quote.of(learner.getKey()),
          answered(marks) + " of " + asked,
          String.valueOf(right(marks)),
          Credit.text(quarters));
    }
    out.append(table);
  }

  private static void exercises(MarkList list, StringBuilder out) {
    TextTable table = new TextTable("exercise", "answered", "right", "what went wrong");
    for (Map.Entry<String, List<Mark>> exercise : list.byExercise().entrySet()) {
      List<Mark> marks = exercise.getValue();
      table.row(
          exercise.getKey(),
          String.valueOf(answered(marks)),
          String.valueOf(right(marks)),
          slips(marks));
    }
    out.append(table);
  }

  /** What was found in the answers that are not right, the most frequent first. */
  private static String slips(List<Mark> marks) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Mark mark : marks) {
      if (mark.credit().quarters() < 4) {
        counts.merge(mark.verdict().label(), 1, Integer::sum);
      }
    }
    List<Map.Entry<String, Integer>> entries = new ArrayList<>(counts.entrySet());
    entries.sort((a, b) -> b.getValue() - a.getValue());
    List<String> parts = new ArrayList<>();
    for (Map.Entry<String, Integer> entry : entries) {
      parts.add(entry.getValue() + " × " + entry.getKey());
    }
    return String.join(", ", parts);
  }

  private static long answered(List<Mark> marks) {
    return marks.stream().filter(mark -> !mark.answer().text().isEmpty()).count();
  }

  private static long right(List<Mark> marks) {
    return marks.stream().filter(mark -> mark.credit().quarters() == 4).count();
  }
}
