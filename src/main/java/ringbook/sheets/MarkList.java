package ringbook.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.exercises.Answer;
import ringbook.exercises.Exercise;
import ringbook.exercises.Mark;
import ringbook.exercises.Marker;

/**
 * The marks of a group.
 *
 * @param marks learner by learner in the order they first handed in, each in the order of the sheet
 */
public record MarkList(List<Mark> marks) {

  public MarkList {
    marks = List.copyOf(marks);
  }

  /**
   * Marks {@code answers}.
   *
   * @param exercises what they answer
   * @throws IllegalArgumentException if an answer belongs to no exercise
   */
  public static MarkList of(List<Answer> answers, List<Exercise> exercises) {
    Map<String, Exercise> byId = new LinkedHashMap<>();
    for (Exercise exercise : exercises) {
      byId.put(exercise.id(), exercise);
    }
    Map<String, List<Mark>> byLearner = new LinkedHashMap<>();
    for (Answer answer : answers) {
      Exercise exercise = byId.get(answer.exercise());
      if (exercise == null) {
        throw new IllegalArgumentException("no exercise has the id '" + answer.exercise() + "'");
      }
      byLearner
          .computeIfAbsent(answer.learner(), learner -> new ArrayList<>())
          .add(Marker.mark(exercise, answer));
    }
    List<Mark> marks = new ArrayList<>();
    byLearner.values().forEach(marks::addAll);
    return new MarkList(marks);
  }

  /** The marks by learner, in order. */
  public Map<String, List<Mark>> byLearner() {
    Map<String, List<Mark>> groups = new LinkedHashMap<>();
    for (Mark mark : marks) {
      groups.computeIfAbsent(mark.answer().learner(), name -> new ArrayList<>()).add(mark);
    }
    return groups;
  }

  /** The marks by id of the exercise, in the order they first appear. */
  public Map<String, List<Mark>> byExercise() {
    Map<String, List<Mark>> groups = new LinkedHashMap<>();
    for (Mark mark : marks) {
      groups.computeIfAbsent(mark.exercise().id(), id -> new ArrayList<>()).add(mark);
    }
    return groups;
  }
}
