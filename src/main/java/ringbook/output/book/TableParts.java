package ringbook.output.book;

import java.util.ArrayList;
import java.util.List;
import ringbook.course.ComposedFigure;

/** Cuts a long narrow table of a figure's numbers into parts that stand side by side. */
final class TableParts {

  /** Shorter tables stay whole. */
  private static final int FEW_ROWS = 9;

  /** A part that is longer might not fit on a page; such a table runs over pages as a whole. */
  private static final int MANY_ROWS = 30;

  private static final int LETTERS_A_HALF = 34;
  private static final int LETTERS_A_THIRD = 20;

  private TableParts() {}

  /** The rows in one to three parts; none without rows. */
  static List<List<List<String>>> of(ComposedFigure figure) {
    List<List<String>> rows = figure.tableRows();
    if (rows.isEmpty()) {
      return List.of();
    }
    int parts = rows.size() <= FEW_ROWS ? 1 : beside(letters(figure));
    int most = (rows.size() + parts - 1) / parts;
    if (parts == 1 || most > MANY_ROWS) {
      return List.of(rows);
    }
    List<List<List<String>>> cut = new ArrayList<>();
    for (int from = 0; from < rows.size(); from += most) {
      cut.add(rows.subList(from, Math.min(rows.size(), from + most)));
    }
    return List.copyOf(cut);
  }

  private static int beside(int letters) {
    if (letters <= LETTERS_A_THIRD) {
      return 3;
    }
    return letters <= LETTERS_A_HALF ? 2 : 1;
  }

  /** Letters in the widest cell of each column, with two for the space between. */
  private static int letters(ComposedFigure figure) {
    int sum = 0;
    for (int column = 0; column < figure.tableHead().size(); column++) {
      int widest = figure.tableHead().get(column).length();
      for (List<String> row : figure.tableRows()) {
        widest = Math.max(widest, column < row.size() ? row.get(column).length() : 0);
      }
      sum += widest + 2;
    }
    return sum;
  }
}
