package ringbook.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.teavm.diagnostics.DefaultProblemTextConsumer;
import org.teavm.diagnostics.Problem;
import org.teavm.model.CallLocation;

/**
 * Compiles the calculations into two classic scripts that pages load from disk: {@code calc.js} is
 * {@code RingbookCalc}, with the functions of {@code ringbook.browser.Page}; {@code sight.js} is
 * {@code RingbookSightOf}, the function that makes those of {@code ringbook.browser.SightPage}, for
 * a worker, which takes its program as text.
 *
 * <p>Where nothing has changed that goes into a script, it is not made again: its first line
 * carries the mark of the classes it was made from.
 */
public final class PageScript {

  private static final String DONE = "\nreturn exports;\n}";

  /** What an entry class is made into. */
  private enum Script {
    CALC("calc", "Page", true, "\nvar RingbookCalc = (function (exports) {\n", DONE + ")({});\n"),
    SIGHT("sight", "SightPage", false, "\nfunction RingbookSightOf(exports) {\n", DONE + "\n");

    private final String file;
    private final String entry;

    /** Whether casts and indices are checked; see {@link ScriptCompiler}. */
    private final boolean checked;

    private final String before;
    private final String after;

    Script(String file, String entry, boolean checked, String before, String after) {
      this.file = file;
      this.checked = checked;
      this.entry = "ringbook.browser." + entry;
      this.before = before;
      this.after = after;
    }
  }

  private final Script script;
  private final Path to;
  private final boolean readable;
  private final MadeFrom from;

  private PageScript(Script script, Path classes, boolean readable) {
    this.script = script;
    this.readable = readable;
    to = classes.resolve("ringbook/site/js/" + script.file + ".js");
    from = new MadeFrom(classes, classes.resolveSibling("scripts/" + script.file + ".classes"));
  }

  /**
   * Compiles.
   *
   * @param arguments the folder of compiled classes; {@code --readable} keeps long names, for
   *     looking for faults
   */
  public static void main(String[] arguments) throws IOException {
    boolean readable = List.of(arguments).contains("--readable");
    for (Script script : Script.values()) {
      if (!new PageScript(script, Path.of(arguments[0]), readable).make()) {
        System.exit(1);
      }
    }
  }

  private boolean make() throws IOException {
    if (isMadeFrom(first(from.mark()))) {
      return true;
    }
    Path raw = Files.createTempDirectory("ringbook-script");
    try {
      MadeFrom.Noting classes = new MadeFrom.Noting(PageScript.class.getClassLoader());
      if (told(compiler().compile(classes, raw, "raw.js"))) {
        return false;
      }
      String body = Files.readString(raw.resolve("raw.js"));
      Files.createDirectories(to.getParent());
      Files.writeString(to, first(from.note(classes)) + script.before + body + script.after);
      return true;
    } finally {
      Files.deleteIfExists(raw.resolve("raw.js"));
      Files.deleteIfExists(raw);
    }
  }

  private String first(String mark) {
    String names = readable ? ", with long names" : "";
    return "/* Calculations of Ringbook, made from " + mark + names + ". */";
  }

  private ScriptCompiler compiler() {
    return new ScriptCompiler(
        script.entry,
        script.checked,
        readable,
        List.of(new KeepGrouping(), new NoDoubleTexts(), new NoReferenceTexts()));
  }

  /** Tells what the compiler complains of; whether there was anything. */
  private static boolean told(List<Problem> problems) {
    for (Problem problem : problems) {
      DefaultProblemTextConsumer text = new DefaultProblemTextConsumer();
      problem.render(text);
      CallLocation from = problem.getLocation();
      System.err.println(
          "script: "
              + text.getText()
              + (from == null ? "" : " in " + from.getMethod() + " " + from.getSourceLocation()));
    }
    return !problems.isEmpty();
  }

  private boolean isMadeFrom(String first) throws IOException {
    if (!Files.exists(to)) {
      return false;
    }
    try (Stream<String> lines = Files.lines(to)) {
      return lines.findFirst().equals(Optional.of(first));
    }
  }
}
