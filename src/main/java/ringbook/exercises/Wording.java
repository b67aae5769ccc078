package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import ringbook.problems.Position;

/**
 * A piece of text an author wrote in an exercise: Markdown that may hold values of the ledger.
 *
 * @param markdown as written
 * @param at where it begins in the exercise file
 */
public record Wording(String markdown, Position at) {

  /** The same place with other words, such as the words with the values put in. */
  public Wording with(String words) {
    return new Wording(words, at);
  }

  /**
   * What may be the key of a quantity in the values it holds: every name with a point in it between
   * <code>${</code> and <code>}</code>.
   */
  List<String> keys() {
    List<String> keys = new ArrayList<>();
    int open = markdown.indexOf("${");
    while (open >= 0) {
      int close = markdown.indexOf('}', open);
      int end = close < 0 ? markdown.length() : close;
      collect(markdown.substring(open + 2, end), keys);
      open = markdown.indexOf("${", end);
    }
    return keys;
  }

  private static void collect(String expression, List<String> keys) {
    int from = 0;
    for (int i = 0; i <= expression.length(); i++) {
      if (i == expression.length() || !isPartOfName(expression.charAt(i))) {
        String name = expression.substring(from, i);
        if (name.indexOf('.') > 0) {
          keys.add(name);
        }
        from = i + 1;
      }
    }
  }

  private static boolean isPartOfName(char c) {
    return c == '.' || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  }
}
