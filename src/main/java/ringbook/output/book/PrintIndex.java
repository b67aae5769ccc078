package ringbook.output.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Fills the index of quantities, and in the list of formulas where each is used: for each the first
 * place in every chapter that states it. The style sheet prints the page numbers.
 */
final class PrintIndex {

  private PrintIndex() {}

  static void fill(Element root) {
    Map<String, List<String>> uses = new LinkedHashMap<>();
    for (Element section : Elements.named(root, "section")) {
      if (Elements.hasClass(section, "lesson")) {
        gather(section, uses);
      }
    }
    for (Element entry : Elements.named(root, "span")) {
      if (entry.hasAttribute("data-index")) {
        list(entry, uses.getOrDefault(entry.getAttribute("data-index"), List.of()));
      }
      if (entry.hasAttribute("data-uses")) {
        leadBack(entry, uses.getOrDefault(entry.getAttribute("data-uses"), List.of()));
      }
    }
  }

  /** From the entry of a quantity to the lessons that use it. */
  private static void leadBack(Element entry, List<String> uses) {
    if (uses.isEmpty()) {
      entry.getParentNode().removeChild(entry);
      return;
    }
    Document document = entry.getOwnerDocument();
    entry.appendChild(document.createTextNode("Used on "));
    Element first = document.createElementNS(entry.getNamespaceURI(), "span");
    first.setAttribute("class", "unbroken");
    first.appendChild(document.createTextNode(uses.size() > 1 ? "pages\u00a0" : "page\u00a0"));
    Element page = pageLink(document, uses.get(0));
    first.appendChild(page);
    entry.appendChild(first);
    Element last = list(entry, uses.subList(1, uses.size()));
    if (uses.size() > 1) {
      page.setAttribute(PrintPunctuation.SIGNS_BEHIND, ",");
      last.setAttribute(PrintPunctuation.SIGNS_BEHIND, ".");
    } else {
      page.setAttribute(PrintPunctuation.SIGNS_BEHIND, ".");
    }
  }

  /**
   * Adds the pages with commas between them, each on the line of the page before it.
   *
   * @return the last element of the entry
   */
  private static Element list(Element entry, List<String> uses) {
    for (String use : uses) {
      if (entry.getLastChild() instanceof Element before) {
        before.setAttribute(PrintPunctuation.SIGNS_BEHIND, ",");
      }
      entry.appendChild(entry.getOwnerDocument().createTextNode(" "));
      entry.appendChild(pageLink(entry.getOwnerDocument(), use));
    }
    return (Element) entry.getLastChild();
  }

  private static void gather(Element lesson, Map<String, List<String>> uses) {
    Map<String, String> first = new LinkedHashMap<>();
    for (Element element : Elements.all(lesson)) {
      String key = element.getAttribute("data-key");
      if (!key.isEmpty() && !first.containsKey(key)) {
        if (!element.hasAttribute("id")) {
          element.setAttribute("id", "use-" + lesson.getAttribute("id") + "-" + key);
        }
        first.put(key, element.getAttribute("id"));
      }
    }
    first.forEach((key, id) -> uses.computeIfAbsent(key, k -> new ArrayList<>()).add(id));
  }

  private static Element pageLink(Document document, String id) {
    Element link = document.createElementNS(document.getDocumentElement().getNamespaceURI(), "a");
    link.setAttribute("href", "#" + id);
    link.setAttribute("class", "page");
    return link;
  }
}
