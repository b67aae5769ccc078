package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Marker;
import ringbook.exercises.NumberTask;
import ringbook.exercises.Verdict;
import ringbook.units.Lengths;
import ringbook.units.Unit;

/**
 * Solves every number exercise from the numbers in its question alone, with the lesson's formula
 * and {@link Math}, and compares with the key: in the book and for several learners. A new exercise
 * needs its two lines in {@link Solvers}.
 */
final class OutsideSolverTest {

  private static final int LEARNERS = 25;

  static Stream<ExerciseSource> numbers() {
    return VariantsTest.exercises().stream()
        .filter(source -> source.own().task() instanceof NumberTask);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void question_and_key_agree(ExerciseSource source) {
    assertAgree(source, Lengths.METRIC, LEARNERS);
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void a_question_in_inches_leads_to_the_same_key(ExerciseSource source) {
    assertAgree(source, Lengths.IMPERIAL, LEARNERS / 2);
  }

  static Stream<ExerciseSource> numbersInInches() {
    return InchCourse.exercises().stream()
        .filter(source -> source.own().task() instanceof NumberTask);
  }

  @ParameterizedTest
  @MethodSource("numbersInInches")
  void question_and_key_of_a_course_in_inches_agree(ExerciseSource source) {
    assertAgree(source, Lengths.IMPERIAL, LEARNERS / 2);
  }

  private static void assertAgree(ExerciseSource source, Lengths lengths, int learners) {
    assertThat(Solvers.BY_ID)
        .as("an outside solver for the exercise, see Solvers")
        .containsKey(source.id());
    List<Exercise> variants = new ArrayList<>(List.of(source.own()));
    for (int i = 0; i < learners; i++) {
      variants.add(source.forLearner("Learner " + i));
    }
    for (Exercise drawn : variants) {
      Exercise variant = drawn.on(drawn.reckoning().told(lengths));
      QuestionText question = new QuestionText(source.question(variant));
      double solved = Solvers.BY_ID.get(source.id()).applyAsDouble(question);
      assertThat(Marker.verdict(variant, written(variant, solved)))
          .as("%s: %s", variant.answerText(), question)
          .isEqualTo(new Verdict.Right());
      assertThat(Marker.verdict(variant, variant.answerText()))
          .as("%s, as the course prints it", variant.answerText())
          .isEqualTo(new Verdict.Right());
    }
  }

  /** The value in the unit of the answer, with four digits as a calculator user writes it. */
  private static String written(Exercise exercise, double si) {
    Unit unit = ((NumberTask) exercise.task()).entry(exercise.reckoning()).unit();
    double number =
        switch (unit.symbol()) {
          case "µm" -> si / 1e-6;
          case "mm" -> si / 1e-3;
          case "cm" -> si / 1e-2;
          case "°" -> Math.toDegrees(si);
          case "%" -> si / 0.01;
          case "min" -> si / 60;
          case "GB" -> si / 1e9;
          case "MB" -> si / 1e6;
          default -> si;
        };
    String text = String.format(Locale.ROOT, "%.4g", number);
    boolean whole = number == Math.rint(number) && Math.abs(number) < 1e6;
    return (whole ? String.valueOf((long) number) : text) + " " + unit.symbol().replace("f/", "");
  }
}
