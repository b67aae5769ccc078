package ringbook.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringbook.exercises.Answer;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Takes in answers one by one, whatever file they come from, and tells what is wrong with them. */
final class Intake {

  private final Set<String> exercises;
  private final Problems problems;
  private final List<Answer> answers = new ArrayList<>();
  private final Map<List<String>, Position> places = new HashMap<>();

  Intake(Collection<String> exercises, Problems problems) {
    this.exercises = new LinkedHashSet<>(exercises);
    this.problems = problems;
  }

  /** Takes what stands at {@code at}; it is kept if it can be marked. */
  void take(String learner, String exercise, String text, Position at) {
    Answer answer = new Answer(oneLine(learner), oneLine(exercise), text.strip());
    if (answer.learner().isEmpty()) {
      problems.add(at, "the learner is missing", "write a name or a number for each learner");
    } else if (answer.exercise().isEmpty()) {
      problems.add(at, "the exercise is missing", "write the id that stands beside the exercise");
    } else if (!exercises.contains(answer.exercise())) {
      problems.add(
          at,
          "no exercise has the id '" + Quote.of(answer.exercise()) + "'",
          Nearest.help(answer.exercise(), exercises));
    } else {
      keep(answer, at);
    }
  }

  private void keep(Answer answer, Position at) {
    Position first = places.putIfAbsent(List.of(answer.learner(), answer.exercise()), at);
    if (first != null) {
      problems.add(
          at,
          Quote.of(answer.learner()) + " answers '" + answer.exercise() + "' a second time",
          "the first answer, at " + first + ", was marked; take one of them out");
      return;
    }
    if (answer.text().isEmpty()) {
      problems.add(at, Quote.of(answer.learner()) + " left '" + answer.exercise() + "' empty", "");
    }
    answers.add(answer);
  }

  List<Answer> answers() {
    return List.copyOf(answers);
  }

  private static String oneLine(String text) {
    return text.strip().replace("\r\n", " ").replace('\n', ' ').replace('\r', ' ');
  }
}
