package ringbook.course;

import java.util.List;

/**
 * A drawing with its caption, its text alternative and its numbers.
 *
 * @param id unique in the course
 * @param number counted through the course, from 1
 * @param captionXhtml the caption, well-formed inline XHTML
 * @param svg one {@code svg} element with {@code role="img"}, {@code title} and {@code desc}; ids
 *     unique in the course
 * @param title plain text
 * @param description what there is to see, in words, plain text
 * @param tableHead column heads of its numbers
 * @param tableRows its numbers as printed, row by row
 */
public record ComposedFigure(
    String id,
    int number,
    String captionXhtml,
    String svg,
    String title,
    String description,
    List<String> tableHead,
    List<List<String>> tableRows) {

  public ComposedFigure {
    tableHead = List.copyOf(tableHead);
    tableRows = List.copyOf(tableRows);
  }
}
