package ringbook.browser;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * A list of calls to {@link Page} and {@link SightPage}, to be made on the JVM and in a browser.
 * The argument {@code *} stands for each key of the ledger in turn.
 */
final class Calls {

  private final List<Map<String, Object>> calls = new ArrayList<>();

  /** Adds a call to {@link Page}; arguments are texts and arrays of texts. */
  Calls add(String name, Object... arguments) {
    calls.add(Map.of("name", name, "args", List.of(arguments), "sight", false));
    return this;
  }

  /** Adds a call to {@link SightPage}. */
  Calls far(String name, Object... arguments) {
    calls.add(Map.of("name", name, "args", List.of(arguments), "sight", true));
    return this;
  }

  /** As the browser's driver takes them. */
  List<Map<String, Object>> forScript() {
    return calls;
  }

  /** What the JVM answers. */
  String answers() {
    List<String> out = new ArrayList<>();
    for (Map<String, Object> call : calls) {
      String name = (String) call.get("name");
      List<?> arguments = (List<?>) call.get("args");
      Class<?> script = call.get("sight").equals(true) ? SightPage.class : Page.class;
      if (!arguments.contains("*")) {
        out.add(name + ": " + call(script, name, arguments));
        continue;
      }
      for (String key : Page.keys()) {
        List<Object> named = new ArrayList<>(arguments);
        named.replaceAll(argument -> argument.equals("*") ? key : argument);
        out.add(name + " " + key + ": " + call(script, name, named));
      }
    }
    return String.join("\n", out);
  }

  /** A short name for {@code text}, the same as in the browser. */
  static String digest(String text) {
    int a = 0;
    int b = 0;
    for (int i = 0; i < text.length(); i++) {
      a = a * 31 + text.charAt(i);
      b = b * 1000003 ^ text.charAt(i);
    }
    return a + " " + b;
  }

  private static String call(Class<?> script, String name, List<?> arguments) {
    try {
      return text(method(script, name).invoke(null, arguments.toArray()));
    } catch (InvocationTargetException thrown) {
      return "! " + thrown.getCause().getMessage();
    } catch (IllegalAccessException never) {
      throw new IllegalStateException(never);
    }
  }

  private static Method method(Class<?> script, String name) {
    return Arrays.stream(script.getMethods())
        .filter(method -> method.getName().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static String text(Object answer) {
    if (answer instanceof double[] numbers) {
      List<String> bits = new ArrayList<>();
      for (double number : numbers) {
        bits.add(
            Double.isNaN(number) ? "none" : Long.toHexString(Double.doubleToRawLongBits(number)));
      }
      return String.join(" ", bits);
    }
    if (answer instanceof String[] texts) {
      return String.join("\n", texts);
    }
    return answer == null ? "" : String.valueOf(answer);
  }
}
