package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.Answer;
import ringbook.exercises.Credit;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.Mark;
import ringbook.exercises.Marker;
import ringbook.exercises.PlanTask;
import ringbook.figures.Figure;
import ringbook.figures.FigureShelf;

/**
 * Writes a plan for every exercise that asks for one, by the five steps of the lesson on rings at
 * heights alone: the table of the first step is read from the lesson, the numbers from the
 * question. What a person recognises in a question stands in {@link #READINGS}, by the words of the
 * question that say it. Every such plan must earn full marks.
 */
final class PlanStepsTest {

  private static final int LEARNERS = 5;

  private static final String WALLS = "Upright walls";
  private static final String FACES_DOWN = "A part that faces down";
  private static final String FLAT = "A flat thing: its upper face and its rim";
  private static final String LEVEL_TOP = "Walls and a level top";
  private static final String HOLLOW = "A hollow, a hole, deep folds";

  /** Lowest and highest ring of each line, in degrees, as the lesson prints them. */
  private static final Map<String, double[]> LINES = lines();

  /**
   * What a question says.
   *
   * @param words of the question
   * @param pose 1, or 2 for turned over
   * @param line of the lesson's table that applies
   * @param open whether something is open at the top then
   */
  private record Reading(String words, int pose, String line, boolean open) {}

  private static final Map<String, List<Reading>> READINGS =
      Map.of(
          "plan-owl", List.of(says("so part of it faces down", FACES_DOWN)),
          "plan-coin", List.of(says("its upper face and its rim are wanted", FLAT)),
          "plan-pot", List.of(open("open at the top", 1)),
          "plan-chair", List.of(says("level seat", LEVEL_TOP)),
          "plan-mask", List.of(says("Its eyes are hollowed out", HOLLOW)),
          "plan-boot", List.of(open("Its shaft is open at the top", 1)),
          "plan-ammonite",
              List.of(open("a hole through its middle", 1), open("Both sides are wanted", 2)),
          "plan-bell", List.of(says("with a level top", LEVEL_TOP), open("hollow", 2)),
          "plan-hollow",
              List.of(says("Its belly hangs over", FACES_DOWN), open("The foot is hollow", 2)),
          "own-plan", List.of(open("pot", 1)));

  private static Reading says(String words, String line) {
    return new Reading(words, 1, line, false);
  }

  private static Reading open(String words, int pose) {
    return new Reading(words, pose, HOLLOW, true);
  }

  private static Map<String, double[]> lines() {
    try {
      Map<String, double[]> lines = new TreeMap<>();
      Matcher row =
          Pattern.compile("(?m)^\\| ([^|]+) \\| ([−\\d]+)° \\| ([−\\d]+)° \\|$")
              .matcher(Files.readString(Path.of("lessons/08-rings-at-heights.md")));
      while (row.find()) {
        lines.put(row.group(1), new double[] {degrees(row.group(2)), degrees(row.group(3))});
      }
      return lines;
    } catch (IOException gone) {
      throw new java.io.UncheckedIOException(gone);
    }
  }

  private static double degrees(String printed) {
    return Double.parseDouble(printed.replace('−', '-'));
  }

  static Stream<ExerciseSource> plans() {
    return VariantsTest.exercises().stream()
        .filter(source -> source.own().task() instanceof PlanTask);
  }

  @Test
  void the_table_of_the_lesson_has_the_lines_that_are_read() {
    assertThat(LINES).containsOnlyKeys(WALLS, FACES_DOWN, FLAT, LEVEL_TOP, HOLLOW);
  }

  @ParameterizedTest
  @MethodSource("plans")
  void the_steps_of_the_lesson_lead_to_full_marks(ExerciseSource source) {
    assertThat(READINGS).as("what the question says, see READINGS").containsKey(source.id());
    List<Exercise> variants = new ArrayList<>(List.of(source.own()));
    for (int i = 0; source.varies() && i < LEARNERS; i++) {
      variants.add(source.forLearner("Learner " + i));
    }
    for (Exercise variant : variants) {
      String plan = new Steps(variant, source.question(variant)).plan();
      Mark mark = Marker.mark(variant, new Answer("Nora", source.id(), plan));
      assertThat(mark.credit())
          .as("%s: %s", plan, mark.feedback().happened())
          .isEqualTo(Credit.FULL);
    }
  }

