package ringbook.output.book;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import ringbook.course.ComposedCourse;

/**
 * Turns links inside the course into links inside the book. Behind those of class {@code see} comes
 * one of class {@code at-page}, which the style sheet fills with the page and does not break; it
 * adds the address to those of class {@code outside}.
 */
final class PrintLinks {

  private static final String COURSE = "course:";
  private static final String FIELD_VIEW = COURSE + ComposedCourse.FIELD_VIEW;
  private static final String QUANTITIES = "quantities";

  private static final List<String> QUIET = List.of("note-ref", "back", "inputs", "term");

  private PrintLinks() {}

  static void resolve(Element root) throws BookException {
    Set<String> ids = ids(root);
    for (Element link : Elements.named(root, "a")) {
      String href = link.getAttribute("href");
      if (href.equals(FIELD_VIEW)) {
        link.removeAttribute("href");
        continue;
      }
      if (href.startsWith(COURSE)) {
        String target = target(href.substring(COURSE.length()), ids);
        link.setAttribute("href", "#" + target);
        if (!quiet(link)) {
          Elements.addClass(link, "see");
          link.getParentNode().insertBefore(atPage(link, target), link.getNextSibling());
          link.getParentNode()
              .insertBefore(link.getOwnerDocument().createTextNode(" "), link.getNextSibling());
        }
      } else if (!href.isEmpty() && !href.startsWith("#")) {
        Elements.addClass(link, href.equals(Elements.text(link)) ? "address" : "outside");
      }
      String resolved = link.getAttribute("href");
      if (resolved.startsWith("#") && !ids.contains(resolved.substring(1))) {
        throw new BookException(
            "the link '" + Elements.text(link) + "' to '" + href + "' leads nowhere in the book");
      }
    }
  }

  private static Element atPage(Element link, String target) {
    Element page = link.getOwnerDocument().createElementNS(link.getNamespaceURI(), "a");
    page.setAttribute("href", "#" + target);
    page.setAttribute("class", "at-page");
    return page;
  }

  /** Leaves the words of links without the links, but for those that name something on the page. */
  static void drop(Element root) {
    for (Element link : Elements.named(root, "a")) {
      String href = link.getAttribute("href");
      if (!href.startsWith("#") && !href.startsWith(PagePress.FIELD)) {
        link.removeAttribute("href");
      }
    }
  }

  /** Marks of footnotes, lists of inputs and trade words would drown in page numbers. */
  private static boolean quiet(Element link) {
    for (Node around = link; around instanceof Element element; around = around.getParentNode()) {
      if (QUIET.stream().anyMatch(word -> Elements.hasClass(element, word))) {
        return true;
      }
    }
    return false;
  }

  private static Set<String> ids(Element root) {
    Set<String> ids = new LinkedHashSet<>();
    for (Element element : Elements.all(root)) {
      if (element.hasAttribute("id") && !ids.add(element.getAttribute("id"))) {
        throw new IllegalStateException("two places called '" + element.getAttribute("id") + "'");
      }
    }
    return ids;
  }

  /** The id in the book of {@code LESSON}, {@code LESSON#ID} or {@code quantities#KEY}. */
  private static String target(String place, Set<String> ids) {
    int hash = place.indexOf('#');
    String page = hash < 0 ? place : place.substring(0, hash);
    String id = place.substring(hash + 1);
    if (page.equals(QUANTITIES)) {
      return hash < 0 ? QUANTITIES : "quantity-" + id;
    }
    if (hash < 0) {
      return "lesson-" + page;
    }
    return !ids.contains(id) && ids.contains("exercise-" + id) ? "exercise-" + id : id;
  }
}
