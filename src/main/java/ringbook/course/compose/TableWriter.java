package ringbook.course.compose;

import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableBody;
import com.vladsch.flexmark.ext.tables.TableCaption;
import com.vladsch.flexmark.ext.tables.TableCell;
import com.vladsch.flexmark.ext.tables.TableHead;
import com.vladsch.flexmark.ext.tables.TableRow;
import com.vladsch.flexmark.util.ast.Node;
import ringbook.units.Words;

/** Writes tables: caption first, heads that say what they are the head of. */
final class TableWriter {

  private final Scope scope;
  private int columns;

  TableWriter(Scope scope) {
    this.scope = scope;
  }

  String write(TableBlock table) {
    StringBuilder parts = new StringBuilder();
    String caption = "";
    for (Node part : table.getChildren()) {
      if (part instanceof TableCaption words) {
        caption = "<caption>" + InlineWriter.write(words, scope) + "</caption>\n";
      } else if (part instanceof TableHead) {
        parts.append(rows("thead", part));
      } else if (part instanceof TableBody) {
        parts.append(rows("tbody", part));
      }
    }
    return "<div class=\"table\"><table>\n" + caption + parts + "</table></div>";
  }

  private String rows(String element, Node part) {
    StringBuilder out = new StringBuilder("<" + element + ">\n");
    for (Node row : part.getChildren()) {
      if (row instanceof TableRow) {
        out.append(row(row));
      }
    }
    return out.append("</").append(element).append(">\n").toString();
  }

  private String row(Node row) {
    StringBuilder out = new StringBuilder("<tr>");
    int cells = 0;
    for (Node node : row.getChildren()) {
      if (node instanceof TableCell cell) {
        out.append(cell(cell));
        cells++;
      }
    }
    if (columns == 0) {
      columns = cells;
    } else if (cells != columns) {
      scope.fault(
          row,
          "this row has " + Words.count(cells, "cell") + ", its table " + columns,
          "write one cell a column, empty where there is nothing to say");
    }
    return out.append("</tr>\n").toString();
  }

  private String cell(TableCell cell) {
    String text = InlineWriter.write(cell, scope);
    boolean head = cell.isHeader() && !text.isEmpty();
    String align =
        cell.getAlignment() == null || cell.getAlignment() == TableCell.Alignment.LEFT
            ? ""
            : " class=\"al-"
                + (cell.getAlignment() == TableCell.Alignment.RIGHT ? "right" : "center")
                + "\"";
    return head
        ? "<th scope=\"col\"" + align + ">" + text + "</th>"
        : "<td" + align + ">" + text + "</td>";
  }
}
