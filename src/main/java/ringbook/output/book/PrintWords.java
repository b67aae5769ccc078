package ringbook.output.book;

import java.util.List;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Sets negative numbers as a printer does: with a minus sign, as formulas have it. */
final class PrintWords {

  private static final Pattern NEGATIVE = Pattern.compile("(?<=^|[\\s\\u00a0(])-(?=[0-9])");

  /** What is typed or read as it stands, and what shows nothing. */
  private static final List<String> KEPT = List.of("code", "pre", "style", "title", "desc");

  private PrintWords() {}

  static void set(Element root) {
    for (Element element : Elements.all(root)) {
      if (!KEPT.contains(element.getNodeName())) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
          if (child instanceof Text text) {
            text.setData(NEGATIVE.matcher(text.getData()).replaceAll("\u2212"));
          }
        }
      }
    }
  }
}
