package ringbook.browser;

import ringbook.values.ExpressionFault;
import ringbook.values.Expressions;
import ringbook.values.Value;

/** What expressions come to, as JSON. */
final class ValueJson {

  private ValueJson() {}

  static String of(String[] expressions, Expressions over) {
    JsonText out = new JsonText().array();
    for (String expression : expressions) {
      out.object();
      try {
        value(over.evaluate(expression), out);
      } catch (ExpressionFault fault) {
        out.member("kind", fault.refused() ? "refused" : "fault");
        out.member("text", fault.fault()).member("help", fault.help());
      }
      out.endObject();
    }
    return out.endArray().toString();
  }

  static boolean holds(String condition, Expressions over) {
    try {
      return over.holds(condition);
    } catch (ExpressionFault unreadable) {
      return false;
    }
  }

  private static void value(Value value, JsonText out) {
    if (value instanceof Value.OfQuantity quantity) {
      out.member("kind", "quantity").member("text", quantity.text()).member("key", quantity.key());
      out.member("given", quantity.given()).member("form", quantity.form());
    } else if (value instanceof Value.Word word) {
      out.member("kind", "word").member("text", word.text()).member("key", word.key());
      out.member("given", word.given());
    } else if (value instanceof Value.Symbol symbol) {
      out.member("kind", "symbol").member("text", symbol.tex()).member("speech", symbol.speech());
    } else if (value instanceof Value.Flag flag) {
      out.member("kind", "flag").name("yes").value(flag.yes());
    } else {
      out.member("kind", "text").member("text", ((Value.Plain) value).text());
    }
  }
}
