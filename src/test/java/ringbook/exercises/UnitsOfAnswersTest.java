package ringbook.exercises;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import ringbook.Scenes;
import ringbook.units.Dimension;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/**
 * Whatever unit a learner answers in, the same value is right. The factors are the published ones
 * of unit-factors.csv, with their sources there; they are not the program's own.
 */
final class UnitsOfAnswersTest {

  private static final Map<Dimension, String> ASKED =
      Map.of(
          Dimension.LENGTH, "subject.height",
          Dimension.ANGLE, "aim.elevation",
          Dimension.SHARE, "aim.fill");

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/ringbook/units/unit-factors.csv", useHeadersInDisplayName = true)
  void any_unit_of_the_kind_is_right(Unit unit, double factor) {
    String key = ASKED.get(unit.dimension());
    if (key == null) {
      return;
    }
    Exercise exercise = Asked.number(Scenes.pot(), key);
    NumberTask task = (NumberTask) exercise.task();
    String number = Numbers.significant(task.truth(exercise.reckoning()) / factor, 4);
    for (String spelling : unit.spellings()) {
      assertThat(Marker.verdict(exercise, number + " " + spelling))
          .as(number + " " + spelling)
          .isEqualTo(new Verdict.Right());
    }
    assertThat(Marker.verdict(exercise, "2" + number + " " + unit.symbol()))
        .as("2" + number + " " + unit.symbol())
        .isNotEqualTo(new Verdict.Right());
  }
}
