package ringbook.output.book;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Keeps the sign behind a value on the value's line: the page maker would break before it. */
final class PrintPunctuation {

  private static final Pattern SIGNS = Pattern.compile("^[.,;:?!)\\]”’…]+");

  /** Links that the style puts something behind: a page, or the whole address. */
  private static final List<String> FOLLOWED = List.of("see", "turn", "outside", "page");

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

  private static boolean isJoined(Element element) {
    return switch (element.getNodeName()) {
      case "data", "strong", "em" -> true;
      case "a" -> FOLLOWED.stream().noneMatch(word -> Elements.hasClass(element, word));
      default -> false;
    };
  }
}
