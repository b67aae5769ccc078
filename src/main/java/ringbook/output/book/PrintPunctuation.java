package ringbook.output.book;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Keeps the sign behind a value on the value's line: the page maker would break before it. */
final class PrintPunctuation {

  private static final Pattern SIGNS = Pattern.compile("^[.,;:?!)\\]”’…]+");

  private PrintPunctuation() {}

  /**
   * Takes the signs that follow a value, a strong word or a trade word into its element, which is
   * not broken.
   */
  static void join(Element root) {
    for (Element value : Elements.all(root)) {
      if (isJoined(value) && value.getNextSibling() instanceof org.w3c.dom.Text text) {
        Matcher signs = SIGNS.matcher(text.getData());
        if (signs.find()) {
          Node kept = root.getOwnerDocument().createTextNode(signs.group());
          value.appendChild(kept);
          text.setData(text.getData().substring(signs.end()));
        }
      }
    }
  }

  /** Links with a page behind their words are left out: the page comes before the sign. */
  private static boolean isJoined(Element element) {
    return switch (element.getNodeName()) {
      case "data", "strong", "em" -> true;
      case "a" -> Elements.hasClass(element, "term");
      default -> false;
    };
  }
}
