package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Marker;
import ringbook.exercises.NumberTask;
import ringbook.exercises.PlanTask;
import ringbook.exercises.Slip;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Verdict;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.problems.Problems;
import ringbook.shots.Subject;
import ringbook.units.Length;
import ringbook.units.Lengths;

/** The variants of every exercise of the course: {@code -Dseeds=5000} walks more learners. */
final class VariantsTest {

  private static final int LEARNERS = Integer.getInteger("seeds", 2000);

  static List<ExerciseSource> exercises() {
    try {
      Problems problems = new Problems();
      List<ExerciseSource> sources =
          CourseSources.read(Path.of("lessons/course.yaml"), problems)
              .orElseThrow()
              .plainSources(problems);
      assertThat(problems.sorted()).isEmpty();
      return sources;
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  static List<CourseSources> course() throws IOException {
    return List.of(
        CourseSources.read(Path.of("lessons/course.yaml"), new Problems()).orElseThrow());
  }

  @ParameterizedTest
  @MethodSource("course")
  void thousands_of_variants_are_good_questions(CourseSources course) {
    course.varied().stream()
        .filter(ExerciseSource::varies)
        .forEach(
            source -> {
              for (int i = 0; i < LEARNERS; i++) {
                isGood(source.own(), source.forLearner("Learner " + i));
              }
            });
  }

  @ParameterizedTest
  @MethodSource("course")
  void what_was_tried_before_changes_nobodys_numbers(CourseSources course) {
    String title = course.file().info().title();
    for (VariedExercise source : course.varied()) {
      for (int i = 0; i < 200; i++) {
        source.forLearner("Learner " + i);
      }
      for (int i = 0; i < 12; i++) {
        Exercise known = source.forLearner("Learner " + i);
        VariedExercise untried = new VariedExercise(title, source.stated(), source.variety());
        Exercise fresh = untried.forLearner("Learner " + i);
        for (String answer : List.of(fresh.answerText(), "31 cm", "2", "c", "7", "5.5 %")) {
          assertThat(Marker.verdict(known, answer)).isEqualTo(Marker.verdict(fresh, answer));
        }
        assertThat(known.solution()).isEqualTo(fresh.solution());
        assertThat(known.reckoning().scene()).isEqualTo(fresh.reckoning().scene());
      }
    }
  }

  private static void isGood(Exercise own, Exercise variant) {
    assertThat(variant.reckoning().scene()).as(own.id()).isNotEqualTo(own.reckoning().scene());
    if (!(variant.task() instanceof NumberTask task)) {
      return;
    }
    Quantity entry = task.entry(variant.reckoning());
    double truth = task.truth(variant.reckoning());
    assertThat(Math.signum(truth)).isEqualTo(Math.signum(task.truth(own.reckoning())));
    assertThat(Double.isFinite(truth)).isTrue();
    List<String> answers = new ArrayList<>();
    answers.add(entry.text(truth));
    for (Slip slip : task.slips()) {
      answers.add(entry.text(slip.value(variant.reckoning())));
    }
    assertThat(new TreeSet<>(answers)).as(own.id()).hasSize(answers.size());
    String given = "${";
    for (String key : variant.reckoning().ledger().keys()) {
      if (variant.ask().markdown().contains(given + key + "}")
          && variant.reckoning().of(key) instanceof Outcome.Known
          && variant.reckoning().ledger().get(key).unit() == entry.unit()) {
        assertThat(variant.reckoning().text(key)).as(own.id()).isNotEqualTo(answers.get(0));
      }
    }
  }

  static List<ExerciseSource> inInches() {
    return InchCourse.exercises();
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void a_variant_is_marked_by_its_own_numbers(ExerciseSource source) {
    assertMarked(source, 30);
  }

  @ParameterizedTest
  @MethodSource("inInches")
  void a_variant_in_inches_is_marked_by_its_own_numbers(ExerciseSource source) {
    boolean plan = source.own().task() instanceof PlanTask;
    assertMarked(source, plan ? 1 : 8);
    assertThat(source.own().reckoning().scene().aim().lengths()).isEqualTo(Lengths.IMPERIAL);
    if (source.varies()) {
      for (int i = 0; i < (plan ? 0 : 40); i++) {
        isGood(source.own(), source.forLearner("Learner " + i));
      }
    }
  }

  private static void assertMarked(ExerciseSource source, int learners) {
    TreeSet<String> different = new TreeSet<>();
    for (int i = 0; i < learners; i++) {
      Exercise variant = source.forLearner("Learner " + i);
      assertThat(Marker.verdict(variant, variant.answerText())).isEqualTo(new Verdict.Right());
      assertThat(variant.answerText()).doesNotContain("${");
      // One plan may fit objects of several sizes.
      boolean plan = variant.task() instanceof PlanTask;
      different.add(plan ? variant.reckoning().scene().toString() : variant.answerText());
      if (variant.task() instanceof NumberTask task) {
        slips(variant, task);
      }
    }
    if (source.varies() && learners > 1) {
      assertThat(different).as("neighbours get different numbers").hasSizeGreaterThan(1);
    }
  }

  private static void slips(Exercise variant, NumberTask task) {
    Quantity entry = task.entry(variant.reckoning());
    for (int i = 0; i < task.slips().size(); i++) {
      String wrong = entry.text(task.slips().get(i).value(variant.reckoning()));
      assertThat(Marker.verdict(variant, wrong))
          .as("%s: %s", variant.id(), wrong)
          .isEqualTo(new Verdict.SlipMade(i));
    }
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void the_same_name_gives_the_same_exercise(ExerciseSource source) {
    Exercise first = source.forLearner("Zoë Müller");
    Exercise again = source.forLearner(" zoe  MULLER");
    assertThat(again.reckoning().scene()).isEqualTo(first.reckoning().scene());
    assertThat(again.answerText()).isEqualTo(first.answerText());
  }

  /** Sizes that an exercise states are such as a tape in inches shows. */
  @ParameterizedTest
  @MethodSource("inInches")
  void sizes_in_inches_are_such_as_people_state(ExerciseSource source) {
    if (source.own().task() instanceof PlanTask) {
      return;
    }
    for (Exercise exercise : List.of(source.own(), source.forLearner("Ida"))) {
      Subject subject = exercise.reckoning().scene().subject();
      if (subject.name().equals(InchCourse.sources().file().scene().subject().name())) {
        continue;
      }
      for (Length size : List.of(subject.height(), subject.width(), subject.depth())) {
        double quarters = size.metres() / 0.0254 * 4;
        if (quarters > 8) {
          assertThat(quarters).as(exercise.id()).isCloseTo(Math.rint(quarters), within(1e-9));
        }
      }
    }
  }

  @Test
  void the_book_keeps_the_numbers_its_author_stated() {
    ExerciseSource owl =
        exercises().stream()
            .filter(exercise -> exercise.id().equals("distance-owl"))
            .findFirst()
            .orElseThrow();
    assertThat(owl.own().reckoning().text("subject.height")).isEqualTo("42\u00a0cm");
  }
}
