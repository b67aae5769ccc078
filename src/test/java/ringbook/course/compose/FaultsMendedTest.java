package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.FaultTask;
import ringbook.exercises.Marker;
import ringbook.exercises.Verdict;

/**
 * Mends every fault that an exercise of the course may have, from the numbers printed in question
 * and table alone, with the lesson's formula and {@link Math}: in the book and for several
 * learners. Whoever does so is right, however the result is rounded; whoever keeps the wrong value
 * is not. A new fault exercise needs its lines in {@link FaultSolvers}.
 */
final class FaultsMendedTest {

  private static final int LEARNERS = Integer.getInteger("seeds", 25);

  static Stream<ExerciseSource> mended() {
    return VariantsTest.exercises().stream()
        .filter(source -> source.own().task() instanceof FaultTask task && task.mend());
  }

  static Stream<ExerciseSource> mendedInInches() {
    return InchCourse.exercises().stream()
        .filter(source -> source.own().task() instanceof FaultTask task && task.mend());
  }

  private static List<Exercise> variants(ExerciseSource source) {
    List<Exercise> variants = new ArrayList<>(List.of(source.own()));
    for (int i = 0; i < LEARNERS; i++) {
      variants.add(source.forLearner("Learner " + i));
    }
    return variants;
  }

  /** The same exercise, fault by fault. */
  private static List<Exercise> faults(Exercise exercise) {
    FaultTask task = (FaultTask) exercise.task();
    List<Exercise> all = new ArrayList<>();
    for (int i = 0; i < task.faults().size(); i++) {
      all.add(exercise.with(task.with(i)));
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource({"mended", "mendedInInches"})
  void what_is_worked_out_from_the_printed_numbers_is_right(ExerciseSource source) {
    Set<String> refused = new LinkedHashSet<>();
    for (Exercise variant : variants(source)) {
      for (Exercise exercise : faults(variant)) {
        PrintedTable table = new PrintedTable(source.question(exercise), exercise.listed());
        int line = ((FaultTask) exercise.task()).fault().item() + 1;
        String key = source.id() + " " + line;
        assertThat(FaultSolvers.BY_LINE).as("an outside solver, see FaultSolvers").containsKey(key);
        int number = 0;
        for (FaultSolvers.Way way : FaultSolvers.BY_LINE.get(key)) {
          number++;
          for (String written : writings(way.value(table), table, line)) {
            String answer = letter(line) + " " + written;
            if (!Marker.verdict(exercise, answer).equals(new Verdict.Right())) {
              refused.add(
                  key
                      + ", way "
                      + number
                      + ": "
                      + answer
                      + " for "
                      + exercise.answerText()
                      + ": "
                      + table);
            }
          }
        }
      }
    }
    assertThat(refused).isEmpty();
  }

  @ParameterizedTest
  @MethodSource({"mended", "mendedInInches"})
  void the_wrong_value_is_never_right(ExerciseSource source) {
    Set<String> passed = new TreeSet<>();
    for (Exercise variant : variants(source)) {
      for (Exercise exercise : faults(variant)) {
        PrintedTable table = new PrintedTable(source.question(exercise), exercise.listed());
        int line = ((FaultTask) exercise.task()).fault().item() + 1;
        for (String written : writings(table.item(line), table, line)) {
          String answer = letter(line) + " " + written;
          if (Marker.verdict(exercise, answer).equals(new Verdict.Right())) {
            passed.add(source.id() + ": " + answer + " for " + exercise.answerText());
          }
        }
      }
    }
    assertThat(passed).isEmpty();
  }

  @Test
  void every_solver_has_its_line() {
    Set<String> lines = new TreeSet<>();
    mended()
        .forEach(
            source ->
                ((FaultTask) source.own().task())
                    .faults()
                    .forEach(fault -> lines.add(source.id() + " " + (fault.item() + 1))));
    assertThat(FaultSolvers.BY_LINE.keySet()).isEqualTo(lines);
  }

  /** As a calculator gives it, with four and three digits, and with the decimals of the table. */
  private static Set<String> writings(double si, PrintedTable table, int line) {
    String unit = table.unit(line);
    BigDecimal number = new BigDecimal(si / PrintedTable.FACTORS.getOrDefault(unit, 1.0));
    BigDecimal shown = number.round(new MathContext(9, RoundingMode.HALF_UP));
    Set<String> all = new LinkedHashSet<>();
    if (unit.isEmpty()) {
      all.add(shown.setScale(0, RoundingMode.HALF_UP).toPlainString());
    } else {
      all.add(shown.toPlainString() + " " + unit);
      all.add(shown.round(new MathContext(4, RoundingMode.HALF_UP)).toPlainString() + " " + unit);
      all.add(shown.round(new MathContext(3, RoundingMode.HALF_UP)).toPlainString() + " " + unit);
      BigDecimal likeTable = shown.setScale(table.decimals(line), RoundingMode.HALF_UP);
      if (likeTable.precision() >= 2) { // one digit is rounded too far
        all.add(likeTable.toPlainString() + " " + unit);
      }
    }
    return all;
  }

  private static char letter(int line) {
    return (char) ('a' + line - 1);
  }
}
