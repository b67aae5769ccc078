package ringbook.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.site.Browser;

/** Without a check before it, every use of null is stopped all the same, as on the JVM. */
final class NullLeftToEngineTest {

  private static final String TRY =
      """
      return Array.from({length: exports.ways()}, (_, way) => {
        try {
          return exports.of(way);
        } catch (stopped) {
          return 'stopped';
        }
      })\
      """;

  @TempDir Path folder;

  @Test
  void every_use_of_null_stops() throws Exception {
    for (int way : IntStream.range(0, Nulls.ways()).toArray()) {
      assertThatThrownBy(() -> Nulls.of(way)).isInstanceOf(NullPointerException.class);
    }
    ScriptCompiler compiler = new ScriptCompiler(Nulls.class.getName(), true, false, List.of());
    assertThat(compiler.compile(getClass().getClassLoader(), folder, "nulls.js")).isEmpty();
    Files.writeString(
        folder.resolve("page.html"),
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Nulls</title>"
            + "<script>var exports = {};</script><script src=\"nulls.js\"></script>");
    try (Browser browser = Browser.start()) {
      browser.open(folder.resolve("page.html"));
      assertThat((List<?>) browser.run(TRY))
          .hasSize(Nulls.ways())
          .allMatch("stopped"::equals, "is stopped");
    }
  }
}
