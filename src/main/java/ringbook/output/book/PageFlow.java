package ringbook.output.book;

import com.openhtmltopdf.extend.SVGDrawer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Arranges the lessons so that their pages are full. A figure that has no room on its page lets the
 * text behind it go first; its numbers stay with it, or follow overleaf with a line that names its
 * page. What a lesson says in short does not stand on a page alone.
 */
final class PageFlow {

  private final TallPages measures;
  private final Map<String, Integer> pages = new LinkedHashMap<>();

  private PageFlow(TallPages measures) {
    this.measures = measures;
  }

  /**
   * Moves blocks within their lessons, and sets the room for page numbers.
   *
   * @param print made ready for print
   */
  static void arrange(Document print, BookFonts fonts, SVGDrawer drawer) throws IOException {
    Element root = print.getDocumentElement();
    List<Element> parts = new ArrayList<>();
    List<Element> lessons = new ArrayList<>();
    for (Element section : Elements.children(Elements.named(root, "body").get(0))) {
      if (Elements.hasClass(section, "lesson")) {
        lessons.add(section);
        parts.add(section);
      } else if (Elements.hasClass(section, "contents")) {
        parts.add(section);
      }
    }
    if (lessons.isEmpty()) {
      return;
    }
    PageFlow flow = new PageFlow(TallPages.of(root, parts, fonts, drawer));
    int page = 1;
    for (Element part : parts) {
      page += lessons.contains(part) ? flow.chapter(part, page + 1) : flow.pagesOf(part);
    }
    PageDigits.mark(root, flow.pages, page);
  }

  private int pagesOf(Element part) {
    return (int) Math.ceil(measures.height(part) / FlowPages.HEIGHT);
  }

  /** Arranges a lesson and returns the number of its pages. */
  private int chapter(Element lesson, int first) {
    FlowPages set = new FlowPages(FlowUnit.of(lesson, measures), measures);
    set.fill();
    set.placeSummary();
    for (FlowPages.Placed placed : set.placed()) {
      List<Element> blocks = new ArrayList<>(placed.unit().leads());
      blocks.add(placed.unit().block());
      for (Element block : blocks) {
        for (Element inner : Elements.all(block)) {
          if (inner.hasAttribute("id")) {
            pages.put(inner.getAttribute("id"), first + placed.page());
          }
        }
      }
    }
    pages.put(lesson.getAttribute("id"), first);
    return set.pages();
  }
}
