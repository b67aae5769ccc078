package ringbook.browser;

import java.util.List;

/** Writes JSON (RFC 8259) step by step; what it opens, the caller closes. */
public final class JsonText {

  private static final String HEX = "0123456789abcdef";

  private final StringBuilder out = new StringBuilder();

  /** Whether the next member or value follows another one. */
  private boolean follows;

  /** An empty text. */
  public JsonText() {}

  /** Opens an object. */
  public JsonText object() {
    return opened('{');
  }

  /** Opens an array. */
  public JsonText array() {
    return opened('[');
  }

  /** Closes the object that was opened last. */
  public JsonText endObject() {
    return closed('}');
  }

  /** Closes the array that was opened last. */
  public JsonText endArray() {
    return closed(']');
  }

  /** The name of the member whose value comes next. */
  public JsonText name(String name) {
    value(name);
    out.append(':');
    follows = false;
    return this;
  }

  /** A text as value. */
  public JsonText value(String text) {
    next();
    out.append('"');
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      if (needsEscape(text.charAt(i))) {
        out.append(text, from, i);
        escape(text.charAt(i));
        from = i + 1;
      }
    }
    out.append(text, from, text.length()).append('"');
    return this;
  }

  /** Yes or no as value. */
  public JsonText value(boolean yes) {
    next();
    out.append(yes);
    return this;
  }

  /** A member that is a text. */
  public JsonText member(String name, String text) {
    return name(name).value(text);
  }

  /** A member that is a list of texts. */
  public JsonText member(String name, List<String> texts) {
    name(name).texts(texts);
    return this;
  }

  /** A list of texts as value. */
  public JsonText texts(List<String> texts) {
    array();
    texts.forEach(this::value);
    return endArray();
  }

  /** The text so far. */
  @Override
  public String toString() {
    return out.toString();
  }

  private JsonText opened(char bracket) {
    next();
    out.append(bracket);
    follows = false;
    return this;
  }

  private JsonText closed(char bracket) {
    out.append(bracket);
    follows = true;
    return this;
  }

  private void next() {
    if (follows) {
      out.append(',');
    }
    follows = true;
  }

  /** The sign {@code <} is written as its code so that the text may stand inside a page. */
  private static boolean needsEscape(char c) {
    return c == '"' || c == '\\' || c < ' ' || c == '<' || c == '\u2028' || c == '\u2029';
  }

  private void escape(char c) {
    if (c == '"' || c == '\\') {
      out.append('\\').append(c);
      return;
    }
    out.append("\\u");
    for (int shift = 12; shift >= 0; shift -= 4) {
      out.append(HEX.charAt((c >> shift) & 15));
    }
  }
}
