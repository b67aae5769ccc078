package ringbook.course.compose;

import ringbook.course.typeset.Formulas;
import ringbook.course.values.Value;

/** Values as they stand in the text; live ones carry what they were worked out from. */
final class ValueXhtml {

  private ValueXhtml() {}

  static String of(Value value) {
    if (value instanceof Value.OfQuantity quantity) {
      return "<data class=\"quantity\" data-key=\""
          + Xhtml.attribute(quantity.key())
          + "\""
          + Xhtml.optional("data-given", quantity.given())
          + Xhtml.optional("data-form", quantity.form())
          + " value=\""
          + si(quantity.si())
          + "\">"
          + Xhtml.text(quantity.text())
          + "</data>";
    }
    if (value instanceof Value.Word word) {
      return "<span class=\"word\" data-key=\""
          + Xhtml.attribute(word.key())
          + "\""
          + Xhtml.optional("data-given", word.given())
          + ">"
          + Xhtml.text(word.text())
          + "</span>";
    }
    if (value instanceof Value.Symbol symbol) {
      return Formulas.inline(symbol.tex(), symbol.speech()).orElse(Xhtml.text(symbol.tex()));
    }
    return Xhtml.text(((Value.Plain) value).text());
  }

  /** The shortest text that reads back as the same number. */
  private static String si(double si) {
    String text = String.valueOf(si);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
