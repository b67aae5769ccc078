package ringbook.problems;

import java.util.Comparator;

/**
 * A place in a file a person wrote.
 *
 * @param file the name as the person gave it
 * @param line from 1; 0 where the whole file is meant
 * @param column from 1; 0 where the whole line is meant
 */
public record Position(String file, int line, int column) implements Comparable<Position> {

  private static final Comparator<Position> ORDER =
      Comparator.comparing(Position::file)
          .thenComparingInt(Position::line)
          .thenComparingInt(Position::column);

  /** The file as a whole. */
  public static Position ofFile(String file) {
    return new Position(file, 0, 0);
  }

  @Override
  public int compareTo(Position other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column}, without the parts that are not known. */
  @Override
  public String toString() {
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
