package ringbook.course;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A drawing with its caption, its text alternative and its numbers.
 *
 * @param id unique in the course
 * @param number counted through the course, from 1; 0 for a figure of other scenes alone, which has
 *     no drawing yet
 * @param captionXhtml the caption, well-formed inline XHTML
 * @param svg one {@code svg} element with {@code role="img"}, {@code title} and {@code desc}; ids
 *     unique in the course
 * @param title plain text
 * @param description what there is to see, in words, plain text
 * @param tableHead column heads of its numbers
 * @param tableRows its numbers as printed, row by row
 * @param name by which it can be drawn again for another scene; may be empty
 * @param options what the author chose, by name
 */
public record ComposedFigure(
    String id,
    int number,
    String captionXhtml,
    String svg,
    String title,
    String description,
    List<String> tableHead,
    List<List<String>> tableRows,
    String name,
    Map<String, String> options) {

  /** A figure that cannot be drawn again. */
  public ComposedFigure(
      String id,
      int number,
      String captionXhtml,
      String svg,
      String title,
      String description,
      List<String> tableHead,
      List<List<String>> tableRows) {
    this(id, number, captionXhtml, svg, title, description, tableHead, tableRows, "", Map.of());
  }

  public ComposedFigure {
    tableHead = List.copyOf(tableHead);
    tableRows = List.copyOf(tableRows);
    options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
  }
}
