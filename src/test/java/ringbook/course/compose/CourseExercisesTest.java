package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.Marker;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Task;
import ringbook.exercises.Verdict;
import ringbook.ledger.Quantity;
import ringbook.problems.Problems;
import ringbook.units.Numbers;

/** Every exercise of the course that comes with the program. */
final class CourseExercisesTest {

  static List<Exercise> exercises() {
    try {
      Problems problems = new Problems();
      List<Exercise> exercises =
          CourseSources.read(Path.of("lessons/course.yaml"), problems)
              .orElseThrow()
              .plainExercises(problems);
      assertThat(problems.sorted()).isEmpty();
      assertThat(exercises).isNotEmpty();
      return exercises;
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void the_answer_of_the_solution_is_right_and_others_are_not(Exercise exercise) {
    assertThat(Marker.verdict(exercise, exercise.answerText())).isEqualTo(new Verdict.Right());
    for (String wrong : exercise.task().show(new WrongAnswers(exercise))) {
      assertThat(Marker.verdict(exercise, wrong)).as(wrong).isNotEqualTo(new Verdict.Right());
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void every_slip_is_told_from_the_right_way(Exercise exercise) {
    if (exercise.task() instanceof NumberTask task) {
      Quantity entry = task.entry(exercise.reckoning());
      for (int i = 0; i < task.slips().size(); i++) {
        String answer = entry.text(task.slips().get(i).value(exercise.reckoning()));
        assertThat(Marker.verdict(exercise, answer)).as(answer).isEqualTo(new Verdict.SlipMade(i));
        assertThat(task.slips().get(i).says().markdown()).doesNotContain("${", "<", "**");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void options_and_reasons_are_plain_text(Exercise exercise) {
    assertThat(exercise.answerText()).doesNotContain("${", "<", "**");
    if (exercise.task() instanceof ChoiceTask choice) {
      for (ChoiceTask.Option option : choice.options()) {
        assertThat(option.because().markdown()).doesNotContain("${", "<", "**").isNotBlank();
      }
    }
  }

  private record WrongAnswers(Exercise exercise) implements Task.Cases<List<String>> {
    @Override
    public List<String> number(NumberTask task) {
      double truth =
          task.entry(exercise.reckoning()).unit().fromSi(task.truth(exercise.reckoning()));
      String unit = task.entry(exercise.reckoning()).unit().symbol();
      return List.of(
          Numbers.significant(2 * truth, 6) + " " + unit,
          Numbers.significant(truth / 2, 6) + " " + unit,
          "0 " + unit,
          "",
          "no idea");
    }

    @Override
    public List<String> choice(ChoiceTask task) {
      return task.options().stream()
          .filter(option -> !option.right())
          .map(option -> option.text().markdown())
          .toList();
    }
  }
}
