package ringbook.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** A sheet as a table. */
final class CsvSheet {

  /** The three columns, as the first line names them. */
  static final List<String> COLUMNS = List.of("learner", "exercise", "answer");

  private static final List<Character> DELIMITERS = List.of(',', ';', '\t');

  private final String file;
  private final Intake intake;
  private final Problems problems;
  private char delimiter = ',';
  private int width;
  private final int[] column = {-1, -1, -1};

  CsvSheet(String file, Intake intake, Problems problems) {
    this.file = file;
    this.intake = intake;
    this.problems = problems;
  }

  void read(String text) {
    int line = 1;
    int at = 0;
    String head = lineAt(text, at);
    while (head.isBlank() || isDelimiterLine(head)) {
      at = nextLine(text, at);
      line++;
      head = lineAt(text, at);
    }
    delimiter = delimiter(head);
    if (readHead(head, line)) {
      readRows(text, nextLine(text, at), line + 1);
    }
  }

  /** Some spreadsheets write {@code sep=;} above the table. */
  private static boolean isDelimiterLine(String line) {
    return line.strip().length() == 5 && line.startsWith("sep=");
  }

  /** The mark that parts the first line into most of the columns. */
  private char delimiter(String head) {
    char best = ',';
    long most = -1;
    for (char candidate : DELIMITERS) {
      delimiter = candidate;
      long known = cells(head).stream().filter(COLUMNS::contains).count();
      if (known > most) {
        best = candidate;
        most = known;
      }
    }
    return best;
  }

  private List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(line, format())) {
      for (CSVRecord row : parser) {
        row.forEach(cell -> cells.add(cell.strip().toLowerCase(Locale.ROOT)));
      }
    } catch (IOException | UncheckedIOException unclosed) {
      cells.add(line);
    }
    return cells;
  }

  private CSVFormat format() {
    return CSVFormat.DEFAULT
        .builder()
        .setDelimiter(delimiter)
        .setIgnoreEmptyLines(false)
        .setIgnoreSurroundingSpaces(true)
        .setTrailingData(true)
        .get();
  }

  private boolean readHead(String head, int line) {
    List<String> names = cells(head);
    width = names.size();
    int before = problems.size();
    for (int i = 0; i < COLUMNS.size(); i++) {
      String name = COLUMNS.get(i);
      column[i] = names.indexOf(name);
      if (column[i] < 0) {
        problems.add(
            new Position(file, line, 0),
            "the first line names no column '" + name + "'",
            Nearest.to(name, names)
                .map(near -> "rename '" + Quote.of(near) + "' to '" + name + "'")
                .orElse("begin the sheet with the line learner,exercise,answer"));
      } else if (names.lastIndexOf(name) != column[i]) {
        problems.add(
            new Position(file, line, 0), "two columns are called '" + name + "'", "rename one");
      }
    }
    return problems.size() == before;
  }

  /** Reads the rows from {@code from} on; after a row that never ends, from the line below it. */
  private void readRows(String text, int from, int firstLine) {
    int at = from;
    int line = firstLine;
    while (at < text.length()) {
      int rowsRead = rows(text.substring(at), line);
      if (rowsRead < 0) {
        return;
      }
      for (int i = 0; i <= rowsRead; i++) {
        at = nextLine(text, at);
        line++;
      }
    }
  }

  /** Reads rows to the end and gives -1, or gives the lines read before a row that never ends. */
  private int rows(String text, int firstLine) {
    int read = 0;
    try (CSVParser parser = CSVParser.parse(text, format())) {
      Iterator<CSVRecord> rows = parser.iterator();
      while (rows.hasNext()) {
        CSVRecord row = rows.next();
        if (runsOn(row)) {
          return unclosed(firstLine, read);
        }
        row(row, firstLine + read);
        read = (int) parser.getCurrentLineNumber();
      }
      return -1;
    } catch (IOException | UncheckedIOException endOfText) {
      return unclosed(firstLine, read);
    }
  }

  /**
   * Whether a cell that is to be marked goes on in the next line, as behind a lost quotation mark.
   */
  private boolean runsOn(CSVRecord row) {
    for (int index : column) {
      String cell = index < row.size() ? row.get(index).strip() : "";
      if (cell.indexOf('\n') >= 0 || cell.indexOf('\r') >= 0) {
        return true;
      }
    }
    return false;
  }

  private int unclosed(int firstLine, int read) {
    problems.add(
        new Position(file, firstLine + read, 0),
        "a quotation mark is opened and not closed on this line",
        "close it, or take it out");
    return read;
  }

  private void row(CSVRecord row, int line) {
    Position at = new Position(file, line, 0);
    boolean blank = row.stream().allMatch(String::isBlank);
    if (blank) {
      return;
    }
    if (row.size() < width) {
      problems.add(
          at,
          "the line ends early: it has " + fields(row.size()) + ", the first line names " + width,
          "write all of " + String.join(", ", COLUMNS));
    } else if (row.size() > width && hasMore(row)) {
      problems.add(
          at,
          "the line has " + fields(row.size()) + ", the first line names " + width,
          "put an answer that holds '" + shown() + "' between quotation marks: \"36,5 cm\"");
    } else {
      intake.take(row.get(column[0]), row.get(column[1]), row.get(column[2]), at);
    }
  }

  private boolean hasMore(CSVRecord row) {
    return row.stream().skip(width).anyMatch(cell -> !cell.isBlank());
  }

  private String shown() {
    return delimiter == '\t' ? "a tab" : String.valueOf(delimiter);
  }

  private static String fields(int count) {
    return count == 1 ? "1 field" : count + " fields";
  }

  private static String lineAt(String text, int at) {
    return text.substring(at, nextLine(text, at)).strip();
  }

  private static int nextLine(String text, int at) {
    for (int i = at; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'))) {
        return i + 1;
      }
    }
    return text.length();
  }
}
