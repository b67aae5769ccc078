package ringbook.course.compose;

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
import ringbook.problems.Problem;

/**
 * The catalogue of faults: each broken lesson stands beside the full text that is told of it.
 * {@code -Dgolden=write} writes the texts anew; read the difference like code.
 */
final class BadLessonsTest {

  private static final Path FOLDER = Path.of("src/test/resources/ringbook/course/bad-lessons");

  static Stream<String> names() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".md"))
          .map(name -> name.substring(0, name.length() - ".md".length()))
          .sorted()
          .toList()
          .stream();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("names")
  void tells_every_fault_at_its_place(String name) throws IOException {
    String told = told(name);
    Path expected = FOLDER.resolve(name + ".expected");
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(expected, told);
    }
    assertThat(told).isEqualTo(Files.readString(expected));
  }

  @Test
  void five_faults_of_five_kinds_are_told_at_once() throws IOException {
    assertThat(told("five-faults").lines().filter(line -> line.contains(": error: "))).hasSize(5);
  }

  private static String told(String name) throws IOException {
    String text = Files.readString(FOLDER.resolve(name + ".md"));
    Composer.Result result =
        Lessons.compose(List.of(new LessonSource(name + ".md", text)), FOLDER, name);
    assertThat(result.course()).isEmpty();
    return result.problems().stream()
        .map(Problem::toString)
        .collect(Collectors.joining("\n", "", "\n"));
  }
}
