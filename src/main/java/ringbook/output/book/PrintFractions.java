package ringbook.output.book;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Keeps fractions of an inch on one line: the page maker would break before their stroke. */
final class PrintFractions {

  /** With the whole inches before it, the unit behind it and a bracket that opens. */
  private static final Pattern FRACTION =
      Pattern.compile("\\(?(?:[0-9]+[ \u00a0])?[0-9]/[0-9][ \u00a0]in(?!\\p{L})");

  private PrintFractions() {}

  /** Makes values of them, which are not broken; not in drawings. */
  static void join(Element root) {
    for (Element element : Elements.all(root)) {
      boolean words = Objects.equals(root.getNamespaceURI(), element.getNamespaceURI());
      if (words && !element.getNodeName().equals("data")) {
        join(element, root.getNamespaceURI());
      }
    }
  }

  private static void join(Element element, String namespace) {
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Text text) {
        Matcher fraction = FRACTION.matcher(text.getData());
        if (fraction.find()) {
          Element value = element.getOwnerDocument().createElementNS(namespace, "data");
          text.splitText(fraction.end());
          value.appendChild(text.splitText(fraction.start()));
          element.insertBefore(value, text.getNextSibling());
          child = value;
        }
      }
    }
  }
}
