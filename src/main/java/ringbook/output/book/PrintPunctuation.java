package ringbook.output.book;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Keeps the sign behind a value on the value's line: the page maker would break before it. */
final class PrintPunctuation {

  /** Attribute of a link that the style fills: what it sets behind the page, on the same line. */
  static final String SIGNS_BEHIND = "data-signs";

  private static final Pattern SIGNS = Pattern.compile("^(?:[.,;:?!)\\]”…]|’\\p{L}*)+");

  /** Links that the style puts something behind: a page, or the whole address. */
  private static final List<String> FOLLOWED = List.of("see", "at-page", "turn", "outside", "page");

  private PrintPunctuation() {}

  /**
   * Takes the signs that follow a value, a strong word or a link into its element, which is not
   * broken before them; so with the end of {@code keeper’s}. The style sets those of a link to a
   * page behind the page.
   *
   * @param root with its links resolved
   */
  static void join(Element root) {
    for (Element value : Elements.all(root)) {
      boolean joined = isJoined(value);
      if ((joined || Elements.hasClass(value, "at-page"))
          && value.getNextSibling() instanceof org.w3c.dom.Text text) {
        Matcher signs = SIGNS.matcher(text.getData());
        if (signs.find()) {
          if (joined) {
            append(value, signs.group());
          } else {
            value.setAttribute(SIGNS_BEHIND, signs.group());
          }
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

  private static boolean isJoined(Element element) {
    return switch (element.getNodeName()) {
      case "data", "strong", "em" -> true;
      case "a" -> FOLLOWED.stream().noneMatch(word -> Elements.hasClass(element, word));
      default -> false;
    };
  }
}
