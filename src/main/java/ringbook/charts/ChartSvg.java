package ringbook.charts;

import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import ringbook.figures.SvgWriter;

/**
 * Draws a chart through Batik and writes its shapes anew: flat, without style sheets, clip paths or
 * ids, each with the classes of the palette.
 */
final class ChartSvg {

  private static final List<String> INHERITED =
      List.of("fill", "stroke", "stroke-width", "stroke-dasharray", "font-size", "transform");

  private static final Map<String, List<String>> SHAPES =
      Map.of(
          "line", List.of("x1", "y1", "x2", "y2"),
          "rect", List.of("x", "y", "width", "height"),
          "circle", List.of("cx", "cy", "r"),
          "ellipse", List.of("cx", "cy", "rx", "ry"),
          "path", List.of("d"),
          "polygon", List.of("points"),
          "polyline", List.of("points"),
          "text", List.of("x", "y"));

  private final StringBuilder out = new StringBuilder();

  private ChartSvg() {}

  /** The shapes of {@code chart} as SVG elements, one a line. */
  static String draw(JFreeChart chart, double width, double height) {
    Document document =
        GenericDOMImplementation.getDOMImplementation()
            .createDocument("http://www.w3.org/2000/svg", "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    SVGGraphics2D graphics = new SVGGraphics2D(context, false);
    chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    ChartSvg writer = new ChartSvg();
    writer.children(graphics.getRoot(), Map.of("fill", "#000000", "stroke", "none"));
    return writer.out.toString();
  }

  private void children(Element parent, Map<String, String> outer) {
    for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        Map<String, String> style = style(element, outer);
        if (SHAPES.containsKey(element.getLocalName())) {
          shape(element, style);
        } else if (element.getLocalName().equals("g")) {
          children(element, style);
        }
      }
    }
  }

  private static Map<String, String> style(Element element, Map<String, String> outer) {
    Map<String, String> style = new LinkedHashMap<>(outer);
    for (String name : INHERITED) {
      String value = element.getAttribute(name);
      if (!value.isEmpty()) {
        boolean nested = name.equals("transform") && style.containsKey(name);
        style.put(name, nested ? style.get(name) + " " + value : value);
      }
    }
    return style;
  }

  private void shape(Element element, Map<String, String> style) {
    String fill = colour(style.get("fill"));
    String stroke = colour(style.get("stroke"));
    boolean text = element.getLocalName().equals("text");
    if (fill.equals("none") && stroke.equals("none")) {
      return;
    }
    out.append('<').append(element.getLocalName());
    for (String name : SHAPES.get(element.getLocalName())) {
      attribute(name, element.getAttribute(name));
    }
    String classes = fill.equals("none") ? "" : Palette.fillClass(fill);
    classes +=
        stroke.equals("none") ? "" : (classes.isEmpty() ? "" : " ") + Palette.strokeClass(stroke);
    attribute("class", classes);
    attribute("fill", fill);
    if (!stroke.equals("none")) {
      attribute("stroke", stroke);
      attribute("stroke-width", style.getOrDefault("stroke-width", "1"));
      String dash = style.getOrDefault("stroke-dasharray", "none");
      if (!dash.equals("none")) {
        attribute("stroke-dasharray", dash);
      }
    }
    if (style.containsKey("transform")) {
      attribute("transform", style.get("transform"));
    }
    if (text) {
      attribute("font-size", style.getOrDefault("font-size", "12"));
      out.append('>').append(SvgWriter.escaped(element.getTextContent())).append("</text>\n");
    } else {
      out.append("/>\n");
    }
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(SvgWriter.escaped(value)).append('"');
  }

  /** Batik writes {@code rgb(43,38,34)} and a few names; the palette goes by {@code #2b2622}. */
  private static String colour(String value) {
    if (value.startsWith("rgb(")) {
      StringBuilder hex = new StringBuilder("#");
      for (String part : value.substring(4, value.length() - 1).split(",", -1)) {
        int number = Integer.parseInt(part.trim());
        hex.append(Character.forDigit(number / 16, 16)).append(Character.forDigit(number % 16, 16));
      }
      return hex.toString();
    }
    return value;
  }
}
