package ringbook.output.ebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.output.PlaceMarks;
import ringbook.output.PrintedPages;

/**
 * Marks in the pages of the e-book where the pages of the printed book begin: before the first
 * block of text that begins on a page, so that a page which opens with the rest of a paragraph is
 * marked behind that paragraph. Texts must come in reading order.
 */
final class PageBreaks {

  /**
   * An entry of the page list.
   *
   * @param href where the page begins
   * @param page the number printed on it
   */
  public record Entry(String href, int page) {}

  private static final Pattern TAG =
      Pattern.compile("<(/?[A-Za-z][A-Za-z0-9]*)((?:[^\"'<>]++|\"[^\"]*+\"|'[^']*+')*+)>");

  private static final Pattern PLACE =
      Pattern.compile(" " + PlaceMarks.ATTRIBUTE + "=\"([^\"]*)\"");

  /** Elements whose parents hold nothing but them: the mark goes inside. */
  private static final Set<String> MARKED_INSIDE = Set.of("p", "li", "dt", "dd", "td", "th", "pre");

  private final PrintedPages pages;
  private final List<Entry> entries = new ArrayList<>();
  private int reached;

  PageBreaks(PrintedPages pages) {
    this.pages = pages;
  }

  /** What has been marked so far, in reading order. */
  List<Entry> entries() {
    return List.copyOf(entries);
  }

  /** The text of a page with marks instead of the names of places. */
  String marked(String file, String xhtml) {
    return written(file, xhtml, true);
  }

  /** The same for a text that may hold no marks: where a page begins, the element gets an id. */
  String named(String file, String xhtml) {
    return written(file, xhtml, false);
  }

  private String written(String file, String xhtml, boolean marks) {
    StringBuilder out = new StringBuilder();
    Matcher tag = TAG.matcher(xhtml);
    int folded = 0;
    while (tag.find()) {
      Matcher place = PLACE.matcher(tag.group(2));
      String written = tag.group();
      if (place.find()) {
        String rest = place.replaceFirst("");
        int page = folded > 0 ? 0 : pages.of(place.group(1)).orElse(0);
        written = page > reached ? broken(tag.group(1), rest, page, marks) : open(tag, rest);
        if (page > reached) {
          reached = page;
          entries.add(new Entry(file + "#" + id(page), page));
        }
      }
      folded += tag.group(1).equals("details") ? 1 : tag.group(1).equals("/details") ? -1 : 0;
      tag.appendReplacement(out, Matcher.quoteReplacement(written));
    }
    return tag.appendTail(out).toString();
  }

  private static String open(Matcher tag, String attributes) {
    return "<" + tag.group(1) + attributes + ">";
  }

  private static String broken(String name, String attributes, int page, boolean marks) {
    if (!marks) {
      return "<" + name + " id=\"" + id(page) + "\"" + attributes + ">";
    }
    String element = "<" + name + attributes + ">";
    String mark =
        "<span epub:type=\"pagebreak\" role=\"doc-pagebreak\" id=\""
            + id(page)
            + "\" aria-label=\"Page "
            + page
            + "\"></span>";
    return MARKED_INSIDE.contains(name) ? element + mark : mark + element;
  }

  private static String id(int page) {
    return "page-" + page;
  }
}
