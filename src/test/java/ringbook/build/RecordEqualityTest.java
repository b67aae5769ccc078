package ringbook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.site.Browser;

/** The one equality of all records says in a browser what each of them says on the JVM. */
final class RecordEqualityTest {

  @TempDir Path folder;

  @Test
  void records_compare_as_on_the_jvm() throws Exception {
    ScriptCompiler compiler = new ScriptCompiler(Records.class.getName(), true, false, List.of());
    assertThat(compiler.compile(getClass().getClassLoader(), folder, "records.js")).isEmpty();
    Files.writeString(
        folder.resolve("page.html"),
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Records</title>"
            + "<script>var exports = {};</script><script src=\"records.js\"></script>");
    List<Object> expected = new ArrayList<>();
    for (boolean equal : Records.equal(3.5, 0)) {
      expected.add(equal);
    }
    assertThat(expected).contains(true, false);
    try (Browser browser = Browser.start()) {
      browser.open(folder.resolve("page.html"));
      assertThat(browser.run("return Array.from(exports.equal(3.5, 0), equal => !!equal)"))
          .isEqualTo(expected);
      assertThat(browser.run("return exports.different(3.5, 0)"))
          .isEqualTo((long) Records.different(3.5, 0));
    }
  }
}
