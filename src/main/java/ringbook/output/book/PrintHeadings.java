package ringbook.output.book;

import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Closes gaps in the levels of headings: a box with h3 that stands before the first h2 gets h2. */
final class PrintHeadings {

  private PrintHeadings() {}

  static void close(Element root) {
    Document document = root.getOwnerDocument();
    int above = 0;
    for (Element element : Elements.all(root)) {
      int level = level(element.getNodeName());
      if (level > above + 1) {
        level = above + 1;
        document.renameNode(element, element.getNamespaceURI(), "h" + level);
      }
      above = level > 0 ? level : above;
    }
  }

  /** 1 to 6 for a heading, else 0. */
  private static int level(String name) {
    boolean heading = name.length() == 2 && name.charAt(0) == 'h' && name.charAt(1) <= '6';
    return heading ? Math.max(0, name.charAt(1) - '0') : 0;
  }
}
