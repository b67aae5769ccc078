package ringbook.photos;

import java.util.ArrayDeque;

/**
 * Burnt-out spots: touching pixels too bright to show anything.
 *
 * @param clippedShare share of all pixels that are burnt out
 * @param spots how many groups lie wholly inside, neither tiny nor large
 * @param spotShare share of all pixels that these groups hold
 */
record Highlights(double clippedShare, int spots, double spotShare) {

  /** An averaged pixel from here on is burnt out; common practice, no source. */
  private static final double CLIPPED = 250;

  /** Fewer pixels are a speck; common practice, no source. */
  private static final int LEAST_PIXELS = 4;

  /** A larger share is a bright wall or paper, no highlight; common practice, no source. */
  private static final double MOST_SHARE = 0.05;

  static Highlights of(Luma luma) {
    boolean[] clipped = new boolean[luma.columns() * luma.rows()];
    int all = 0;
    for (int i = 0; i < clipped.length; i++) {
      clipped[i] = luma.at(i % luma.columns(), i / luma.columns()) >= CLIPPED;
      all += clipped[i] ? 1 : 0;
    }
    int spots = 0;
    int inSpots = 0;
    for (int i = 0; i < clipped.length; i++) {
      if (clipped[i]) {
        int size = group(luma, clipped, i);
        if (size >= LEAST_PIXELS && size <= MOST_SHARE * clipped.length) {
          spots++;
          inSpots += size;
        }
      }
    }
    return new Highlights((double) all / clipped.length, spots, (double) inSpots / clipped.length);
  }

  /** Clears the group around {@code start} and gives its size, or 0 if it reaches the border. */
  private static int group(Luma luma, boolean[] clipped, int start) {
    ArrayDeque<Integer> open = new ArrayDeque<>();
    open.add(start);
    clipped[start] = false;
    int size = 0;
    boolean inside = true;
    while (!open.isEmpty()) {
      int at = open.remove();
      int column = at % luma.columns();
      int row = at / luma.columns();
      size++;
      inside &= column > 0 && row > 0 && column < luma.columns() - 1 && row < luma.rows() - 1;
      for (int y = Math.max(0, row - 1); y <= Math.min(luma.rows() - 1, row + 1); y++) {
        for (int x = Math.max(0, column - 1); x <= Math.min(luma.columns() - 1, column + 1); x++) {
          int neighbour = y * luma.columns() + x;
          if (clipped[neighbour]) {
            clipped[neighbour] = false;
            open.add(neighbour);
          }
        }
      }
    }
    return inside ? size : 0;
  }
}