  /** The five steps for one question. */
  private static final class Steps {

    private static final double HIGH_NOON = 180;

    private final Exercise exercise;
    private final String question;
    private final double limit;

    Steps(Exercise exercise, String question) {
      this.exercise = exercise;
      this.question = question.replaceAll("\\s+", " ");
      limit = find("largest turn between neighbours is ([\\d.]+)°")[0];
    }

    private double[] find(String pattern) {
      Matcher matcher = Pattern.compile(pattern).matcher(question);
      assertThat(matcher.find()).as("'%s' in: %s", pattern, question).isTrue();
      double[] numbers = new double[matcher.groupCount()];
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = degrees(matcher.group(i + 1));
      }
      return numbers;
    }

    String plan() {
      List<Reading> readings = READINGS.get(exercise.id());
      readings.forEach(reading -> assertThat(question).contains(reading.words()));
      double[] first = ends(1);
      if (readings.stream().noneMatch(reading -> reading.pose() == 2)) {
        return pose(1, first[0], first[1]);
      }
      double lowest = Math.min(0, first[0]);
      return pose(1, lowest, first[1]) + "; turned over: " + pose(2, -lowest, ends(2)[1]);
    }

    /** The lowest and the highest ring of all lines that apply in a pose. */
    private double[] ends(int pose) {
      double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
      for (Reading reading : READINGS.get(exercise.id())) {
        if (reading.pose() == pose) {
          ends[0] = Math.min(ends[0], LINES.get(reading.line())[0]);
          ends[1] = Math.max(ends[1], LINES.get(reading.line())[1]);
        }
      }
      return ends;
    }

    private String pose(int pose, double lowest, double highest) {
      double most = limit * 2 / 3;
      int steps = (int) Math.ceil((highest - lowest) / most - 1e-9);
      double step = steps == 0 ? most : (highest - lowest) / steps;
      List<String> rings = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        rings.add(ring(lowest + i * step));
      }
      boolean open =
          READINGS.get(exercise.id()).stream()
              .anyMatch(reading -> reading.pose() == pose && reading.open());
      long top = Math.round(Math.ceil((HIGH_NOON - 2 * highest) / step - 1e-9)) - 1;
      return "rings: " + String.join(", ", rings) + (open ? "; top: " + top : "");
    }

    private String ring(double at) {
      boolean arc = question.contains("walk only from");
      double[] ends =
          arc ? find("walk only from (−?\\d+)° .* to (−?\\d+)°") : new double[] {0, 360};
      double squeezed = (ends[1] - ends[0]) / limit * Math.cos(Math.toRadians(at));
      long photos = Math.round(Math.ceil(squeezed - 1e-9)) + (arc ? 1 : 0);
      return photos + " at " + at + "°" + (arc ? " from" + between(ends) : without());
    }

    /** The arc that the question or the ring plan shows as blocked. */
    private String without() {
      if (question.contains("nobody can stand between")) {
        return " without" + between(find("nobody can stand between (−?\\d+)° and (−?\\d+)°"));
      }
      if (!question.contains("the ring plan in")) {
        return "";
      }
      Map<String, String> shown = new TreeMap<>();
      Figure ringPlan = FigureShelf.draw("ring-plan", Map.of(), exercise.reckoning(), "p");
      ringPlan.tableRows().forEach(row -> shown.put(row.get(0), row.get(1)));
      double turn = degrees(shown.get("Real turn").replace("°", ""));
      String[] blocked = shown.get("Blocked stations").split(" to ", -1);
      // Station 1 is on the near side; the free ones are one before and one after.
      double before = -90 + (degrees(blocked[0]) - 2) * turn;
      double after = -90 + degrees(blocked[1]) * turn;
      return " without" + between(new double[] {before, after});
    }

    private static String between(double[] ends) {
      return " " + ends[0] + "° to " + ends[1] + "°";
    }
  }
}
