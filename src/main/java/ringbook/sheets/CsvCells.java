package ringbook.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts lines of a table into cells by RFC 4180: a cell between quotation marks may hold the mark
 * that parts cells, line ends, and quotation marks written twice. Kinder than the standard: blanks
 * round a cell fall away, a quotation mark inside a plain cell stays (14 1/2"), and what follows a
 * closing quotation mark is added to the cell ("36,5" cm).
 */
final class CsvCells {

  private enum State {
    BEFORE,
    PLAIN,
    QUOTED,
    BEHIND
  }

  private final char delimiter;
  private final List<String> cells = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();
  private State state = State.BEFORE;
  private boolean severalLines;
  private boolean torn;

  CsvCells(char delimiter) {
    this.delimiter = delimiter;
  }

  /** The cells of one line, whether or not its last quotation mark is closed. */
  static List<String> of(String line, char delimiter) {
    CsvCells cells = new CsvCells(delimiter);
    cells.add(line);
    if (cells.isOpen()) {
      cells.endCell();
    }
    return cells.cells;
  }

  /** Adds the first line of a row or a further one. */
  void add(String line) {
    if (state == State.QUOTED) {
      cell.append('\n');
      severalLines = true;
    }
    for (int i = 0; i < line.length(); i++) {
      add(line.charAt(i));
    }
    if (state == State.BEHIND) {
      state = State.PLAIN;
    }
    if (state != State.QUOTED) {
      endCell();
    }
  }

  private void add(char c) {
    switch (state) {
      case BEFORE -> before(c);
      case PLAIN -> plain(c);
      case QUOTED -> {
        if (c == '"') {
          state = State.BEHIND;
        } else {
          cell.append(c);
        }
      }
      case BEHIND -> {
        if (c == '"') {
          cell.append(c);
          state = State.QUOTED;
        } else {
          state = State.PLAIN;
          torn |= severalLines && c != delimiter && c != ' ';
          plain(c);
        }
      }
    }
  }

  private void before(char c) {
    if (c == '"') {
      state = State.QUOTED;
    } else if (c != ' ' || c == delimiter) {
      state = State.PLAIN;
      plain(c);
    }
  }

  private void plain(char c) {
    if (c == delimiter) {
      endCell();
    } else {
      cell.append(c);
    }
  }

  private void endCell() {
    cells.add(cell.toString().strip());
    cell.setLength(0);
    state = State.BEFORE;
  }

  /** Whether a quotation mark is still open. */
  boolean isOpen() {
    return state == State.QUOTED;
  }

  /**
   * Whether a cell of several lines ends amid other text: its quotation marks do not belong
   * together.
   */
  boolean isTorn() {
    return torn;
  }

  /** The cells so far. */
  List<String> cells() {
    return cells;
  }
}
