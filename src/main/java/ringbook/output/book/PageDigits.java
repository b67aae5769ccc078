package ringbook.output.book;

import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/**
 * Says of each link how many digits its page number will have: the page maker keeps room for three
 * before it knows the page, and the style takes back what is too much.
 */
final class PageDigits {

  private static final List<String> NUMBERED = List.of("at-page", "page");

  private PageDigits() {}

  /**
   * Marks the links.
   *
   * @param pages the page of each place in the lessons
   * @param last the last page of the lessons; other places come behind it
   */
  static void mark(Element root, Map<String, Integer> pages, int last) {
    for (Element link : Elements.named(root, "a")) {
      if (NUMBERED.stream().anyMatch(word -> Elements.hasClass(link, word))) {
        String target = link.getAttribute("href").substring(1);
        int digits = String.valueOf(pages.getOrDefault(target, 2 * last)).length();
        Elements.addClass(link, "digits-" + digits);
      }
    }
  }
}
