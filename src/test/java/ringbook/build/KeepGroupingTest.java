package ringbook.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.teavm.model.ClassHolderTransformer;
import ringbook.site.Browser;

/** The compiler drops brackets of sums, and the pass keeps them; by the bits, in a browser. */
final class KeepGroupingTest {

  private static final int TRIALS = 300;

  @TempDir Path folder;

  @Test
  void brackets_count_only_with_the_pass() throws Exception {
    compile("plain.js", List.of());
    compile("kept.js", List.of(new KeepGrouping()));
    try (Browser browser = Browser.start()) {
      assertThat(differences(browser, "kept.js")).isEmpty();
      assertThat(differences(browser, "plain.js"))
          .as("once the compiler keeps brackets by itself, the pass can go")
          .isNotEmpty();
    }
  }

  private void compile(String name, List<ClassHolderTransformer> passes) {
    ScriptCompiler compiler = new ScriptCompiler(Grouping.class.getName(), true, false, passes);
    assertThat(compiler.compile(getClass().getClassLoader(), folder, name)).isEmpty();
  }

  /** The shapes that come out otherwise than on the JVM. */
  private Set<Integer> differences(Browser browser, String script) throws Exception {
    Path page = folder.resolve(script + ".html");
    Files.writeString(
        page,
        "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><title>Sums</title>"
            + ("<script>var exports = {};</script><script src=\"" + script + "\"></script>"));
    browser.open(page);
    SplittableRandom random = new SplittableRandom(1);
    List<List<Double>> numbers = new ArrayList<>();
    for (int trial = 0; trial < TRIALS; trial++) {
      numbers.add(List.of(random.nextDouble(), 3 * random.nextDouble(), random.nextDouble() / 7));
    }
    List<?> answers =
        (List<?>)
            browser.run("return arguments[0].map(n => Array.from(exports.of(...n)))", numbers);
    Set<Integer> different = new TreeSet<>();
    for (int trial = 0; trial < TRIALS; trial++) {
      List<Double> in = numbers.get(trial);
      double[] expected = Grouping.of(in.get(0), in.get(1), in.get(2));
      for (int i = 0; i < expected.length; i++) {
        Number found = (Number) ((List<?>) answers.get(trial)).get(i);
        if (found.doubleValue() != expected[i]) {
          different.add(i);
        }
      }
    }
    return different;
  }
}
