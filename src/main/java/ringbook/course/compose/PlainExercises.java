package ringbook.course.compose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import ringbook.course.CourseFile;
import ringbook.course.values.Expressions;
import ringbook.exercises.Exercise;
import ringbook.exercises.Wording;
import ringbook.ledger.Reckoning;
import ringbook.problems.Problems;

/**
 * Exercises as the marker needs them: the words of the options and of their reasons are plain text
 * with the values put in, as they can be compared with an answer and told to a learner.
 */
final class PlainExercises {

  private final Scope scope;

  private PlainExercises(Scope scope) {
    this.scope = scope;
  }

  /** All exercises of {@code sources}; faults of their words go to {@code problems}. */
  static List<Exercise> of(CourseSources sources, Problems problems) {
    Set<String> lessons = new LinkedHashSet<>();
    for (CourseFile.LessonRef ref : sources.file().lessons()) {
      lessons.add(ref.id());
    }
    CourseParts parts =
        CourseParts.of(
            new ShelfFigures(), sources.exercises(), sources.withFaults(), sources.folder());
    Page page = new Page("marking", new CourseScope(parts, lessons, problems));
    Expressions values =
        new Expressions(Reckoning.of(sources.file().scene()), sources.file().otherKits());
    // Every wording brings its own places.
    Scope scope = new Scope(page, offset -> null, values, false);
    PlainExercises plain = new PlainExercises(scope);
    List<Exercise> exercises = new ArrayList<>();
    for (Exercise exercise : sources.exercises()) {
      exercises.add(plain.of(exercise));
    }
    return exercises;
  }

  private Exercise of(Exercise exercise) {
    WordingWriter words = new WordingWriter(scope, exercise.reckoning());
    UnaryOperator<Wording> plain =
        wording -> wording.with(PlainText.of(words.line(wording)).replace('\n', ' '));
    return exercise.with(exercise.task().worded(plain));
  }
}
