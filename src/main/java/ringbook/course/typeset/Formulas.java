package ringbook.course.typeset;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.scilab.forge.jlatexmath.Box;
import org.scilab.forge.jlatexmath.ParseException;
import org.scilab.forge.jlatexmath.TeXConstants;
import org.scilab.forge.jlatexmath.TeXFormula;

/**
 * Typesets formulas written in TeX, as drawings that carry in {@code data-tex} what they were
 * written as, for formats with formulas of their own.
 */
public final class Formulas {

  /** Units of the drawing to one em. */
  private static final int EM = 1000;

  /** Type size for lengths that do not grow with the type, such as the gap behind an exponent. */
  private static final int POINTS = 12;

  private Formulas() {}

  /**
   * The formula as it stands inside a line; empty if {@code tex} cannot be typeset.
   *
   * @param tex the formula
   * @param speech how it is read out
   */
  public static Optional<String> inline(String tex, String speech) {
    return svg(tex, speech, TeXConstants.STYLE_TEXT);
  }

  /** The same as it stands on a line of its own. */
  public static Optional<String> display(String tex, String speech) {
    return svg(tex, speech, TeXConstants.STYLE_DISPLAY);
  }

  /** Whether every brace of {@code tex} is closed; the typesetter does not mind. */
  static boolean balanced(String tex) {
    int open = 0;
    for (int i = 0; i < tex.length(); i++) {
      switch (tex.charAt(i)) {
        case '\\' -> i++;
        case '{' -> open++;
        case '}' -> open--;
        default -> {}
      }
      if (open < 0) {
        return false;
      }
    }
    return open == 0;
  }

  private static Optional<String> svg(String tex, String speech, int style) {
    if (tex.isBlank() || !balanced(tex)) {
      return Optional.empty();
    }
    try {
      Box box = new TeXFormula(tex).createTeXIcon(style, POINTS).getBox();
      return Optional.of(drawing(box, tex, speech));
    } catch (ParseException unreadable) {
      return Optional.empty();
    }
  }

  private static String drawing(Box box, String tex, String speech) {
    OutlineGraphics graphics = new OutlineGraphics(EM);
    box.draw(graphics, 0, 0);
    Path2D all = new Path2D.Double();
    StringBuilder letters = new StringBuilder();
    for (Shape piece : graphics.pieces()) {
      all.append(piece, false);
      letters.append(PathText.of(piece));
    }
    Rectangle2D drawn = all.getBounds2D();
    // Slanted letters lean out of their box.
    long left = Math.min(0, (long) Math.floor(drawn.getMinX()));
    long right = Math.max(whole(box.getWidth()), (long) Math.ceil(drawn.getMaxX()));
    long top = Math.min(-whole(box.getHeight()), (long) Math.floor(drawn.getMinY()));
    long bottom = Math.max(whole(box.getDepth()), (long) Math.ceil(drawn.getMaxY()));
    return "<svg class=\"math\" role=\"img\" aria-label=\""
        + escaped(speech)
        + "\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\""
        + (left + " " + top + " " + (right - left) + " " + (bottom - top))
        + "\" style=\"width:"
        + em(right - left)
        + ";height:"
        + em(bottom - top)
        + ";vertical-align:"
        + em(-bottom)
        + "\" data-tex=\""
        + escaped(tex)
        + "\"><path fill=\"currentColor\" d=\""
        + letters
        + "\"/></svg>";
  }

  private static long whole(double em) {
    return Math.round(em * EM);
  }

  private static String em(long units) {
    long size = Math.abs(units);
    String thousandths = String.valueOf(EM + size % EM).substring(1);
    return (units < 0 ? "-" : "") + size / EM + "." + thousandths + "em";
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
