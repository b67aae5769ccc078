package ringbook.sheets;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text: columns as wide as they need, two spaces between them. */
final class TextTable {

  private final List<String[]> rows = new ArrayList<>();

  TextTable(String... head) {
    rows.add(head);
  }

  void row(String... cells) {
    rows.add(cells);
  }

  @Override
  public String toString() {
    int columns = rows.get(0).length;
    int[] widths = new int[columns];
    for (String[] row : rows) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], width(row[i]));
      }
    }
    StringBuilder out = new StringBuilder();
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < columns; i++) {
        line.append(row[i]).append(" ".repeat(widths[i] - width(row[i]) + 2));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
    return out.toString();
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }
}
