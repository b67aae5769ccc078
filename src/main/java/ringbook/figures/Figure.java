package ringbook.figures;

import java.util.ArrayList;
import java.util.List;

/**
 * A finished drawing.
 *
 * @param title a few words, plain text
 * @param description what there is to see with its numbers, plain text
 * @param svg one {@code svg} element
 * @param tableHead column heads of its numbers
 * @param tableRows its numbers as printed, row by row, each as long as the head
 */
public record Figure(
    String title,
    String description,
    String svg,
    List<String> tableHead,
    List<List<String>> tableRows) {

  public Figure {
    tableHead = List.copyOf(tableHead);
    List<List<String>> rows = new ArrayList<>();
    for (List<String> row : tableRows) {
      if (row.size() != tableHead.size()) {
        throw new IllegalArgumentException("a row of '" + title + "' does not fit its head");
      }
      rows.add(List.copyOf(row));
    }
    tableRows = List.copyOf(rows);
  }
}
