package ringbook.values;

import java.util.function.UnaryOperator;

/** Texts that hold values in the form <code>${expression}</code>. */
public final class Template {

  private static final String OPEN = "${";

  private Template() {}

  /**
   * The text with every value put in.
   *
   * @param values gives what stands in place of an expression
   */
  public static String fill(String template, UnaryOperator<String> values) {
    StringBuilder filled = new StringBuilder();
    int from = 0;
    int open = template.indexOf(OPEN);
    while (open >= 0) {
      int close = closingBrace(template, open + OPEN.length());
      if (close < 0) {
        break;
      }
      filled.append(template, from, open);
      filled.append(values.apply(template.substring(open + OPEN.length(), close)));
      from = close + 1;
      open = template.indexOf(OPEN, from);
    }
    return filled.append(template, from, template.length()).toString();
  }

  /**
   * Where the brace closes whose inside begins at {@code from}, or -1; braces inside quotation
   * marks do not count.
   */
  public static int closingBrace(CharSequence template, int from) {
    char quote = 0;
    for (int i = from; i < template.length(); i++) {
      char c = template.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '}') {
        return i;
      }
    }
    return -1;
  }
}
