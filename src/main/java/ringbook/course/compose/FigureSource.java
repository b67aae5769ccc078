package ringbook.course.compose;

import java.util.List;
import java.util.Map;
import ringbook.charts.FigureShelf;
import ringbook.figures.Figure;
import ringbook.ledger.Reckoning;

/** Where lessons take their figures from. */
public interface FigureSource {

  /** The figures of the course. */
  FigureSource SHELF =
      new FigureSource() {
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
      };

  /** The names of all figures. */
  List<String> names();

  /** The names of the options that the figure {@code name} knows. */
  List<String> options(String name);

  /**
   * The figure for the scene of {@code reckoning}.
   *
   * @param name one of {@link #names}
   * @param options by name, each one of {@link #options}
   * @param idPrefix stands before every id of the drawing
   */
  Figure draw(String name, Map<String, String> options, Reckoning reckoning, String idPrefix);
}
