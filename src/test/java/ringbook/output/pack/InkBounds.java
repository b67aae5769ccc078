package ringbook.output.pack;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Where a page has ink, which of it is no grey, and its letters. */
final class InkBounds extends PDFGraphicsStreamEngine {

  private final GeneralPath path = new GeneralPath();
  private final Set<String> colours = new TreeSet<>();
  private final List<Glyph> glyphs = new ArrayList<>();
  private final List<Rectangle2D> dashes = new ArrayList<>();
  private Rectangle2D all;

  private InkBounds(PDPage page) {
    super(page);
  }

  static InkBounds of(PDPage page) throws IOException {
    InkBounds bounds = new InkBounds(page);
    bounds.processPage(page);
    return bounds;
  }

  /** Least distance of ink from an edge of the page, in points; endless on a blank page. */
  double least(PDPage page) {
    if (all == null) {
      return Double.POSITIVE_INFINITY;
    }
    double right = page.getMediaBox().getWidth() - all.getMaxX();
    double top = page.getMediaBox().getHeight() - all.getMaxY();
    return Math.min(Math.min(all.getMinX(), right), Math.min(all.getMinY(), top));
  }

  /**
   * A letter on the page.
   *
   * @param size in points
   * @param box from its base line up, in points
   */
  record Glyph(String text, double size, Rectangle2D box) {}

  /** All letters that leave ink, in the order of printing. */
  List<Glyph> glyphs() {
    return glyphs;
  }

  /** Where dashed lines run. */
  List<Rectangle2D> dashes() {
    return dashes;
  }

  /** What is printed in colours that are no grey. */
  Set<String> colours() {
    return colours;
  }

  private void ink(Rectangle2D box, PDColor colour) throws IOException {
    all = all == null ? box : all.createUnion(box);
    int rgb = colour.toRGB();
    if ((rgb >> 16 & 255) != (rgb >> 8 & 255) || (rgb >> 8 & 255) != (rgb & 255)) {
      colours.add(Integer.toHexString(rgb));
    }
  }

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector shift) throws IOException {
    Rectangle2D box = new Rectangle2D.Double(0, 0, shift.getX(), 0.7);
    Rectangle2D on = matrix.createAffineTransform().createTransformedShape(box).getBounds2D();
    ink(on, getGraphicsState().getNonStrokingColor());
    String text = font.toUnicode(code);
    if (text != null && !text.isBlank()) {
      glyphs.add(new Glyph(text, Math.hypot(matrix.getShearX(), matrix.getScaleY()), on));
    }
  }

  @Override
  public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
    path.moveTo(a.getX(), a.getY());
    path.lineTo(b.getX(), b.getY());
    path.lineTo(c.getX(), c.getY());
    path.lineTo(d.getX(), d.getY());
    path.closePath();
  }

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void clip(int rule) {}

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint() == null ? new Point2D.Float() : path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    if (path.getCurrentPoint() != null) {
      path.closePath();
    }
  }

  @Override
  public void endPath() {
    path.reset();
  }

  @Override
  public void strokePath() throws IOException {
    if (getGraphicsState().getLineDashPattern().getDashArray().length > 0) {
      dashes.add(path.getBounds2D());
    }
    draw(getGraphicsState().getStrokingColor());
  }

  @Override
  public void fillPath(int rule) throws IOException {
    draw(getGraphicsState().getNonStrokingColor());
  }

  @Override
  public void fillAndStrokePath(int rule) throws IOException {
    ink(path.getBounds2D(), getGraphicsState().getNonStrokingColor());
    draw(getGraphicsState().getStrokingColor());
  }

  private void draw(PDColor colour) throws IOException {
    ink(path.getBounds2D(), colour);
    path.reset();
  }

  @Override
  public void shadingFill(COSName name) {}
}
