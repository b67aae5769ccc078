package ringbook.output.book;

import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import ringbook.output.PlaceMarks;

/** Sets the list of what went into a working as one running line: paper is dear. */
final class PrintInputs {

  private PrintInputs() {}

  static void runIn(Element root) {
    for (Element list : Elements.named(root, "ul")) {
      if (Elements.hasClass(list, "inputs")) {
        runInList(list);
      }
    }
  }

  private static void runInList(Element list) {
    Document document = list.getOwnerDocument();
    String xhtml = list.getNamespaceURI();
    List<Element> items = Elements.named(list, "li");
    Element line = document.createElementNS(xhtml, "p");
    line.setAttribute("class", list.getAttribute("class"));
    line.setAttribute(PlaceMarks.ATTRIBUTE, list.getAttribute(PlaceMarks.ATTRIBUTE));
    line.appendChild(document.createTextNode("with "));
    for (Element item : items) {
      if (item != items.get(0)) {
        // In the text that is there: the page maker would break between two.
        if (line.getLastChild() instanceof Text text) {
          text.appendData("; ");
        } else {
          line.appendChild(document.createTextNode("; "));
        }
      }
      for (Node child = item.getFirstChild(); child != null; child = item.getFirstChild()) {
        line.appendChild(child);
      }
    }
    list.getParentNode().replaceChild(line, list);
  }
}
