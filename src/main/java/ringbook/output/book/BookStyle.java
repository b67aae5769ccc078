package ringbook.output.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.output.Templates;

/** Numbers that stand in {@code book.css} and that the arrangement of pages reckons with. */
final class BookStyle {

  private static final double MILLIMETRE = 72 / 25.4;

  /** Height of a page of A4 (ISO 216), in points. */
  private static final double PAGE = 297 * MILLIMETRE;

  private static final String CSS = css();

  private BookStyle() {}

  private static String css() {
    try {
      return "\n" + Templates.style("book/book");
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
  }

  /** Height of the text block, in points. */
  static double textHeight() {
    return PAGE - top("@page", "margin") - bottom("@page", "margin");
  }

  /** Room that a heading needs at the foot of a page, itself included, in points. */
  static double roomForHeading() {
    return top("h1", "-fs-page-break-min-height");
  }

  /** Lines of a paragraph that stay together at either end. */
  static int linesTogether() {
    return (int) top("body", "orphans");
  }

  /** What {@code dense} spares of a box, of neighbours' margins one: they share it; in points. */
  static double sparedByBox() {
    double head =
        bottom(".exercise-head", "margin") - bottom(".dense .exercise-head", "margin-bottom");
    double above = top(".working", "padding") - top(".dense", "padding");
    double below = bottom(".working", "padding") - bottom(".dense", "padding");
    return top(".working", "margin") - top(".dense", "margin") + above + below + head;
  }

  /** What {@code dense} spares of an item, in points. */
  static double sparedByItem() {
    return bottom("li", "margin") - bottom(".dense li", "margin-bottom");
  }

  /** What {@code dense} spares of a paragraph, in points. */
  static double sparedByParagraph() {
    return bottom("p", "margin") - bottom(".dense p", "margin-bottom");
  }

  private static double top(String selector, String property) {
    return number(values(selector, property)[0]);
  }

  /** Of three or four values the third is for below, of fewer the first. */
  private static double bottom(String selector, String property) {
    String[] values = values(selector, property);
    return number(values[values.length > 2 ? 2 : 0]);
  }

  private static String[] values(String selector, String property) {
    Matcher found =
        Pattern.compile(
                "\n"
                    + Pattern.quote(selector)
                    + "(?:,[^{}]*)? \\{[^{}]*?\\s"
                    + Pattern.quote(property)
                    + ": ([^;]*);")
            .matcher(CSS);
    if (!found.find()) {
      throw new IllegalStateException("book.css has no '" + property + "' for " + selector);
    }
    return found.group(1).split(" ", -1);
  }

  /** Points, millimetres, or a bare number. */
  private static double number(String written) {
    double number = Double.parseDouble(written.replaceAll("(pt|mm)$", ""));
    return written.endsWith("mm") ? number * MILLIMETRE : number;
  }
}
