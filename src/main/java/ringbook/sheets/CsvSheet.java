package ringbook.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.units.Words;

/** A sheet as a table. */
final class CsvSheet {

  /** No cell goes on for more lines than this; a quotation mark open for longer was lost. */
  private static final int MOST_LINES = 100;

  private static final String EMPTY = "the sheet is empty";
  private static final String EMPTY_HELP =
      "its first line names the columns: learner,exercise,answer";

  private final String file;
  private final Intake intake;
  private final Faults faults;
  private CsvHead head = new CsvHead(',', List.of());
  private final int[] column = {-1, -1, -1};

  CsvSheet(String file, Intake intake, Faults faults) {
    this.file = file;
    this.intake = intake;
    this.faults = faults;
  }

  /** Reads the whole table and gives what parts its cells. */
  char read(SheetLines lines) throws IOException {
    SheetLine first = lines.next();
    while (first != null && (isDelimiterLine(first.text()) || isEmpty(first))) {
      first = lines.next();
    }
    if (first == null) {
      faults.add(Position.ofFile(file), EMPTY, EMPTY_HELP);
    } else if (first.flaw().isPresent()) {
      flaw(first);
    } else {
      head = CsvHead.of(first.text());
      if (findColumns(first.number())) {
        rows(lines);
      }
    }
    return head.delimiter();
  }

  private static boolean isEmpty(SheetLine line) {
    return line.flaw().isEmpty() && line.text().isBlank();
  }

  /** Some spreadsheets write {@code sep=;} above the table. */
  private static boolean isDelimiterLine(String line) {
    return line.strip().length() == 5 && line.startsWith("sep=");
  }

  private boolean findColumns(int line) {
    boolean sound = true;
    Position at = new Position(file, line, 0);
    for (int i = 0; i < SheetRow.COLUMNS.size(); i++) {
      String name = SheetRow.COLUMNS.get(i);
      column[i] = head.place(name);
      if (column[i] < 0) {
        sound = false;
        faults.add(
            at,
            "the first line names no column '" + name + "'",
            Nearest.to(name, head.names())
                .map(near -> "rename '" + Quote.of(near) + "' to '" + name + "'")
                .orElse("begin the sheet with the line learner,exercise,answer"));
      } else if (head.names().lastIndexOf(name) != column[i]) {
        sound = false;
        faults.add(at, "two columns are called '" + name + "'", "rename one");
      }
    }
    return sound;
  }

  private void rows(SheetLines lines) throws IOException {
    for (SheetLine line = lines.next(); line != null; line = lines.next()) {
      if (line.flaw().isPresent()) {
        flaw(line);
        continue;
      }
      CsvCells cells = new CsvCells(head.delimiter());
      cells.add(line.text());
      if (cells.isOpen() && !goOn(cells, lines)) {
        faults.add(
            new Position(file, line.number(), 0),
            "a quotation mark is opened and not closed on this line",
            "close it, or take it out");
      } else {
        row(cells.cells(), new Position(file, line.number(), 0));
      }
    }
  }

  /**
   * Adds the lines over which a cell goes on. Where the quotation mark turns out to be lost, all of
   * them come again as lines of their own.
   */
  private boolean goOn(CsvCells cells, SheetLines lines) throws IOException {
    List<SheetLine> taken = new ArrayList<>();
    while (cells.isOpen() && taken.size() < MOST_LINES) {
      SheetLine next = lines.next();
      if (next == null) {
        break;
      }
      taken.add(next);
      if (next.flaw().isPresent() || isRow(next.text())) {
        break;
      }
      cells.add(next.text());
    }
    boolean closed = !cells.isOpen() && !cells.isTorn();
    if (!closed) {
      lines.back(taken);
    }
    return closed;
  }

  /** Whether a line is an answer by itself. */
  private boolean isRow(String line) {
    List<String> cells = CsvCells.of(line, head.delimiter());
    return column[1] < cells.size() && intake.knows(cells.get(column[1]));
  }

  private void row(List<String> cells, Position at) {
    int width = head.names().size();
    if (cells.size() < width) {
      if (!cells.stream().allMatch(String::isEmpty)) {
        faults.add(
            at,
            "the line ends early: it has "
                + fields(cells.size())
                + ", the first line names "
                + width,
            "write all of " + String.join(", ", SheetRow.COLUMNS));
      }
    } else if (cells.size() > width && hasMore(cells, width)) {
      faults.add(
          at,
          "the line has " + fields(cells.size()) + ", the first line names " + width,
          "put an answer that holds '" + shown() + "' between quotation marks: \"36,5 cm\"");
    } else if (!cells.stream().allMatch(String::isEmpty)) {
      int numbers = head.place(SheetRow.NUMBERS);
      intake.take(
          new SheetRow(
              cells.get(column[0]),
              cells.get(column[1]),
              cells.get(column[2]),
              numbers < 0 ? "" : cells.get(numbers)),
          at);
    }
  }

  private static boolean hasMore(List<String> cells, int width) {
    return cells.subList(width, cells.size()).stream().anyMatch(cell -> !cell.isEmpty());
  }

  private void flaw(SheetLine line) {
    SheetLine.Flaw flaw = line.flaw().orElseThrow();
    faults.add(new Position(file, line.number(), 0), flaw.message(), flaw.help());
  }

  private String shown() {
    return head.delimiter() == '\t' ? "a tab" : String.valueOf(head.delimiter());
  }

  private static String fields(int count) {
    return Words.count(count, "field");
  }
}
