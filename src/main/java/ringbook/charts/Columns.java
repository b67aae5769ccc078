package ringbook.charts;

import java.util.List;
import ringbook.figures.ChartModel.Axis;

/**
 * All that a column chart shows.
 *
 * @param title a few words, plain text
 * @param description what there is to see with its numbers, plain text
 * @param across the horizontal axis
 * @param up the vertical axis, from 0
 * @param columns from left to right
 * @param tableHead column heads of its numbers
 * @param tableRows its numbers as printed
 */
public record Columns(
    String title,
    String description,
    Axis across,
    Axis up,
    List<Column> columns,
    List<String> tableHead,
    List<List<String>> tableRows) {

  public Columns {
    columns = List.copyOf(columns);
    tableHead = List.copyOf(tableHead);
    tableRows = List.copyOf(tableRows);
  }

  /**
   * One column.
   *
   * @param from its left edge on the horizontal axis
   * @param to its right edge, beyond {@code from}
   * @param height on the vertical axis, 0 or more
   * @param text printed above it; may be empty
   */
  public record Column(double from, double to, double height, String text) {}
}
