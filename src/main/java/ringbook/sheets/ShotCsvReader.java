package ringbook.sheets;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringbook.plans.ShotColumn;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.units.Words;

/** A shot table as CSV. */
final class ShotCsvReader {

  private final String file;
  private final ShotIntake intake;
  private final Problems problems;
  private final List<Optional<ShotField>> fields = new ArrayList<>();
  private CsvHead head = new CsvHead(',', List.of());

  ShotCsvReader(String file, ShotIntake intake, Problems problems) {
    this.file = file;
    this.intake = intake;
    this.problems = problems;
  }

  void read(SheetLines lines) throws IOException {
    SheetLine first = lines.next();
    while (first != null && first.flaw().isEmpty() && isNoHead(first.text().strip())) {
      first = lines.next();
    }
    if (first == null) {
      problems.add(
          Position.ofFile(file),
          "the table is empty",
          "its first line names the columns: " + String.join(",", ShotColumn.heads()));
    } else if (sound(first)) {
      head = CsvHead.of(first.text(), name -> ShotField.named(name).isPresent());
      if (findColumns(new Position(file, first.number(), 0))) {
        rows(lines);
      }
    }
  }

  /** Blank, or the line {@code sep=;} that some spreadsheets write above the table. */
  private static boolean isNoHead(String line) {
    return line.isEmpty() || (line.length() == 5 && line.startsWith("sep="));
  }

  private boolean sound(SheetLine line) {
    line.flaw()
        .ifPresent(
            flaw ->
                problems.add(new Position(file, line.number(), 0), flaw.message(), flaw.help()));
    return line.flaw().isEmpty();
  }

  private boolean findColumns(Position at) {
    int before = problems.size();
    List<ShotField> named = new ArrayList<>();
    for (String name : head.names()) {
      Optional<ShotField> field = ShotField.named(name);
      fields.add(field);
      if (field.isEmpty()) {
        continue;
      }
      String plain = field.get().name();
      if (named.stream().anyMatch(other -> other.name().equals(plain))) {
        problems.add(at, "two columns are called '" + Quote.of(name) + "'", "take one out");
      }
      named.add(field.get());
    }
    for (String missing : ShotField.missing(named)) {
      String first = missing.substring(1, missing.indexOf('\'', 1));
      problems.add(
          at,
          "the first line names no column " + missing,
          Nearest.to(first, head.names())
              .map(near -> "rename '" + Quote.of(near) + "' to '" + first + "'")
              .orElse("add it"));
    }
    return problems.size() == before;
  }

  private void rows(SheetLines lines) throws IOException {
    for (SheetLine line = lines.next(); line != null; line = lines.next()) {
      if (!sound(line)) {
        continue;
      }
      Position at = new Position(file, line.number(), 0);
      CsvCells cells = new CsvCells(head.delimiter());
      cells.add(line.text());
      if (cells.isOpen()) {
        problems.add(
            at,
            "a quotation mark is opened and not closed on this line",
            "close it, or take it out; a note has one line");
      } else if (!cells.cells().stream().allMatch(String::isEmpty)) {
        row(cells.cells(), at);
      }
    }
  }

  private void row(List<String> cells, Position at) {
    int width = fields.size();
    boolean more = cells.stream().skip(width).anyMatch(cell -> !cell.isEmpty());
    if (cells.size() < width) {
      problems.add(
          at,
          "the line ends early: it has " + cells(cells) + ", the first line names " + width,
          "write a cell for every column; cells may be empty");
    } else if (more) {
      String mark = head.delimiter() == '\t' ? "a tab" : "'" + head.delimiter() + "'";
      problems.add(
          at,
          "the line has " + cells(cells) + ", the first line names " + width,
          "put a cell that holds " + mark + " between quotation marks: \"36,5\"");
    } else {
      ShotRow row = new ShotRow(at);
      for (int i = 0; i < width; i++) {
        String cell = CsvLine.plain(cells.get(i));
        fields.get(i).ifPresent(field -> row.put(field, cell));
      }
      intake.take(row);
    }
  }

  private static String cells(List<String> cells) {
    return Words.count(cells.size(), "cell");
  }
}
