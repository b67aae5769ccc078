package ringbook.build;

import java.nio.file.Path;
import java.util.List;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.backend.javascript.JavaScriptTarget;
import org.teavm.backend.javascript.TeaVMJavaScriptHost;
import org.teavm.diagnostics.Problem;
import org.teavm.model.ClassHolderSource;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.MethodReader;
import org.teavm.model.PreOptimizingClassHolderSource;
import org.teavm.model.Program;
import org.teavm.model.ReferenceCache;
import org.teavm.parsing.ClasspathClassHolderSource;
import org.teavm.parsing.ClasspathResourceProvider;
import org.teavm.parsing.resource.ResourceProvider;
import org.teavm.vm.DirectoryBuildTarget;
import org.teavm.vm.TeaVM;
import org.teavm.vm.TeaVMBuilder;
import org.teavm.vm.TeaVMOptimizationLevel;

/**
 * Compiles a class, and all it needs, into a script.
 *
 * <p>Where a script is checked, every cast and index is looked at. That costs half the speed where
 * much is reckoned with arrays, and some size; the classes count on none of it, which the JVM
 * proves on the same inputs. Null is looked at in neither case: the engine itself stops whoever
 * asks null for anything, so that a check before each use would only make the script larger. (Only
 * a method that asks nothing of its object runs on null.)
 */
final class ScriptCompiler {

  private final String main;
  private final boolean checked;
  private final boolean readable;
  private final List<ClassHolderTransformer> passes;

  /**
   * A compiler.
   *
   * @param main name of the class whose exported methods the script has
   * @param checked whether casts and indices are looked at
   * @param readable whether names stay long
   * @param passes what is changed in each class before it is compiled
   */
  ScriptCompiler(
      String main, boolean checked, boolean readable, List<ClassHolderTransformer> passes) {
    this.main = main;
    this.checked = checked;
    this.readable = readable;
    this.passes = passes;
  }

  /**
   * Compiles into a file, which is of use only where nothing is complained of.
   *
   * @return what the compiler complains of
   */
  List<Problem> compile(ClassLoader classes, Path folder, String file) {
    ReferenceCache names = new ReferenceCache();
    ResourceProvider resources = new ClasspathResourceProvider(classes);
    try {
      JavaScriptTarget target = target();
      ClassHolderSource read =
          new PreOptimizingClassHolderSource(
              new ClasspathClassHolderSource(resources, names, classes));
      TeaVM compiler =
          new TeaVMBuilder(target)
              .setReferenceCache(names)
              .setClassLoader(classes)
              .setClassSource(read)
              .setResourceProvider(resources)
              .setObfuscated(!readable)
              .setStrict(checked)
              .build();
      compiler.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
      compiler.installPlugins();
      passes.forEach(compiler::add);
      RecordEquality.install(target, compiler, read);
      compiler.setEntryPoint(main);
      compiler.setEntryPointName("main");
      compiler.build(new DirectoryBuildTarget(folder.toFile()), file);
      return List.copyOf(compiler.getProblemProvider().getProblems());
    } finally {
      resources.close();
    }
  }

  private JavaScriptTarget target() {
    JavaScriptTarget target = new NullLeftToEngine();
    target.setObfuscated(!readable);
    target.setStrict(checked);
    target.setModuleType(JSModuleType.COMMON_JS);
    return target;
  }

  /** Names its interface again: plugins look for it among those that the class itself names. */
  private static final class NullLeftToEngine extends JavaScriptTarget
      implements TeaVMJavaScriptHost {

    /** Would put a check before each use of an object, and does nothing else. */
    @Override
    public void beforeInlining(Program program, MethodReader method) {}
  }
}
