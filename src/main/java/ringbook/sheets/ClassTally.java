package ringbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringbook.exercises.Exercise;

/** Counts over a class; holds nothing of single answers but the names of who needs help. */
public final class ClassTally {

  private final List<ExerciseTally> exercises = new ArrayList<>();
  private final TreeSet<String> absent = new TreeSet<>(LearnerOrder.BY_NAME);
  private final long[] learnersByQuarters;
  private long learners;

  ClassTally(List<Exercise> exercises, List<String> expected) {
    exercises.forEach(exercise -> this.exercises.add(new ExerciseTally(exercise)));
    learnersByQuarters = new long[4 * exercises.size() + 1];
    absent.addAll(expected);
  }

  void add(LearnerMarks marks) {
    learners++;
    absent.remove(marks.learner());
    learnersByQuarters[marks.quarters()]++;
    for (OneMark mark : marks.marks()) {
      exercises.get(mark.exercise()).add(marks.learner(), mark);
    }
  }

  /** One for each exercise that somebody handed in, in the order of the course. */
  public List<ExerciseTally> asked() {
    return exercises.stream().filter(exercise -> exercise.handedIn() > 0).toList();
  }

  /** How many learners handed in something. */
  public long learners() {
    return learners;
  }

  /** Who is on the class list and handed in nothing, by name. */
  public List<String> absent() {
    return List.copyOf(absent);
  }

  /** The points of the learners who handed in something. */
  public Points points() {
    return new Points(learnersByQuarters, asked().size());
  }
}
