package ringbook.build;

import java.util.ArrayList;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.ValueType;

/**
 * Keeps the JDK's way of printing doubles out of the script: it is large, and other engines print
 * otherwise. The texts that records and boxed doubles have for programmers are left out; a double
 * that is joined to a text by {@code +} fails the build. {@code Numbers} prints for people.
 */
public final class NoDoubleTexts implements ClassHolderTransformer {

  private static final MethodDescriptor TEXT = new MethodDescriptor("toString", String.class);

  /** A pass. */
  public NoDoubleTexts() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    boolean forProgrammers =
        "java.lang.Record".equals(type.getParent()) || type.getName().equals("java.lang.Double");
    for (MethodHolder method : new ArrayList<>(type.getMethods())) {
      if (forProgrammers ? method.getDescriptor().equals(TEXT) : joinsDouble(type, method)) {
        type.removeMethod(method);
      }
    }
  }

  private static boolean joinsDouble(ClassHolder type, MethodHolder method) {
    return type.getName().equals("java.lang.StringBuilder")
        && method.getName().equals("append")
        && method.parameterCount() == 1
        && method.parameterType(0) == ValueType.DOUBLE;
  }
}
