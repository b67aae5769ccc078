package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Task;
import ringbook.ledger.Working;
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
    } else if (!sink.takesBlocks()) {
      scope.fault(
          offset,
          "an exercise cannot stand inside a box, a list or a quotation",
          "put it before or after");
    } else if (!scope.dropped() && !scope.page().course().place(id)) {
      scope.fault(
          offset, "the exercise '" + id + "' stands in the course twice", "keep one of them");
    } else if (!scope.dropped()) {
      sink.add(new ExerciseBlock(compose(exercise, scope.page().nextExercise())));
    }
  }

  private ComposedExercise compose(Exercise exercise, int number) {
    WordingWriter words = new WordingWriter(scope, exercise.reckoning());
    String hint =
        exercise
            .hint()
            .map(
                text ->
                    "<details class=\"hint\"><summary>A hint</summary>\n"
                        + words.blocks(text)
                        + "</details>\n")
            .orElse("");
    Parts parts = exercise.task().show(new Parts(exercise, words));
    return new ComposedExercise(
        exercise.id(),
        number,
        exercise.title(),
        words.blocks(exercise.ask()) + hint,
        parts.options,
        exercise.answerHint(),
        parts.answer,
        parts.solution);
  }

  /** What differs between the kinds of task. */
  private static final class Parts implements Task.Cases<Parts> {

    private final Exercise exercise;
    private final WordingWriter words;
    private final List<ComposedExercise.Option> options = new ArrayList<>();
    private String answer = "";
    private String solution = "";

    private Parts(Exercise exercise, WordingWriter words) {
      this.exercise = exercise;
      this.words = words;
    }

    @Override
    public Parts number(NumberTask task) {
      answer = exercise.answerText();
      List<Working> workings = exercise.workings();
      StringBuilder steps = new StringBuilder();
      for (Working working : workings) {
        String name = exercise.reckoning().ledger().get(working.key()).name();
        steps
            .append("<div class=\"working\">\n")
            .append(workings.size() > 1 ? "<p class=\"step\">" + Xhtml.text(name) + "</p>\n" : "")
            .append(WorkingWriter.steps(working, exercise.reckoning()))
            .append("</div>\n");
      }
      solution =
          workings.size() > 1 ? "<div class=\"chain\">\n" + steps + "</div>\n" : steps.toString();
      return this;
    }

    @Override
    public Parts choice(ChoiceTask task) {
      StringBuilder reasons = new StringBuilder("<ul class=\"reasons\">\n");
      for (int i = 0; i < task.options().size(); i++) {
        ChoiceTask.Option option = task.options().get(i);
        String letter = String.valueOf(ChoiceTask.letter(i));
        String text = words.line(option.text());
        options.add(new ComposedExercise.Option(letter, text));
        reasons
            .append("<li><b>")
            .append(letter)
            .append(option.right() ? ", right:" : ", wrong:")
            .append("</b> ")
            .append(words.line(option.because()))
            .append("</li>\n");
        if (option.right()) {
          answer = letter + ") " + PlainText.of(text);
        }
      }
      solution = reasons.append("</ul>\n").toString();
      return this;
    }
  }
}
