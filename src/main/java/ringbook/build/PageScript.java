package ringbook.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.DefaultProblemTextConsumer;
import org.teavm.diagnostics.Problem;
import org.teavm.model.CallLocation;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.tooling.TeaVMToolException;
import org.teavm.vm.TeaVMOptimizationLevel;

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

    /**
     * Whether every null, cast and index is looked at. That costs half the speed, and a quarter of
     * the size; the classes count on none of it, which the JVM proves on the same inputs.
     */
    private final boolean strict;

    private final String before;
    private final String after;

    Script(String file, String entry, boolean strict, String before, String after) {
      this.file = file;
      this.strict = strict;
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
  public static void main(String[] arguments) throws IOException, TeaVMToolException {
    boolean readable = List.of(arguments).contains("--readable");
    for (Script script : Script.values()) {
      if (!new PageScript(script, Path.of(arguments[0]), readable).make()) {
        System.exit(1);
      }
    }
  }

  private boolean make() throws IOException, TeaVMToolException {
    if (isMadeFrom(first(from.mark()))) {
      return true;
    }
    Path raw = Files.createTempDirectory("ringbook-script");
    try {
      MadeFrom.Noting classes = new MadeFrom.Noting(PageScript.class.getClassLoader());
      TeaVMTool compiler = compiler(raw, classes);
      compiler.generate();
      if (told(compiler)) {
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

  private TeaVMTool compiler(Path folder, ClassLoader classes) {
    TeaVMTool compiler = new TeaVMTool();
    compiler.setTargetType(TeaVMTargetType.JAVASCRIPT);
    compiler.setJsModuleType(JSModuleType.COMMON_JS);
    compiler.setMainClass(script.entry);
    compiler.setTargetDirectory(folder.toFile());
    compiler.setTargetFileName("raw.js");
    compiler.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
    compiler.setObfuscated(!readable);
    compiler.setStrict(script.strict);
    compiler.getTransformers().add(KeepGrouping.class.getName());
    compiler.getTransformers().add(NoDoubleTexts.class.getName());
    compiler.getTransformers().add(NoReferenceTexts.class.getName());
    compiler.setClassLoader(classes);
    return compiler;
  }

  /** Tells what the compiler complains of; whether there was anything. */
  private static boolean told(TeaVMTool compiler) {
    for (Problem problem : compiler.getProblemProvider().getProblems()) {
      DefaultProblemTextConsumer text = new DefaultProblemTextConsumer();
      problem.render(text);
      CallLocation from = problem.getLocation();
      System.err.println(
          "script: "
              + text.getText()
              + (from == null ? "" : " in " + from.getMethod() + " " + from.getSourceLocation()));
    }
    return !compiler.getProblemProvider().getProblems().isEmpty();
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
