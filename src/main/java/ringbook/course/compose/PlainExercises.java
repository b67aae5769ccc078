package ringbook.course.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import ringbook.course.ComposedExercise;
import ringbook.course.CourseFile;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.NumberTask;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Wording;
import ringbook.ledger.Reckoning;
import ringbook.problems.Problems;
import ringbook.values.Expressions;

/**
 * Exercises as the marker needs them: the words of the options, slips and reasons are plain text
 * with the values put in, as they can be compared with an answer and told to a learner.
 */
final class PlainExercises {

  private final CourseParts parts;
  private final Set<String> lessons = new LinkedHashSet<>();
  private final Expressions values;

  private PlainExercises(CourseSources sources) {
    this.parts =
        CourseParts.of(
            new ShelfFigures(), sources.exercises(), sources.withFaults(), sources.folder());
    for (CourseFile.LessonRef ref : sources.file().lessons()) {
      lessons.add(ref.id());
    }
    this.values = new Expressions(Reckoning.of(sources.file().scene()), sources.file().otherKits());
  }

  /** All exercises of {@code sources}; faults of their words go to {@code problems}. */
  static List<ExerciseSource> of(CourseSources sources, Problems problems) {
    PlainExercises plain = new PlainExercises(sources);
    List<ExerciseSource> exercises = new ArrayList<>();
    for (VariedExercise exercise : sources.varied()) {
      exercises.add(plain.new Plain(exercise, plain.of(exercise.own(), problems)));
    }
    return exercises;
  }

  /** All exercises with the numbers of one learner, as the book would print them, by id. */
  static Map<String, ComposedExercise> composed(CourseSources sources, String learner) {
    PlainExercises plain = new PlainExercises(sources);
    Map<String, ComposedExercise> composed = new LinkedHashMap<>();
    for (VariedExercise exercise : sources.varied()) {
      Scope scope = plain.scope(new Problems());
      composed.put(exercise.id(), ExerciseWriter.compose(scope, exercise.forLearner(learner), 1));
    }
    return composed;
  }

  private WordingWriter words(Exercise exercise, Problems problems) {
    return new WordingWriter(scope(problems), exercise.asked());
  }

  private Scope scope(Problems problems) {
    CourseScope course = new CourseScope(parts, lessons, problems);
    course.leaveOutOthers(); // nobody follows a link on a marked sheet
    Page page = new Page("marking", course);
    // Every wording brings its own places.
    return new Scope(page, offset -> null, values, false);
  }

  private Exercise of(Exercise exercise, Problems problems) {
    WordingWriter words = words(exercise, problems);
    UnaryOperator<Wording> plain =
        wording -> wording.with(PlainText.of(words.line(wording)).replace('\n', ' '));
    return exercise.with(exercise.task().worded(plain));
  }

  /** An exercise whose words are put in for the book at once and for a learner when asked for. */
  private final class Plain implements ExerciseSource {

    private final VariedExercise varied;
    private final Exercise own;

    private Plain(VariedExercise varied, Exercise own) {
      this.varied = varied;
      this.own = own;
    }

    @Override
    public String id() {
      return varied.id();
    }

    @Override
    public Exercise own() {
      return own;
    }

    @Override
    public String question(Exercise exercise) {
      WordingWriter words = words(exercise, new Problems());
      return PlainText.of(words.blocks(exercise.ask())).strip().replace('\n', ' ');
    }

    @Override
    public boolean varies() {
      return varied.varies();
    }

    @Override
    public Exercise forLearner(String learner) {
      return of(varied.forLearner(learner), new Problems());
    }

    @Override
    public Exercise toJudge(String learner) {
      Exercise exercise = varied.forLearner(learner);
      return exercise.task() instanceof NumberTask ? exercise : of(exercise, new Problems());
    }
  }
}
