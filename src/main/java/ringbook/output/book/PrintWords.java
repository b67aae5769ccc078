package ringbook.output.book;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Sets words as a printer does: a negative number with a minus sign, as formulas have it, and no
 * line ends behind the one letter of {@code f-number}.
 */
final class PrintWords {

  /** Class of words that are not broken. */
  static final String WHOLE = "whole";

  private static final Pattern NEGATIVE = Pattern.compile("(?<=^|[\\s\\u00a0(])-(?=[0-9])");
  private static final String F_NUMBER = "f-number";

  /** What is typed or read as it stands, and what shows nothing. */
  private static final List<String> KEPT = List.of("code", "pre", "style", "title", "desc");

  private PrintWords() {}

  static void set(Element root) {
    for (Element element : Elements.all(root)) {
      if (!KEPT.contains(element.getNodeName())) {
        for (Text text : texts(element)) {
          text.setData(NEGATIVE.matcher(text.getData()).replaceAll("\u2212"));
          if (!element.getNodeName().equals("text")) {
            keepWhole(text);
          }
        }
      }
    }
  }

  private static List<Text> texts(Element element) {
    List<Text> texts = new ArrayList<>();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Text text) {
        texts.add(text);
      }
    }
    return texts;
  }

  private static void keepWhole(Text text) {
    Element around = (Element) text.getParentNode();
    int at = text.getData().indexOf(F_NUMBER);
    if (at < 0 || Elements.hasClass(around, WHOLE)) {
      return;
    }
    Text found = text.splitText(at);
    Text rest = found.splitText(F_NUMBER.length());
    Element whole = text.getOwnerDocument().createElementNS(around.getNamespaceURI(), "span");
    whole.setAttribute("class", WHOLE);
    around.replaceChild(whole, found);
    whole.appendChild(found);
    if (text.getData().isEmpty()) {
      around.removeChild(text);
    }
    if (rest.getData().isEmpty()) {
      around.removeChild(rest);
    } else {
      keepWhole(rest);
    }
  }
}
