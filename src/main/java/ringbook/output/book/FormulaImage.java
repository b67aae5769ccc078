package ringbook.output.book;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;
import org.w3c.dom.Element;
import ringbook.units.Decimal;

/** A typeset formula at a place on a page: one outline, filled with the colour of the text. */
final class FormulaImage implements SVGImage {

  private final Element svg;
  private final Shape outline;
  private final String[] box;
  private final double width;
  private final double height;
  private final double dots;
  private final Object same;

  /**
   * A formula.
   *
   * @param width in dots of the page maker, as the style of the element states it
   * @param height likewise
   * @param dots of the page maker in a pixel of 1/96 in
   * @param same one object for all that look alike
   */
  FormulaImage(Element svg, Shape outline, double width, double height, double dots, Object same) {
    this.svg = svg;
    this.same = same;
    this.outline = outline;
    this.width = width;
    this.height = height;
    this.dots = dots;
    box = svg.getAttribute("viewBox").strip().split("\\s+", -1);
  }

  /** Whether this element is a formula of one outline, as the typesetter writes it. */
  static boolean isFormula(Element svg) {
    List<Element> all = Elements.all(svg);
    return Elements.hasClass(svg, "math")
        && all.size() == 2
        && all.get(1).getNodeName().equals("path")
        && all.get(1).getAttribute("fill").equals("currentColor")
        && !all.get(1).hasAttribute("transform")
        && svg.getAttribute("color").matches("#[0-9a-fA-F]{6}");
  }

  /** The outline's element. */
  static Element path(Element svg) {
    return Elements.all(svg).get(1);
  }

  /** The outline of path data (SVG 1.1, 8.3), its quadratic curves raised to cubic ones. */
  static Shape outline(String data) {
    try {
      Shape read = AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_NON_ZERO);
      return raised(read);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** A PDF has cubic curves only (ISO 32000-1, 8.5.2.2), and the page maker bends others. */
  private static Path2D raised(Shape shape) {
    Path2D.Double raised = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double[] p = new double[6];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(p)) {
        case PathIterator.SEG_MOVETO -> raised.moveTo(p[0], p[1]);
        case PathIterator.SEG_LINETO -> raised.lineTo(p[0], p[1]);
        case PathIterator.SEG_QUADTO -> {
          double x = raised.getCurrentPoint().getX();
          double y = raised.getCurrentPoint().getY();
          raised.curveTo(
              x + 2 * (p[0] - x) / 3,
              y + 2 * (p[1] - y) / 3,
              p[2] + 2 * (p[0] - p[2]) / 3,
              p[3] + 2 * (p[1] - p[3]) / 3,
              p[2],
              p[3]);
        }
        case PathIterator.SEG_CUBICTO -> raised.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
        default -> raised.closePath();
      }
    }
    return raised;
  }

  private static double number(String text) {
    return Decimal.parse(text).orElseThrow();
  }

  @Override
  public int getIntrinsicWidth() {
    return (int) Math.ceil(width);
  }

  @Override
  public int getIntrinsicHeight() {
    return (int) Math.ceil(height);
  }

  @Override
  public void drawSVG(OutputDevice page, RenderingContext context, double x, double y) {
    // A drawing is cut off at whole pixels: one more than it takes leaves nothing to cut.
    float across = (float) Math.ceil(width / dots) + 1;
    float down = (float) Math.ceil(height / dots) + 1;
    page.drawWithGraphics((float) x, (float) y, across, down, same, this::fill);
  }

  private void fill(Graphics2D graphics) {
    double scale = height / dots / number(box[3]);
    AffineTransform place = AffineTransform.getScaleInstance(scale, scale);
    place.translate(-number(box[0]), -number(box[1]));
    graphics.setColor(Color.decode(svg.getAttribute("color")));
    graphics.fill(rounded(outline.getPathIterator(place)));
  }

  /** To hundredths of a pixel, finer than printers print: more digits double the file. */
  private static Path2D rounded(PathIterator exact) {
    Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double[] p = new double[6];
    for (; !exact.isDone(); exact.next()) {
      int kind = exact.currentSegment(p);
      for (int i = 0; i < p.length; i++) {
        p[i] = Math.rint(100 * p[i]) / 100;
      }
      switch (kind) {
        case PathIterator.SEG_MOVETO -> path.moveTo(p[0], p[1]);
        case PathIterator.SEG_LINETO -> path.lineTo(p[0], p[1]);
        case PathIterator.SEG_CUBICTO -> path.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
        default -> path.closePath();
      }
    }
    return path;
  }
}
