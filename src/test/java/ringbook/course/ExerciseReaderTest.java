package ringbook.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.Marker;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Verdict;
import ringbook.problems.Position;
import ringbook.problems.Problem;
import ringbook.problems.Problems;

final class ExerciseReaderTest {

  private static final Path CATALOGUE = Path.of("src/test/resources/ringbook/course/bad-exercises");

  private static final CourseFile DEMO = demo();

  private final Problems problems = new Problems();

  private List<Exercise> read(String text) {
    ExerciseReader reader = new ExerciseReader(DEMO, problems);
    reader.read("exercises.yaml", text);
    return reader.exercises();
  }

  private static CourseFile demo() {
    try {
      String text = Files.readString(Path.of("lessons/course.yaml"));
      return CourseFileReader.read("course.yaml", text, new Problems()).orElseThrow();
    } catch (IOException gone) {
      throw new java.io.UncheckedIOException(gone);
    }
  }

  @Test
  void reads_a_number_asked_on_a_changed_scene() {
    List<Exercise> exercises =
        read(
            """
            - id: owl
              title: The stone owl
              kind: number
              ask: |

                How *tall* is it?
              quantity: subject.height
              tolerance: 3 %
              hint: Measure it.
              scene:
                kit: lens camera
                subject: {name: stone owl, height: 45 cm}
            """);
    assertThat(problems.sorted()).isEmpty();
    Exercise owl = exercises.get(0);
    assertThat(owl.answerHint()).isEqualTo("a length, with its unit");
    assertThat(owl.answerText()).isEqualTo("45\u00a0cm");
    assertThat(owl.reckoning().scene().kit().name()).isEqualTo("camera with interchangeable lens");
    assertThat(owl.reckoning().scene().subject().name()).isEqualTo("stone owl");
    assertThat(owl.ask().markdown()).isEqualTo("How *tall* is it?");
    assertThat(owl.ask().at()).isEqualTo(new Position("exercises.yaml", 6, 5));
    assertThat(owl.hint().orElseThrow().at()).isEqualTo(new Position("exercises.yaml", 9, 9));
    assertThat(Marker.verdict(owl, "46 cm")).isEqualTo(new Verdict.Right());
  }

  @Test
  void reads_a_choice() {
    List<Exercise> exercises =
        read(
            """
            - id: ring-five
              title: Five photographs
              kind: choice
              ask: Are five enough?
              options:
                - text: "yes"
                  because: Five see all sides, but no two see the same spot.
                - text: "no"
                  right: true
                  because: Neighbours must share what they see.
            """);
    assertThat(problems.sorted()).isEmpty();
    assertThat(exercises.get(0).answerHint()).isEqualTo("one letter: a or b");
    assertThat(exercises.get(0).answerText()).isEqualTo("b) no");
    ChoiceTask task = (ChoiceTask) exercises.get(0).task();
    assertThat(task.options().get(1).because().markdown())
        .isEqualTo("Neighbours must share what they see.");
  }

  @Test
  void options_that_print_alike_make_no_variant() {
    ExerciseReader reader = new ExerciseReader(DEMO, problems);
    reader.read(
        "exercises.yaml",
        """
        - id: longest
          title: The longest side
          kind: choice
          ask: Which side is longest?
          scene:
            subject: {outline: rectangular, width: 20 cm, depth: 19 cm}
          vary:
            subject: {width: 20 cm to 22 cm by 1 cm, depth: 19 cm to 20 cm by 1 cm}
          options:
            - {text: "${subject.width}", right: true, because: It is.}
            - {text: "${subject.depth}", because: It is not.}
        """);
    assertThat(problems.sorted()).isEmpty();
    VariedExercise varied = reader.varied().get(0);
    for (int i = 0; i < 200; i++) {
      Exercise variant = varied.forLearner("Learner " + i);
      assertThat(variant.reckoning().text("subject.width"))
          .isNotEqualTo(variant.reckoning().text("subject.depth"));
    }
  }

  @Test
  void an_exercise_with_a_fault_does_not_hide_the_others() {
    List<Exercise> exercises =
        read(
            """
            - {id: a, title: A, kind: number, ask: A?, quantity: nothing.here}
            - {id: b, title: B, kind: number, ask: B?, quantity: subject.width}
            """);
    assertThat(problems.size()).isEqualTo(1);
    assertThat(exercises).extracting(Exercise::id).containsExactly("b");
  }

  static Stream<String> catalogue() throws IOException {
    try (Stream<Path> files = Files.list(CATALOGUE)) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".yaml"))
              .map(name -> name.substring(0, name.length() - ".yaml".length()))
              .sorted()
              .toList();
      assertThat(names).hasSizeGreaterThan(10);
      return names.stream();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("catalogue")
  void tells_what_to_mend_and_where(String name) throws IOException {
    read(Files.readString(CATALOGUE.resolve(name + ".yaml")));
    String told =
        problems.sorted().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    Path expected = CATALOGUE.resolve(name + ".expected");
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(expected, told + "\n");
    }
    assertThat(told).isEqualTo(Files.readString(expected).strip());
  }
}
