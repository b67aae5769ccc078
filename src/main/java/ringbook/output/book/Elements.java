package ringbook.output.book;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Walks over the elements of the print document. */
final class Elements {

  private Elements() {}

  /** All elements below {@code root} and itself with this name, in document order. */
  static List<Element> named(Element root, String name) {
    List<Element> found = new ArrayList<>();
    for (Element element : all(root)) {
      if (element.getNodeName().equals(name)) {
        found.add(element);
      }
    }
    return found;
  }

  /** All elements below {@code root} and itself, in document order. */
  static List<Element> all(Element root) {
    List<Element> found = new ArrayList<>();
    gather(root, found);
    return found;
  }

  private static void gather(Element element, List<Element> found) {
    found.add(element);
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        gather(inner, found);
      }
    }
  }

  /** The elements directly below {@code parent}. */
  static List<Element> children(Element parent) {
    List<Element> children = new ArrayList<>();
    for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element) {
        children.add(element);
      }
    }
    return children;
  }

  /** Whether the {@code class} attribute holds this word. */
  static boolean hasClass(Element element, String word) {
    return (" " + element.getAttribute("class") + " ").contains(" " + word + " ");
  }

  /** Adds a word to the {@code class} attribute. */
  static void addClass(Element element, String word) {
    element.setAttribute("class", (element.getAttribute("class") + " " + word).strip());
  }

  /** The text of an element with each run of white space as one space. */
  static String text(Element element) {
    return element.getTextContent().strip().replaceAll("[\\s\u00a0]+", " ");
  }
}
