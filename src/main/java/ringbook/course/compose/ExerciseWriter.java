package ringbook.course.compose;

import java.util.Map;
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
    if (!exercises.containsKey(id)) {
      scope.fault(
          id.isEmpty() ? fence.wordOffset() : fence.rest().getStartOffset(),
          id.isEmpty() ? "the exercise has no id" : "no exercise is called '" + id + "'",
          Nearest.help(id, exercises.keySet()));
    }
  }
}
