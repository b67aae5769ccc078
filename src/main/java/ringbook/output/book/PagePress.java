package ringbook.output.book;

import java.io.IOException;
import java.util.List;
import java.util.function.UnaryOperator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import ringbook.course.CourseInfo;

/** Sets single pages with the book's fonts and press. */
public final class PagePress {

  /** Stands where the fonts lack a letter. */
  public static final char STAND_IN = '□';

  /** Begins the address of a link that stands where a field of a form will be. */
  public static final String FIELD = "field:";

  /** Attributes of drawings that hold a colour. */
  private static final List<String> COLOURS = List.of("fill", "stroke", "color");

  private final BookFonts fonts;

  private PagePress(BookFonts fonts) {
    this.fonts = fonts;
  }

  /** A press with the fonts read. */
  public static PagePress open() throws IOException {
    return new PagePress(BookFonts.liberation());
  }

  /**
   * The bytes of a PDF: tagged, with embedded fonts, the same for the same text.
   *
   * @param xhtml a whole document with its style in the head, of letters the fonts know
   * @param info gives date and identity
   */
  public byte[] press(String xhtml, CourseInfo info) throws IOException {
    Document print = PrintDocument.parse(xhtml);
    Letters.check(print, fonts);
    return BookPress.press(print, fonts, info).bytes();
  }

  /**
   * The bytes of a sheet with drawings, formulas and exercises in it, as {@link #press}. Drawings
   * stand in an element of class {@code drawing}, which may state their width in millimetres as
   * {@code data-mm}. Links become plain words, but for those to {@link #FIELD} and those inside the
   * sheet.
   *
   * @param ink gives the colour in which a colour of a drawing is printed
   * @param last what is added to the finished pages
   */
  public byte[] sheet(String xhtml, CourseInfo info, UnaryOperator<String> ink, LastStep last)
      throws IOException {
    Document print = PrintDocument.sheet(xhtml);
    for (Element svg : Elements.named(print.getDocumentElement(), "svg")) {
      Elements.all(svg).forEach(element -> colour(element, ink));
    }
    Letters.check(print, fonts);
    return BookPress.press(print, fonts, info, last).bytes();
  }

  private static void colour(Element element, UnaryOperator<String> ink) {
    for (String attribute : COLOURS) {
      if (element.hasAttribute(attribute)) {
        element.setAttribute(attribute, ink.apply(element.getAttribute(attribute)));
      }
    }
  }

  /** {@code text} with {@link #STAND_IN} for every letter the fonts lack. */
  public String printable(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> Character.isWhitespace(c) || fonts.know(c) ? c : STAND_IN)
        .forEach(out::appendCodePoint);
    return out.toString();
  }
}
