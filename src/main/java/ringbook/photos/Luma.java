package ringbook.photos;

/** Brightness of a picture reduced by averaging, row by row. */
final class Luma {

  private final int columns;
  private final int rows;
  private final double[] levels;

  /**
   * @param levels 0 for black to 255 for white, as coded in the file; kept, not copied
   */
  Luma(int columns, int rows, double[] levels) {
    this.columns = columns;
    this.rows = rows;
    this.levels = levels;
  }

  int columns() {
    return columns;
  }

  int rows() {
    return rows;
  }

  double at(int column, int row) {
    return levels[row * columns + column];
  }

  /** The part in the middle, {@code share} of the width and of the height. */
  Luma middle(double share) {
    int width = Math.max(1, (int) (columns * share));
    int height = Math.max(1, (int) (rows * share));
    int left = (columns - width) / 2;
    int top = (rows - height) / 2;
    double[] part = new double[width * height];
    for (int row = 0; row < height; row++) {
      System.arraycopy(levels, (top + row) * columns + left, part, row * width, width);
    }
    return new Luma(width, height, part);
  }
}
