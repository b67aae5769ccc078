package ringbook.course.compose;

/** Writes text so that it stays text inside XHTML. */
final class Xhtml {

  private Xhtml() {}

  /** {@code text} as the content of an element. */
  static String text(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        default -> out.append(allowed(c) ? c : '\ufffd');
      }
    }
    return out.toString();
  }

  /** {@code text} as the value of an attribute in double quotes. */
  static String attribute(String text) {
    return text(text).replace("\"", "&quot;").replace("\n", "&#10;");
  }

  /** An attribute with a blank before it, or nothing if the value is empty. */
  static String optional(String name, String value) {
    return value.isEmpty() ? "" : " " + name + "=\"" + attribute(value) + "\"";
  }

  /** XML 1.0 has no place for most control characters. */
  private static boolean allowed(char c) {
    return (c >= ' ' && c < '\ufffe') || c == '\n' || c == '\t';
  }
}
