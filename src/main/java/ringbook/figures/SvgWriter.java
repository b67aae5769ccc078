package ringbook.figures;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Numbers;

/** Writes one drawing as SVG text; see the package for what the classes mean. */
public final class SvgWriter {

  /** The typefaces, in order of preference. */
  public static final String FONTS = "'Liberation Sans', Arial, Helvetica, sans-serif";

  private static final double HALO = 3.5;

  private final double width;
  private final double height;
  private final String idPrefix;
  private final StringBuilder body = new StringBuilder();

  /**
   * A drawing of that size in drawing units, rounded up: printers read whole numbers only. Every id
   * in it begins with {@code idPrefix}.
   */
  public SvgWriter(double width, double height, String idPrefix) {
    this.width = Math.ceil(width);
    this.height = Math.ceil(height);
    this.idPrefix = idPrefix;
  }

  /** The whole paper. */
  public Box paper() {
    return new Box(0, 0, width, height);
  }

  /** A straight line. */
  public void line(Point from, Point to, Stroke stroke) {
    body.append("<line")
        .append(coordinate("x1", from.x()))
        .append(coordinate("y1", from.y()))
        .append(coordinate("x2", to.x()))
        .append(coordinate("y2", to.y()))
        .append(style(stroke, Fill.NONE))
        .append("/>\n");
  }

  /** A circle. */
  public void circle(Point middle, double radius, Stroke stroke, Fill fill) {
    circle(middle, radius, style(stroke, fill));
  }

  /** A filled dot without outline. */
  public void dot(Point middle, double radius, Fill fill) {
    circle(middle, radius, style(null, fill));
  }

  private void circle(Point middle, double radius, String style) {
    body.append("<circle")
        .append(coordinate("cx", middle.x()))
        .append(coordinate("cy", middle.y()))
        .append(coordinate("r", radius))
        .append(style)
        .append("/>\n");
  }

  /** A closed outline. */
  public void polygon(List<Point> corners, Stroke stroke, Fill fill) {
    shape("polygon", corners, style(stroke, fill));
  }

  /** An open line through points. */
  public void polyline(List<Point> points, Stroke stroke) {
    shape("polyline", points, style(stroke, Fill.NONE));
  }

  /** A rectangle. */
  public void box(Box box, Stroke stroke, Fill fill) {
    rectangle(box, style(stroke, fill));
  }

  /** A filled rectangle without outline. */
  public void area(Box box, Fill fill) {
    rectangle(box, style(null, fill));
  }

  private void rectangle(Box box, String style) {
    body.append("<rect")
        .append(coordinate("x", box.left()))
        .append(coordinate("y", box.top()))
        .append(coordinate("width", box.width()))
        .append(coordinate("height", box.height()))
        .append(style)
        .append("/>\n");
  }

  /** An arc round {@code middle}, anticlockwise from one direction to another, in radians. */
  public void arc(Point middle, double radius, Sweep sweep, Stroke stroke) {
    Point start = middle.towards(sweep.from(), radius);
    Point end = middle.towards(sweep.to(), radius);
    String large = sweep.to() - sweep.from() > Math.PI ? "1" : "0";
    body.append("<path d=\"M")
        .append(pair(start))
        .append(" A")
        .append(number(radius))
        .append(' ')
        .append(number(radius))
        .append(" 0 ")
        .append(large)
        .append(" 0 ")
        .append(pair(end))
        .append('"')
        .append(style(stroke, Fill.NONE))
        .append("/>\n");
  }

  /** A straight line that leaves a gap where it would run through {@code gap}. */
  public void lineAround(Point from, Point to, Box gap, Stroke stroke) {
    Box.Part inside = gap.partOf(from, to);
    if (inside.from() >= inside.to()) {
      line(from, to, stroke);
      return;
    }
    if (inside.from() > 0) {
      line(from, from.between(to, inside.from()), stroke);
    }
    if (inside.to() < 1) {
      line(from.between(to, inside.to()), to, stroke);
    }
  }

