package ringbook.sheets;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import ringbook.plans.ShotColumn;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
import ringbook.units.Unit;

/** One station as a table states it: cells by column. Empty cells count as not stated. */
final class ShotRow {

  private record Cell(Unit unit, String text) {}

  private final Position at;
  private final Map<String, Cell> cells = new TreeMap<>();

  ShotRow(Position at) {
    this.at = at;
  }

  /** A row at {@code at} that states what this one states. */
  ShotRow copy(Position other) {
    ShotRow copy = new ShotRow(other);
    copy.cells.putAll(cells);
    return copy;
  }

  void put(ShotField field, String text) {
    if (!text.isBlank()) {
      cells.put(field.name(), new Cell(field.unit(), text.strip()));
    }
  }

  Position at() {
    return at;
  }

  String text(String name) {
    return cells.containsKey(name) ? cells.get(name).text() : "";
  }

  String text(ShotColumn column) {
    return text(column.plainName());
  }

  boolean states(ShotColumn column) {
    return cells.containsKey(column.plainName());
  }

  /**
   * The measure in a column in SI; empty where none is stated or, with the fault told, readable.
   */
  OptionalDouble si(ShotColumn column, Problems problems) {
    Cell cell = cells.get(column.plainName());
    if (cell == null) {
      return OptionalDouble.empty();
    }
    MeasureReading reading =
        MeasureReader.read(cell.text(), cell.unit().dimension(), style(cell.text()));
    if (reading instanceof MeasureReading.Read read) {
      return OptionalDouble.of(read.measure().si());
    }
    if (reading instanceof MeasureReading.MissingUnit bare) {
      return OptionalDouble.of(cell.unit().toSi(bare.number()));
    }
    fault(column, Quote.of(reading.message()), reading.help(), problems);
    return OptionalDouble.empty();
  }

  /** The whole number in a column, at least 1; empty as for {@link #si}. */
  Optional<Integer> count(ShotColumn column, Problems problems) {
    String text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String digits = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    boolean plain = digits.length() <= 6 && digits.chars().allMatch(c -> c >= '0' && c <= '9');
    int number = plain ? Integer.parseInt(digits) : 0;
    if (number < 1) {
      fault(
          column,
          "'" + Quote.of(text) + "' is no whole number above 0",
          "write 1, 2, 3 …",
          problems);
      return Optional.empty();
    }
    return Optional.of(number);
  }

  void fault(ShotColumn column, String message, String help, Problems problems) {
    problems.add(at, column.plainName().replace('_', ' ') + ": " + message, help);
  }

  /** A mark alone is the decimal mark, whichever it is: nobody stands 1500 cm high. */
  private static NumberStyle style(String text) {
    boolean comma = text.indexOf(',') >= 0;
    if (comma && text.indexOf('.') >= 0) {
      return NumberStyle.EITHER;
    }
    return comma ? NumberStyle.COMMA : NumberStyle.POINT;
  }
}
