package ringbook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.teavm.backend.javascript.JavaScriptTarget;
import org.teavm.backend.javascript.codegen.SourceWriter;
import org.teavm.backend.javascript.spi.GeneratorContext;
import org.teavm.dependency.DependencyAgent;
import org.teavm.dependency.DependencyNode;
import org.teavm.dependency.DependencyPlugin;
import org.teavm.dependency.DependencyType;
import org.teavm.dependency.MethodDependency;
import org.teavm.model.AccessLevel;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderSource;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.ClassReader;
import org.teavm.model.ElementModifier;
import org.teavm.model.FieldReader;
import org.teavm.model.Instruction;
import org.teavm.model.InvokeDynamicInstruction;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.MethodReference;
import org.teavm.model.ValueType;
import org.teavm.vm.TeaVM;

/**
 * Gives all records one equality. On the JVM each has its own, which compares its parts one by one;
 * compiled, seventy of them are a thirtieth of a script. There the parts of an object can be
 * listed, so that one will do for all: records are equal if they are of one class and all their
 * parts are, objects by their own equality, numbers by their bits. Equal records have equal hash
 * codes, other ones than on the JVM. A record that states its own equality keeps it.
 */
final class RecordEquality implements ClassHolderTransformer {

  private static final String RECORD = "java.lang.Record";
  private static final MethodReference EQUALS =
      new MethodReference(Record.class, "equals", Object.class, boolean.class);
  private static final MethodReference HASH =
      new MethodReference(Record.class, "hashCode", int.class);
  private static final MethodReference PART_EQUALS =
      new MethodReference(Objects.class, "equals", Object.class, Object.class, boolean.class);
  private static final MethodReference PART_HASH =
      new MethodReference(Objects.class, "hashCode", Object.class, int.class);

  /** The classes as they were read: when one is passed on, what was made for it cannot be told. */
  private final ClassHolderSource read;

  private RecordEquality(ClassHolderSource read) {
    this.read = read;
  }

  /** Has {@code target} write it, and {@code compiler} use it for the classes that are read. */
  static void install(JavaScriptTarget target, TeaVM compiler, ClassHolderSource read) {
    target.add(EQUALS, (context, out, method) -> writeEquals(context, out));
    target.add(HASH, (context, out, method) -> writeHash(context, out));
    compiler.add(EQUALS, partsGoTo(PART_EQUALS));
    compiler.add(HASH, partsGoTo(PART_HASH));
    compiler.add(new RecordEquality(read));
  }

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    if (type.getName().equals(RECORD)) {
      type.addMethod(toBeWritten(EQUALS));
      type.addMethod(toBeWritten(HASH));
    } else if (RECORD.equals(type.getParent())) {
      leaveOut(type, EQUALS.getDescriptor());
      leaveOut(type, HASH.getDescriptor());
    }
  }

  private static MethodHolder toBeWritten(MethodReference method) {
    MethodHolder written = new MethodHolder(method.getDescriptor());
    written.setLevel(AccessLevel.PUBLIC);
    written.getModifiers().add(ElementModifier.NATIVE);
    return written;
  }

  private void leaveOut(ClassHolder type, MethodDescriptor method) {
    if (isStated(read.get(type.getName()).getMethod(method))) {
      return;
    }
    type.removeMethod(type.getMethod(method));
  }

  private static boolean isStated(MethodHolder method) {
    for (BasicBlock block : method.getProgram().getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof InvokeDynamicInstruction call
            && call.getBootstrapMethod().getClassName().equals("java.lang.runtime.ObjectMethods")) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whatever the parts of such a record may be, {@code method} may be asked for. */
  private static DependencyPlugin partsGoTo(MethodReference method) {
    return (agent, ofRecords) -> {
      MethodDependency asked = agent.linkMethod(method);
      asked.use();
      DependencyNode records = ofRecords.getVariable(0);
      records.addConsumer(
          type -> {
            for (DependencyNode part : parts(agent, type)) {
              for (int i = 1; i <= method.parameterCount(); i++) {
                part.connect(asked.getVariable(i));
              }
            }
          });
    };
  }

  private static List<DependencyNode> parts(DependencyAgent agent, DependencyType type) {
    List<DependencyNode> parts = new ArrayList<>();
    if (type.getValueType() instanceof ValueType.Object record) {
      ClassReader fields = agent.getClassSource().get(record.getClassName());
      for (FieldReader field : fields.getFields()) {
        if (!field.hasModifier(ElementModifier.STATIC)
            && !(field.getType() instanceof ValueType.Primitive)) {
          parts.add(agent.linkField(field.getReference()).getValue());
        }
      }
    }
    return parts;
  }

  private static void writeEquals(GeneratorContext context, SourceWriter out) {
    String one = context.getParameterName(0);
    String other = context.getParameterName(1);
    String parts = one + "[part]," + other + "[part])";
    out.append("return " + one + "===" + other + "||" + other + "!==null&&" + one);
    out.append(".constructor===" + other + ".constructor&&").appendGlobal("Object");
    out.append(".keys(" + one + ").every(part=>typeof " + one + "[part]==='object'?");
    out.appendMethod(PART_EQUALS).append("(" + parts + ":").appendGlobal("Object");
    out.append(".is(" + parts + ")?1:0;").softNewLine();
  }

  private static void writeHash(GeneratorContext context, SourceWriter out) {
    String record = context.getParameterName(0);
    out.append("return ").appendGlobal("Object").append(".values(" + record);
    out.append(").reduce((hash,part)=>(hash*31|0)+(typeof part==='object'?");
    out.appendMethod(PART_HASH).append("(part):").appendGlobal("Number");
    out.append("(part)|0)|0,0);").softNewLine();
  }
}
