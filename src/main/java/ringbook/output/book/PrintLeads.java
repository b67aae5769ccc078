package ringbook.output.book;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Marks paragraphs that lead up to what comes next, so that no page ends between the two. */
final class PrintLeads {

  private PrintLeads() {}

  static void mark(Element root) {
    for (Element paragraph : Elements.named(root, "p")) {
      Element next = next(paragraph);
      if (next != null && leads(paragraph, next)) {
        Elements.addClass(paragraph, "leads");
      }
    }
  }

  private static boolean leads(Element paragraph, Element next) {
    return Elements.hasClass(next, "working")
        || (Elements.text(paragraph).endsWith(":") && !next.getNodeName().equals("p"));
  }

  private static Element next(Node node) {
    Node next = node.getNextSibling();
    while (next != null && !(next instanceof Element)) {
      next = next.getNextSibling();
    }
    return (Element) next;
  }
}
