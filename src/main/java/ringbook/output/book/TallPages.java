package ringbook.output.book;

import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.LineBox;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Sets the lessons once on pages without end, to learn how high each block is. Nothing is drawn,
 * and what stands behind the lessons is left out: this takes a fraction of the time of the book.
 */
final class TallPages {

  private static final String TALL = "@page { size: 210mm 20000mm }";

  private final IdentityHashMap<Element, Box> boxes = new IdentityHashMap<>();
  private final double dotsPerPoint;

  private TallPages(PdfBoxRenderer renderer) {
    dotsPerPoint = renderer.getDotsPerPoint();
    gather(renderer.getRootBox());
  }

  /**
   * Measures the parts of a book.
   *
   * @param parts what is set, children of the body; the others are not
   */
  static TallPages of(Element root, List<Element> parts, BookFonts fonts, SVGDrawer drawer)
      throws IOException {
    Element body = Elements.named(root, "body").get(0);
    List<Node> all = new ArrayList<>();
    while (body.getFirstChild() != null) {
      all.add(body.removeChild(body.getFirstChild()));
    }
    parts.forEach(body::appendChild);
    Element style = Elements.named(root, "style").get(0);
    Text tall = style.getOwnerDocument().createTextNode(TALL);
    style.appendChild(tall);
    try (PDDocument pdf = new PDDocument();
        PdfBoxRenderer renderer =
            BookPress.builder(root.getOwnerDocument(), fonts, pdf, drawer, new BookWarnings())
                .buildPdfRenderer()) {
      renderer.layout();
      return new TallPages(renderer);
    } finally {
      style.removeChild(tall);
      all.forEach(body::appendChild);
    }
  }

  private void gather(Box box) {
    if (box instanceof BlockBox && box.getElement() != null) {
      boxes.putIfAbsent(box.getElement(), box);
    }
    for (int i = 0; i < box.getChildCount(); i++) {
      gather(box.getChild(i));
    }
  }

  /** Whether the element takes room of its own. */
  boolean has(Element element) {
    return boxes.containsKey(element);
  }

  /** Height with the space above and below, in points; 0 for what takes no room. */
  double height(Element element) {
    return has(element) ? boxes.get(element).getHeight() / dotsPerPoint : 0;
  }

  /** Where the element begins, from the top of its chapter, in points. */
  double top(Element element) {
    return boxes.get(element).getAbsY() / dotsPerPoint;
  }

  /** Where each line or item begins, from the top of the element, in points. */
  List<Double> lines(Element element) {
    Box box = boxes.get(element);
    List<Double> lines = new ArrayList<>();
    for (int i = 0; i < box.getChildCount(); i++) {
      Box child = box.getChild(i);
      if (child instanceof LineBox || child instanceof BlockBox) {
        lines.add((child.getAbsY() - box.getAbsY()) / dotsPerPoint);
      }
    }
    return lines;
  }
}
