package ringbook.output.book;

import java.util.List;
import org.w3c.dom.Element;

/** Marks cells of tables with a word so long that it must be broken to stay on the page. */
final class PrintCells {

  /** A longer word is broken. */
  private static final int LONGEST_WORD = 28;

  private PrintCells() {}

  static void mark(Element root) {
    for (String name : List.of("td", "th")) {
      for (Element cell : Elements.named(root, name)) {
        if (longest(Elements.text(cell)) > LONGEST_WORD) {
          Elements.addClass(cell, "overlong");
        }
      }
    }
  }

  private static int longest(String text) {
    int longest = 0;
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || text.charAt(i) == ' ') {
        longest = Math.max(longest, i - start);
        start = i + 1;
      }
    }
    return longest;
  }
}
