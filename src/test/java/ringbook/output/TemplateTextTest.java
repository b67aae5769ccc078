package ringbook.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What templates leave to the program, as it hangs on the numbers that come. */
final class TemplateTextTest {

  static List<Path> templates() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("site"))) {
      return all.filter(file -> file.toString().endsWith(".ftlh")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("templates")
  void no_count_stands_before_a_plural_that_is_always_one(Path template) throws IOException {
    assertThat(Files.readString(template))
        .doesNotContainPattern(
            "\\}[ \u00a0](photographs|stations|stops|runs|rings|exercises|points|pages)\\b");
  }
}
