package ringbook.output.book;

import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import ringbook.units.Decimal;
import ringbook.units.Numbers;

/** Gives typeset formulas the colour of the text, and makes those smaller that are too wide. */
final class PrintFormulas {

  private static final String INK = "#2a2420";
  private static final Pattern EMS = Pattern.compile("(-?[0-9.]+)em");
  private static final Pattern WIDTH = Pattern.compile("(?:^|;|\")\\s*width:\\s*([0-9.]+)em");

  /** Widest formula in the text column and beside the values of the appendix, in em of its text. */
  private static final double WIDEST = 31;

  /** Widest formula in the formula column of the appendix. */
  private static final double NARROW = 10.5;

  private PrintFormulas() {}

  /** Whether {@code xhtml} is a typeset formula that fits in the formula column. */
  static boolean narrow(String xhtml) {
    int style = xhtml.indexOf("style=\"");
    if (!xhtml.startsWith("<svg") || style < 0) {
      return false;
    }
    OptionalDouble width = width(xhtml.substring(style + 7));
    return width.isPresent() && width.getAsDouble() <= NARROW;
  }

  static void prepare(Element svg) {
    svg.setAttribute("color", INK);
    svg.removeAttribute("data-tex");
    String style = svg.getAttribute("style");
    double width = width(style).orElse(0);
    if (width > WIDEST) {
      svg.setAttribute("style", scaled(style, WIDEST / width));
    }
  }

  private static OptionalDouble width(String style) {
    return WIDTH
        .matcher(style)
        .results()
        .findFirst()
        .map(found -> Decimal.parse(found.group(1)))
        .orElse(OptionalDouble.empty());
  }

  private static String scaled(String style, double share) {
    return EMS.matcher(style).replaceAll(found -> scaled(found, share));
  }

  private static String scaled(MatchResult found, double share) {
    double em = Decimal.parse(found.group(1)).orElseThrow();
    return Numbers.fixed(em * share, 3) + "em";
  }
}
