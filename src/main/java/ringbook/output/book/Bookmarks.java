package ringbook.output.book;

import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Adds the bookmarks a reading program shows beside the book: parts, and the sections in them. */
final class Bookmarks {

  private Bookmarks() {}

  static void add(Document document) {
    Element root = document.getDocumentElement();
    Element bookmarks = create(document, "bookmarks");
    int unnamed = 0;
    for (Element part : Elements.named(root, "section")) {
      Element mark = null;
      for (Element heading : Elements.all(part)) {
        if (heading.getNodeName().equals("h1")) {
          mark = bookmark(document, bookmarks, part.getAttribute("data-bookmark"), part);
        } else if (mark != null && isSection(heading)) {
          if (!heading.hasAttribute("id")) {
            heading.setAttribute("id", "section-" + ++unnamed);
          }
          bookmark(document, mark, Elements.text(heading), heading);
        }
      }
    }
    Elements.named(root, "head").get(0).appendChild(bookmarks);
  }

  private static boolean isSection(Element heading) {
    return heading.getNodeName().equals("h2") && !Elements.hasClass(heading, "exercise-head");
  }

  private static Element bookmark(Document document, Element parent, String name, Element target) {
    Element bookmark = create(document, "bookmark");
    bookmark.setAttribute("name", name);
    bookmark.setAttribute("href", "#" + target.getAttribute("id"));
    parent.appendChild(bookmark);
    return bookmark;
  }

  private static Element create(Document document, String name) {
    return document.createElementNS(document.getDocumentElement().getNamespaceURI(), name);
  }
}
