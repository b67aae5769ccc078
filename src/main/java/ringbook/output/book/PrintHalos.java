package ringbook.output.book;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.w3c.dom.Element;
import ringbook.course.typeset.PathText;
import ringbook.units.Decimal;
import ringbook.units.Numbers;

/**
 * The pale outline that keeps the words of a drawing clear of its lines. The page maker fills
 * letters and does not draw their outline, so the text that is drawn for its outline alone becomes
 * a path of the same letters.
 */
final class PrintHalos {

  /** Units of a path in one unit of a drawing: its numbers are whole. */
  private static final int FINENESS = 100;

  private static final FontRenderContext UNHINTED =
      new FontRenderContext(new AffineTransform(), true, true);
  private static final Font REGULAR = font("Regular");
  private static final Font BOLD = font("Bold");

  private PrintHalos() {}

  private static Font font(String style) {
    try (InputStream in = BookFonts.sans(style)) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the font of the drawings", e);
    }
  }

  static void prepare(Element drawing) {
    for (Element text : Elements.named(drawing, "text")) {
      if (text.hasAttribute("stroke-width")) {
        text.getParentNode().replaceChild(outlined(text), text);
      }
    }
  }

  private static Element outlined(Element text) {
    Element path = text.getOwnerDocument().createElementNS(text.getNamespaceURI(), "path");
    for (String kept : new String[] {"class", "fill", "stroke", "stroke-linejoin", "aria-hidden"}) {
      if (text.hasAttribute(kept)) {
        path.setAttribute(kept, text.getAttribute(kept));
      }
    }
    path.setAttribute("stroke-width", Numbers.fixed(number(text, "stroke-width") * FINENESS, 0));
    path.setAttribute("transform", "scale(" + 1.0 / FINENESS + ")");
    path.setAttribute("d", PathText.of(letters(text)));
    return path;
  }

  private static Shape letters(Element text) {
    Font face = text.getAttribute("font-weight").equals("bold") ? BOLD : REGULAR;
    double size = number(text, "font-size") * FINENESS;
    GlyphVector glyphs =
        face.deriveFont((float) size).createGlyphVector(UNHINTED, Elements.text(text));
    double across = glyphs.getLogicalBounds().getWidth();
    double left =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> across / 2;
          case "end" -> across;
          default -> 0;
        };
    return AffineTransform.getTranslateInstance(
            number(text, "x") * FINENESS - left, number(text, "y") * FINENESS)
        .createTransformedShape(glyphs.getOutline());
  }

  private static double number(Element element, String attribute) {
    return Decimal.parse(element.getAttribute(attribute)).orElseThrow();
  }
}
