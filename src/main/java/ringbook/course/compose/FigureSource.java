package ringbook.course.compose;

import java.util.List;
import java.util.Map;
import ringbook.figures.Figure;
import ringbook.ledger.Reckoning;

/** Where lessons take their figures from. */
public interface FigureSource {

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
