package ringbook.output.book;

import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Marks paragraphs that lead up to what comes next, so that no page ends between the two, and the
 * last entries of a long list of terms, so that none of them has a page for itself.
 */
final class PrintLeads {

  private static final int LAST_TOGETHER = 5;

  private PrintLeads() {}

  static void mark(Element root) {
    for (Element paragraph : Elements.named(root, "p")) {
      Element next = next(paragraph);
      if (next != null && leads(paragraph, next)) {
        Elements.addClass(paragraph, "leads");
      }
    }
    Elements.named(root, "dl").forEach(PrintLeads::markTail);
  }

  private static void markTail(Element list) {
    List<Element> meanings = Elements.named(list, "dd");
    int from = Math.max(0, meanings.size() - LAST_TOGETHER);
    for (Element meaning : meanings.subList(from, Math.max(from, meanings.size() - 1))) {
      Elements.addClass(meaning, "leads");
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
