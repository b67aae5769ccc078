package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.course.compose.CourseSources;
import ringbook.plans.WrittenPlan;
import ringbook.problems.Problems;

/** The course's exercises that ask for a plan: right, failing for a known cause, wasteful. */
final class PlanExercisesTest {

  private static final Map<String, Exercise> EXERCISES = exercises();

  private static Map<String, Exercise> exercises() {
    try {
      Problems problems = new Problems();
      Map<String, Exercise> plans = new TreeMap<>();
      for (Exercise exercise :
          CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow().exercises()) {
        if (exercise.task() instanceof PlanTask) {
          plans.put(exercise.id(), exercise);
        }
      }
      return plans;
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  static List<Exercise> all() {
    return List.copyOf(EXERCISES.values());
  }

  @Test
  void there_are_eight_of_them() {
    assertThat(EXERCISES).hasSizeGreaterThanOrEqualTo(8);
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_authors_plan_passes_with_full_marks(Exercise exercise) {
    assertThat(exercise.task().unsolved(exercise.reckoning())).isEmpty();
    assertThat(Marker.verdict(exercise, exercise.answerText())).isEqualTo(new Verdict.Right());
  }

  /** Every plan of the list, and what is found and said about it. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "plans.csv", numLinesToSkip = 1, delimiter = '|')
  void a_fault_is_found_and_named(
      String id, String plan, String label, String credit, String words) {
    Exercise exercise = EXERCISES.get(id);
    Mark mark = Marker.mark(exercise, new Answer("Nora", id, plan));
    assertThat(mark.verdict().label()).as(mark.feedback().happened()).isEqualTo(label);
    assertThat(mark.credit().text()).isEqualTo(credit);
    assertThat(mark.feedback().happened()).contains(words);
    assertThat(mark.feedback().working()).isNotEmpty();
  }

  /** Twice as many patches: the same verdict. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "plans.csv", numLinesToSkip = 1, delimiter = '|')
  void a_finer_surface_gives_the_same_verdict(String id, String plan) {
    Exercise exercise = EXERCISES.get(id);
    PlanTask task = (PlanTask) exercise.task();
    WrittenPlan written = WrittenPlan.read(plan).plan().orElseThrow();
    PlanCheck usual = task.check(written, exercise.reckoning());
    PlanCheck finer = task.check(written, exercise.reckoning(), 2 * PlanGround.PATCHES);
    assertThat(finer.lacks().stream().map(PlanCheck.Lack::kind).toList())
        .as("%s shown, finer %s", usual.shown(), finer.shown())
        .isEqualTo(usual.lacks().stream().map(PlanCheck.Lack::kind).toList());
  }

  /** Marking one plan when its scene is known takes half a second of the processor at most. */
  @Test
  void a_plan_is_marked_quickly() {
    Exercise owl = EXERCISES.get("plan-owl");
    String failing = "rings: 24 at 15°, 21 at 30°";
    long best = Long.MAX_VALUE;
    for (int i = 0; i < 5; i++) {
      long start = processor();
      Marker.verdict(owl, failing);
      best = Math.min(best, processor() - start);
    }
    assertThat(TimeUnit.NANOSECONDS.toMillis(best)).isLessThan(500);
  }

  private static long processor() {
    return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  @Test
  void more_photographs_are_worth_less() {
    PlanTerms terms = new PlanTerms(0.95, 1.4);
    assertThat(terms.most(100)).isEqualTo(140);
    assertThat(terms.worth(140, 140)).isEqualTo(Credit.FULL);
    assertThat(terms.worth(210, 140)).isEqualTo(Credit.THREE_QUARTERS);
    assertThat(terms.worth(280, 140)).isEqualTo(Credit.HALF);
    assertThat(terms.worth(281, 140)).isEqualTo(Credit.QUARTER);
    assertThat(terms.part(0.8, true)).isEqualTo(Credit.HALF);
    assertThat(terms.part(0.8, false)).isEqualTo(Credit.QUARTER);
    assertThat(terms.part(0.4, true)).isEqualTo(Credit.NONE);
  }
}
