package ringbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * The first line of a table.
 *
 * @param delimiter what parts its cells
 * @param names the columns, in small letters
 */
record CsvHead(char delimiter, List<String> names) {

  private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

  /** Cut by the mark that parts it into most of the columns that are known. */
  static CsvHead of(String line) {
    return of(line, SheetRow.COLUMNS::contains);
  }

  /** Likewise, with other columns to know, in small letters. */
  static CsvHead of(String line, Predicate<String> columns) {
    CsvHead best = null;
    long most = -1;
    for (char candidate : DELIMITERS) {
      List<String> names = new ArrayList<>();
      CsvCells.of(line, candidate).forEach(cell -> names.add(cell.toLowerCase(Locale.ROOT)));
      long known = names.stream().filter(columns).count();
      if (known > most) {
        best = new CsvHead(candidate, names);
        most = known;
      }
    }
    return best;
  }

  /** The place of a column, from 0; -1 where there is none. */
  int place(String name) {
    return names.indexOf(name);
  }
}
