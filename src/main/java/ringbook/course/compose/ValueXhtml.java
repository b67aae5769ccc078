package ringbook.course.compose;

import ringbook.course.typeset.Formulas;
import ringbook.units.Words;
import ringbook.values.Value;

/** Values as they stand in the text; each carries what it can be worked out from once more. */
final class ValueXhtml {

  private ValueXhtml() {}

  /**
   * The value in its place.
   *
   * @param expression what it was worked out from
   */
  static String of(Value value, String expression) {
    if (value instanceof Value.OfQuantity quantity) {
      String plain = expression(quantity.key(), quantity.given(), quantity.form());
      return "<data class=\"quantity\" data-key=\""
          + Xhtml.attribute(quantity.key())
          + "\""
          + Xhtml.optional("data-given", quantity.given())
          + Xhtml.optional("data-form", quantity.form())
          + " value=\""
          + si(quantity.si())
          + "\""
          + Xhtml.optional("data-value", told(expression, plain))
          + ">"
          + Xhtml.text(quantity.text())
          + "</data>";
    }
    if (value instanceof Value.Word word) {
      return "<span class=\"word\" data-key=\""
          + Xhtml.attribute(word.key())
          + "\""
          + Xhtml.optional("data-given", word.given())
          + Xhtml.optional("data-value", told(expression, expression(word.key(), word.given(), "")))
          + ">"
          + Xhtml.text(word.text())
          + "</span>";
    }
    if (value instanceof Value.Symbol symbol) {
      return Formulas.inline(symbol.tex(), symbol.speech()).orElse(Xhtml.text(symbol.tex()));
    }
    String text = Xhtml.text(((Value.Plain) value).text());
    if (Words.trimmed(expression).endsWith(".name")) {
      return text; // a quantity is called the same in every scene
    }
    return "<span class=\"value\" data-value=\""
        + Xhtml.attribute(Words.trimmed(expression))
        + "\">"
        + text
        + "</span>";
  }

  /** The place of a value that the course's own scene does not allow. */
  static String none(String expression) {
    return "<data class=\"quantity\" value=\"\" data-value=\""
        + Xhtml.attribute(Words.trimmed(expression))
        + "\">none</data>";
  }

  /** The expression that says no more than its parts do. */
  private static String expression(String key, String given, String form) {
    String scene = given.isEmpty() ? "" : "given(\"" + given + "\").";
    String printed =
        form.isEmpty() || form.equals("number")
            ? form.isEmpty() ? "" : ".number"
            : ".in(\"" + form + "\")";
    return scene + key + printed;
  }

  private static String told(String expression, String plain) {
    String stated = Words.trimmed(expression);
    return stated.equals(plain) ? "" : stated;
  }

  /** The shortest text that reads back as the same number. */
  private static String si(double si) {
    String text = String.valueOf(si);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
