package ringbook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.Answer;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Mark;
import ringbook.exercises.Marker;
import ringbook.problems.Problems;

/** What a page knows of the demo's exercises is what the book asks and what {@code mark} says. */
final class PageExercisesTest {

  private static final List<String> LEARNERS = List.of("", "Ada", "zoë");

  private static CourseSources sources;
  private static List<ExerciseSource> exercises;
  private static JsonTree data;

  @BeforeAll
  static void open() throws IOException {
    Problems problems = new Problems();
    sources = CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow();
    exercises = sources.plainSources(problems);
    ComposedCourse course = sources.compose(problems).orElseThrow();
    assertThat(problems.isEmpty()).isTrue();
    String script = course.script();
    data =
        JsonTree.read(script.substring("var RingbookCourse = ".length(), script.lastIndexOf(';')));
    SightPage.open(data.text("course"));
    data.at("exercises").members().values().forEach(exercise -> SightPage.take(exercise.text()));
  }

  private static Exercise posed(ExerciseSource source, String learner) {
    return learner.isEmpty() ? source.own() : source.forLearner(learner);
  }

  /** Answers of all sorts: right, by each slip, without unit, as a letter, nonsense. */
  private static List<String> answers(Exercise exercise) {
    List<String> answers = new ArrayList<>(List.of("", "42 cm", "0.5", "b", "a and c", "brick"));
    String right = exercise.answerText();
    answers.add(right);
    answers.add(right.substring(0, 1));
    answers.add(right.replace('\u00a0', ' ').split(" ", -1)[0]);
    if (exercise.task() instanceof ChoiceTask choice) {
      choice.options().forEach(option -> answers.add(option.text().markdown()));
    }
    return answers;
  }

  @Test
  void a_page_marks_as_the_command_does() {
    assertThat(data.at("exercises").members().keySet())
        .containsExactlyElementsOf(exercises.stream().map(ExerciseSource::id).toList());
    for (ExerciseSource source : exercises) {
      for (String learner : LEARNERS) {
        Exercise exercise = posed(source, learner);
        for (String answer : answers(exercise)) {
          Mark mark = Marker.mark(exercise, new Answer(learner, source.id(), answer));
          JsonTree said = JsonTree.read(SightPage.mark(source.id(), learner, answer));
          assertThat(List.of(said.text("verdict"), said.text("credit"), said.text("happened")))
              .as("%s for '%s', answer '%s'", source.id(), learner, answer)
              .containsExactly(
                  mark.verdict().label(), mark.credit().text(), mark.feedback().happened());
          assertThat(said.at("working").items().stream().map(JsonTree::text).toList())
              .as("%s for %s", source.id(), learner)
              .isEqualTo(mark.feedback().working());
          assertThat(said.text("next")).isEqualTo(mark.feedback().next());
          assertThat(said.text("answer")).isEqualTo(exercise.answerText());
        }
      }
    }
  }
}
