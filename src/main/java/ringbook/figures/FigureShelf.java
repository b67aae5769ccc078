package ringbook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.ledger.Reckoning;
import ringbook.ledger.RefusedException;

/** All figures of the course, by the names that lessons call them by. */
public final class FigureShelf {

  private static final Map<String, Drawing> DRAWINGS = drawings();

  private static final List<String> PATCHWISE =
      List.of("coverage-map", "pose-shares", "who-sees", "ring-overlap", "precision-count");

  private FigureShelf() {}

  /** The names of all figures. */
  public static List<String> names() {
    return List.copyOf(DRAWINGS.keySet());
  }

  /**
   * The names of those that look at the object patch by patch, which takes tens of times as long as
   * the others.
   */
  public static List<String> patchwise() {
    return PATCHWISE;
  }

  /** The names of the options a figure takes; empty for one that takes none. */
  public static List<String> options(String name) {
    return Diagrams.options(name);
  }

  /**
   * The figure for the scene of {@code reckoning}. Where the scene does not allow it, the figure
   * says why not.
   *
   * @param name one of {@link #names}
   * @param options what the author chose, by name; see {@link #options}
   * @param idPrefix put before every id, so that ids stay unique on a page
   * @throws IllegalArgumentException if no figure has that name
   */
  public static Figure draw(
      String name, Map<String, String> options, Reckoning reckoning, String idPrefix) {
    Drawing drawing = DRAWINGS.get(name);
    if (drawing == null) {
      throw new IllegalArgumentException("no figure is called '" + name + "'");
    }
    try {
      return drawing.draw(reckoning, options, idPrefix);
    } catch (RefusedException refused) {
      return RefusedFigure.of("the figure " + name, refused.refusal(), idPrefix);
    }
  }

  private static Map<String, Drawing> drawings() {
    Map<String, Drawing> all = new LinkedHashMap<>(Diagrams.byName());
    Charts.byName()
        .forEach(
            (name, model) ->
                all.put(
                    name,
                    (reckoning, options, idPrefix) ->
                        ChartDrawing.of(model.apply(reckoning), idPrefix)));
    return all;
  }
}
