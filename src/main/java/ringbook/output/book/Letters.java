package ringbook.output.book;

import java.util.Set;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Refuses letters the book's fonts lack: the page maker would print another sign without a word.
 */
final class Letters {

  private static final Set<String> UNPRINTED = Set.of("head", "title", "desc");
  private static final int SAID_AROUND = 24;

  private Letters() {}

  /**
   * Looks at every printed text.
   *
   * @throws BookException for the first letter that a font lacks, with the words around it
   */
  static void check(Document print, BookFonts fonts) throws BookException {
    check(print.getDocumentElement(), fonts);
  }

  private static void check(Element element, BookFonts fonts) throws BookException {
    if (UNPRINTED.contains(element.getNodeName())) {
      return;
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        check(inner, fonts);
      } else if (child.getNodeType() == Node.TEXT_NODE) {
        check(child.getNodeValue(), fonts);
      }
    }
  }

  private static void check(String text, BookFonts fonts) throws BookException {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int letter = text.codePointAt(i);
      if (!Character.isWhitespace(letter) && !fonts.know(letter)) {
        String around =
            text.substring(Math.max(0, i - SAID_AROUND), Math.min(text.length(), i + SAID_AROUND));
        throw new BookException(
            "the book's fonts have no letter '"
                + Character.toString(letter)
                + "' ("
                + Character.getName(letter)
                + ") in '"
                + around.strip()
                + "': write it with another sign or in words");
      }
    }
  }
}
