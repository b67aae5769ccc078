package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.Answer;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.FaultTask;
import ringbook.exercises.Feedback;
import ringbook.exercises.Mark;
import ringbook.exercises.Marker;
import ringbook.exercises.NumberTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.PlanTask;
import ringbook.exercises.SeveralTask;
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
  void every_answer_is_told_in_whole_sentences_with_what_to_do_next(Exercise exercise) {
    Marker marker = Marker.of(exercise);
    List<String> answers = new ArrayList<>(exercise.task().show(new WrongAnswers(exercise)));
    answers.add(exercise.answerText());
    for (String answer : answers) {
      Mark mark = marker.mark(new Answer("learner", exercise.id(), answer));
      Feedback feedback = Feedback.of(mark);
      assertThat(feedback.happened()).as(answer).matches("(?s).+[.?]");
      for (String text : told(feedback)) {
        assertThat(text).as(answer).doesNotContain("  ", "..", " .", " ,", "− −", "${", "<", "**");
      }
      if (mark.verdict() instanceof Verdict.Right) {
        assertThat(feedback.next()).isEmpty();
      } else {
        assertThat(feedback.next()).as(answer).matches("(?s)\\p{Lu}.*[.?]");
      }
    }
  }

  private static List<String> told(Feedback feedback) {
    List<String> texts = new ArrayList<>(feedback.working());
    texts.add(feedback.happened());
    texts.add(feedback.next());
    return texts;
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

    @Override
    public List<String> several(SeveralTask task) {
      return List.of("a", "abcdefghi".substring(0, task.options().size()), "z", "none");
    }

    @Override
    public List<String> order(OrderTask task) {
      return List.of("abcdefghi".substring(0, task.steps().size()), "a", "a a b", "no idea");
    }

    @Override
    public List<String> pairs(PairsTask task) {
      return List.of("1a", "abcdefghi".substring(0, task.pairs().size()), "1a 1b", "1", "no idea");
    }

    @Override
    public List<String> fault(FaultTask task) {
      String other = task.fault().item() == 0 ? "b" : "a";
      return List.of(other, other + " " + task.shown(0, exercise.reckoning()), "z", "all");
    }

    @Override
    public List<String> plan(PlanTask task) {
      return List.of("rings: 5 at 15°", "top: 1", "rings: 24 at -80°", "no idea", "24");
    }
  }
}
