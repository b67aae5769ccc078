package ringbook.course.compose;

import java.util.Map;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.exercises.Exercise;
import ringbook.problems.Nearest;

/** Places exercises and counts them through the lesson. */
final class ExerciseWriter {

  private final Scope scope;

  ExerciseWriter(Scope scope) {
    this.scope = scope;
  }

  void write(FenceWriter.Fence fence, Sink sink) {
    String id = fence.rest().toString();
    Map<String, Exercise> exercises = scope.page().course().parts().exercises();
    Exercise exercise = exercises.get(id);
    int offset = id.isEmpty() ? fence.wordOffset() : fence.rest().getStartOffset();
    if (exercise == null && scope.page().course().parts().withFaults().contains(id)) {
      return;
    }
    if (exercise == null) {
      scope.fault(
          offset,
          id.isEmpty() ? "the exercise has no id" : "no exercise is called '" + id + "'",
          id.isEmpty()
              ? "write its id: exercise distance-owl"
              : Nearest.to(id, exercises.keySet())
                  .map(near -> "did you mean '" + near + "'?")
                  .orElse("write it into a file of exercises"));
    } else if (scope.page().isBack()) {
      scope.fault(offset, "an exercise stands in a lesson", "move it there");
    } else if (!sink.takesBlocks()) {
      scope.fault(
          offset,
          "an exercise cannot stand inside a box, a list or a quotation",
          "put it before or after");
    } else if (!scope.dropped() && !scope.page().course().place(id)) {
      scope.fault(
          offset, "the exercise '" + id + "' stands in the course twice", "keep one of them");
    } else if (!scope.dropped()) {
      exercise
          .task()
          .unsolved(exercise.reckoning())
          .ifPresent(
              reason ->
                  scope.fault(
                      offset,
                      "the exercise '" + id + "' cannot be solved as it stands: " + reason,
                      "change its plan, its scene or what it asks for"));
      sink.add(new ExerciseBlock(compose(scope, exercise, scope.page().nextExercise())));
    }
  }

  /** The exercise as the site and the book show it. */
  static ComposedExercise compose(Scope scope, Exercise exercise, int number) {
    WordingWriter words = new WordingWriter(scope, exercise.asked());
    String hint =
        exercise
            .hint()
            .map(
                text ->
                    "<details class=\"hint\"><summary>A hint</summary>\n"
                        + words.blocks(text)
                        + "</details>\n")
            .orElse("");
    ExerciseParts parts = exercise.task().show(new ExerciseParts(exercise, words));
    return new ComposedExercise(
        exercise.id(),
        number,
        exercise.title(),
        words.blocks(exercise.ask()) + parts.question() + hint,
        parts.options(),
        exercise.answerHint(),
        parts.answer(),
        parts.solution(),
        parts.kind());
  }
}
