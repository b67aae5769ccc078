package ringbook.output.book;

import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import ringbook.output.MinusSigns;

/**
 * Sets words as a printer does: negative numbers with a minus sign, as formulas have it; a number
 * on the line of its unit or of the word that it numbers.
 */
final class PrintWords {

  /** A word and its number, a number and its unit; the space between the two. */
  private static final Pattern TOGETHER =
      Pattern.compile(
          "(?<=\\b(?:[Pp]age|[Pp]ages|[Ll]esson|[Ll]essons|[Ee]xercise|Figure|Table|Question|Step))"
              + "\\s+(?=[0-9])"
              + "|(?<=[0-9]) (?=(?:[mcµk]?m|mm²|[mµ]?s|min|h|px|[kMG]B|[MG]?Hz|k?g|lx|W|V|EV|%|°)"
              + "(?![\\p{L}0-9]))");

  private PrintWords() {}

  static void set(Element root) {
    for (Element element : Elements.all(root)) {
      if (!MinusSigns.leave(element.getNodeName())) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
          if (child instanceof Text text) {
            text.setData(TOGETHER.matcher(MinusSigns.set(text.getData())).replaceAll("\u00a0"));
          }
        }
      }
    }
  }
}