  /** A filled arrow head whose tip lies at {@code tip}, pointing in a direction in radians. */
  public void arrowHead(Point tip, double direction) {
    Point back = tip.towards(direction, -8);
    shape(
        "polygon",
        List.of(
            tip,
            back.towards(direction + Math.PI / 2, 2.8),
            back.towards(direction - Math.PI / 2, 2.8)),
        style(null, Fill.TEXT));
  }

  /** A line of text with a halo, so that it can be read across lines. */
  public void text(Label label) {
    text(label, " aria-hidden=\"true\"" + style(Stroke.solid(Ink.PAPER, HALO), Fill.PAPER));
    text(label, style(null, Fill.TEXT));
  }

  /** A line of text where nothing lies behind it. */
  public void bare(Label label) {
    text(label, style(null, Fill.TEXT));
  }

  private void text(Label label, String style) {
    body.append("<text")
        .append(coordinate("x", label.at().x()))
        .append(coordinate("y", label.at().y()))
        .append(coordinate("font-size", label.size()))
        .append(" text-anchor=\"")
        .append(label.anchor().svg())
        .append('"')
        .append(label.weight() == Label.Weight.BOLD ? " font-weight=\"bold\"" : "")
        .append(style)
        .append('>')
        .append(escaped(label.text()))
        .append("</text>\n");
  }

  /** Takes over elements written elsewhere; they must keep to the rules of this package. */
  public void append(String elements) {
    body.append(elements);
  }

  /** Opens a group that carries a data attribute, such as {@code data-station="3"}. */
  public void open(String dataName, String value) {
    body.append("<g data-").append(dataName).append("=\"").append(escaped(value)).append("\">\n");
  }

  /** Closes the group opened last. */
  public void close() {
    body.append("</g>\n");
  }

  /** The finished element. */
  public String svg(String title, String description) {
    String titleId = escaped(idPrefix) + "-title";
    String descId = escaped(idPrefix) + "-desc";
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
        + number(width)
        + " "
        + number(height)
        + "\" width=\"100%\" role=\"img\" aria-labelledby=\""
        + titleId
        + "\" aria-describedby=\""
        + descId
        + "\" class=\"fig\" font-family=\""
        + FONTS
        + "\">\n<title id=\""
        + titleId
        + "\">"
        + escaped(title)
        + "</title>\n<desc id=\""
        + descId
        + "\">"
        + escaped(description)
        + "</desc>\n"
        + body
        + "</svg>";
  }

  /** {@code text} as it may stand in an element or an attribute. */
  public static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> out.append(c < ' ' ? ' ' : c);
      }
    }
    return out.toString();
  }

  private void shape(String element, List<Point> points, String style) {
    body.append('<').append(element).append(" points=\"");
    for (int i = 0; i < points.size(); i++) {
      body.append(i == 0 ? "" : " ").append(pair(points.get(i)));
    }
    body.append('"').append(style).append("/>\n");
  }

  private static String style(Stroke stroke, Fill fill) {
    String classes = fill.styleClass();
    String attributes = " fill=\"" + fill.colour() + "\"";
    if (stroke != null) {
      classes =
          classes.isEmpty() ? stroke.ink().styleClass() : stroke.ink().styleClass() + " " + classes;
      attributes +=
          " stroke=\""
              + stroke.ink().colour()
              + "\" stroke-width=\""
              + number(stroke.width())
              + "\"";
      attributes += stroke.dash().isEmpty() ? "" : " stroke-dasharray=\"" + stroke.dash() + "\"";
      attributes += stroke.ink() == Ink.PAPER ? " stroke-linejoin=\"round\"" : "";
    }
    return " class=\"" + classes + "\"" + attributes;
  }

  private static String coordinate(String name, double value) {
    return " " + name + "=\"" + number(value) + "\"";
  }

  private static String pair(Point point) {
    return number(point.x()) + "," + number(point.y());
  }

  private static String number(double value) {
    return Numbers.trimmed(Numbers.fixed(Num.round(value * 100) / 100, 2));
  }

  /**
   * A turn from one direction to another.
   *
   * @param from start, in radians anticlockwise from "right"
   * @param to end, not before the start
   */
  public record Sweep(double from, double to) {}
}
