package ringbook.browser;

import java.util.List;
import ringbook.figures.Figure;

/** A figure as JSON. */
final class FigureJson {

  private FigureJson() {}

  /** Writes {@code {title, description, svg, head, rows}}. */
  static void write(Figure figure, JsonText out) {
    out.object().member("title", figure.title()).member("description", figure.description());
    out.member("svg", figure.svg()).member("head", figure.tableHead()).name("rows").array();
    for (List<String> row : figure.tableRows()) {
      out.texts(row);
    }
    out.endArray().endObject();
  }
}
