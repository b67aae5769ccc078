package ringbook.course.compose;

import java.util.List;
import java.util.Map;
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
  Drawn draw(String name, Map<String, String> options, Reckoning reckoning, String idPrefix);

  /**
   * A finished figure.
   *
   * @param title plain text
   * @param description plain text
   * @param svg one {@code svg} element
   * @param tableHead column heads of its numbers
   * @param tableRows its numbers
   */
  record Drawn(
      String title,
      String description,
      String svg,
      List<String> tableHead,
      List<List<String>> tableRows) {

    public Drawn {
      tableHead = List.copyOf(tableHead);
      tableRows = List.copyOf(tableRows);
    }
  }
}
