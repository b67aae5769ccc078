package ringbook.output.book;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Keeps the sign behind a value on the value's line: the page maker would break before it. */
final class PrintPunctuation {

  private static final Pattern SIGNS = Pattern.compile("^(?:[.,;:?!)\\]”…]|’\\p{L}*)+");

  private PrintPunctuation() {}

  /**
   * Takes the signs that follow a value, a strong word, a trade word or the name of an input into
   * its element, which is not broken before them; so with the end of {@code keeper’s}.
   */
  static void join(Element root) {
    for (Element value : Elements.all(root)) {
      if (isJoined(value) && value.getNextSibling() instanceof org.w3c.dom.Text text) {
        Matcher signs = SIGNS.matcher(text.getData());
        if (signs.find()) {
          append(value, signs.group());
          text.setData(text.getData().substring(signs.end()));
        }
      }
    }
  }

  /** Into the text that is there: a text of its own would again be broken off. */
  private static void append(Element value, String signs) {
    Node last = value.getLastChild();
    if (last instanceof org.w3c.dom.Text text) {
      text.appendData(signs);
    } else if (last instanceof Element inner && isJoined(inner)) {
      append(inner, signs);
    } else {
      value.appendChild(value.getOwnerDocument().createTextNode(signs));
    }
  }

  /** Links with a page behind their words are left out: the page comes before the sign. */
  private static boolean isJoined(Element element) {
    return switch (element.getNodeName()) {
      case "data", "strong", "em" -> true;
      case "a" -> Elements.hasClass(element, "term") || isInput(element);
      case "span" -> Elements.hasClass(element, PrintWords.WHOLE);
      default -> false;
    };
  }

  private static boolean isInput(Element link) {
    return link.getParentNode() instanceof Element around && Elements.hasClass(around, "inputs");
  }
}
