package ringbook.output.book;

import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import ringbook.units.Decimal;
import ringbook.units.Numbers;

/**
 * Makes drawings fit for print: each gets its words as the alternative the page maker reads, the
 * SVG namespace if it was written without, and figures a size that suits the page.
 */
final class PrintDrawings {

  private static final String SVG = "http://www.w3.org/2000/svg";

  /** Width of the text column, in millimetres, as in book.css. */
  private static final double WIDEST_MM = 134;

  /** No figure takes more than this of the page's height, so that it finds room beside text. */
  private static final double TALLEST_MM = 100;

  /** One unit of a drawing is at most this large, or its words would shout beside the text. */
  private static final double LARGEST_UNIT_MM = 0.27;

  /** Nor smaller than this, for type of 7 pt and more: a high drawing then takes more height. */
  private static final double SMALLEST_UNIT_MM = 0.21;

  private PrintDrawings() {}

  static void prepare(Element root) {
    for (Element svg : Elements.named(root, "svg")) {
      Element drawing = inNamespace(svg);
      drawing.setAttribute("alt", words(drawing));
      if (drawing.getParentNode() instanceof Element parent
          && Elements.hasClass(parent, "drawing")) {
        size(drawing, parent.getAttribute("data-mm"));
        PrintHalos.prepare(drawing);
      } else if (Elements.hasClass(drawing, "math")) {
        PrintFormulas.prepare(drawing);
      }
    }
  }

  private static Element inNamespace(Element element) {
    Element named = element;
    if (!SVG.equals(element.getNamespaceURI())) {
      Document document = element.getOwnerDocument();
      named = (Element) document.renameNode(element, SVG, element.getNodeName());
    }
    for (Node child = named.getFirstChild(); child != null; ) {
      Node next = child.getNextSibling();
      if (child instanceof Element inner) {
        inNamespace(inner);
      }
      child = next;
    }
    return named;
  }

  /** What the drawing says of itself: title and description, or else its label. */
  private static String words(Element svg) {
    StringBuilder words = new StringBuilder();
    for (String part : List.of("title", "desc")) {
      for (Element said : Elements.named(svg, part)) {
        if (said.getParentNode() == svg) {
          words.append(words.length() > 0 ? ". " : "").append(Elements.text(said));
        }
      }
    }
    return words.length() > 0 ? words.toString() : svg.getAttribute("aria-label");
  }

  /**
   * Gives a drawing its size on paper.
   *
   * @param stated width in millimetres where the page states one, else empty
   */
  private static void size(Element svg, String stated) {
    String[] box = svg.getAttribute("viewBox").strip().split("[\\s,]+", -1);
    if (box.length != 4) {
      throw new IllegalStateException("a figure without viewBox: " + words(svg));
    }
    double across = Decimal.parse(box[2]).orElseThrow();
    double shape = Decimal.parse(box[3]).orElseThrow() / across;
    double width =
        Decimal.parse(stated)
            .orElse(
                Math.min(
                    Math.min(WIDEST_MM, across * LARGEST_UNIT_MM),
                    Math.max(TALLEST_MM / shape, across * SMALLEST_UNIT_MM)));
    svg.removeAttribute("width");
    svg.removeAttribute("height");
    svg.setAttribute(
        "style",
        "width:" + Numbers.fixed(width, 2) + "mm;height:" + Numbers.fixed(width * shape, 2) + "mm");
  }
}
