package ringbook.photos;

import ringbook.units.Require;

/**
 * Pixel counts of a picture as it is stored.
 *
 * @param columns from left to right, at least 1
 * @param rows from top to bottom, at least 1
 */
public record Frame(int columns, int rows) {

  public Frame {
    Require.atLeast("columns", 1, columns);
    Require.atLeast("rows", 1, rows);
  }

  /** Pixels along the longer side. */
  public int longSide() {
    return Math.max(columns, rows);
  }

  /** Pixels along the shorter side. */
  public int shortSide() {
    return Math.min(columns, rows);
  }

  /** All pixels. */
  public long pixels() {
    return (long) columns * rows;
  }

  /** The frame as a viewer shows it that obeys the Exif orientation, from 1 to 8. */
  public Frame shown(int orientation) {
    return orientation >= 5 ? new Frame(/* columns= */ rows, /* rows= */ columns) : this;
  }

  /** Whether both have the same sides, upright or level. */
  boolean hasSidesOf(Frame other) {
    return longSide() == other.longSide() && shortSide() == other.shortSide();
  }
}
