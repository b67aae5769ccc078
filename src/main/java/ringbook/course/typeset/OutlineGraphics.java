package ringbook.course.typeset;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/**
 * Gathers the outlines of all that is drawn on it, letter by letter; knows no pixels and no
 * pictures.
 */
final class OutlineGraphics extends AbstractGraphics2D {

  private static final FontRenderContext UNHINTED =
      new FontRenderContext(new AffineTransform(), true, true);

  private final List<Shape> pieces = new ArrayList<>();
  private final double units;

  /**
   * Nothing drawn yet.
   *
   * @param units how many units of what is written are one of what is drawn
   */
  OutlineGraphics(double units) {
    super(true);
    this.units = units;
    gc = new GraphicContext();
    gc.setColor(Color.BLACK);
  }

  /** All that was drawn, in this order, in the given units. */
  List<Shape> pieces() {
    AffineTransform scale = AffineTransform.getScaleInstance(units, units);
    return pieces.stream().map(scale::createTransformedShape).toList();
  }

  @Override
  public void fill(Shape shape) {
    pieces.add(getTransform().createTransformedShape(shape));
  }

  @Override
  public void draw(Shape shape) {
    fill(getStroke().createStrokedShape(shape));
  }

  /**
   * Letters stand at whole units, so that one letter has the same outline wherever it stands, and a
   * page with hundreds of formulas can share it.
   */
  @Override
  public void drawString(String text, float x, float y) {
    AffineTransform at = getTransform();
    at.translate(x, y);
    AffineTransform whole =
        AffineTransform.getTranslateInstance(
            Math.rint(at.getTranslateX() * units) / units - at.getTranslateX(),
            Math.rint(at.getTranslateY() * units) / units - at.getTranslateY());
    whole.concatenate(at);
    Shape letters = getFont().createGlyphVector(UNHINTED, text).getOutline();
    pieces.add(whole.createTransformedShape(letters));
  }

  @Override
  public FontMetrics getFontMetrics(Font font) {
    return new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB)
        .createGraphics()
        .getFontMetrics(font);
  }

  @Override
  public Graphics create() {
    throw new UnsupportedOperationException("an outline is drawn in one go");
  }

  @Override
  public void dispose() {}

  @Override
  public GraphicsConfiguration getDeviceConfiguration() {
    throw new UnsupportedOperationException("an outline has no device");
  }

  @Override
  public void setXORMode(Color color) {
    throw new UnsupportedOperationException("an outline has no colours");
  }

  @Override
  public void copyArea(int x, int y, int width, int height, int dx, int dy) {
    throw new UnsupportedOperationException("an outline has no pixels");
  }

  @Override
  public void drawString(AttributedCharacterIterator text, float x, float y) {
    throw new UnsupportedOperationException("formulas draw plain strings");
  }

  @Override
  public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
    throw new UnsupportedOperationException("an outline has no pictures");
  }

  @Override
  public boolean drawImage(
      Image image, int x, int y, int width, int height, ImageObserver observer) {
    throw new UnsupportedOperationException("an outline has no pictures");
  }

  @Override
  public void drawRenderedImage(RenderedImage image, AffineTransform transform) {
    throw new UnsupportedOperationException("an outline has no pictures");
  }

  @Override
  public void drawRenderableImage(RenderableImage image, AffineTransform transform) {
    throw new UnsupportedOperationException("an outline has no pictures");
  }
}
