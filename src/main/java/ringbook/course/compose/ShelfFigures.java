package ringbook.course.compose;

import java.util.List;
import java.util.Map;
import ringbook.figures.Figure;
import ringbook.figures.FigureShelf;
import ringbook.ledger.Reckoning;

/** The figures of the course, from the shelf of all figures. */
public final class ShelfFigures implements FigureSource {

  @Override
  public List<String> names() {
    return FigureShelf.names();
  }

  @Override
  public List<String> options(String name) {
    return FigureShelf.options(name);
  }

  @Override
  public Figure draw(
      String name, Map<String, String> options, Reckoning reckoning, String idPrefix) {
    return FigureShelf.draw(name, options, reckoning, idPrefix);
  }
}
