package ringbook.photos;

/**
 * How much of a picture has detail to hold on to.
 *
 * <p>A tile counts as textured if brightness changes enough along its poorer direction: the smaller
 * eigenvalue of the mean products of its slopes (J. Shi and C. Tomasi, Good Features to Track,
 * 1994). A lone edge or an even shade changes in one direction only and does not count.
 */
final class Texture {

  /** Side of a tile in averaged pixels; common practice, no source. */
  private static final int TILE = 24;

  /**
   * Least slope, in grey levels a pixel, as a root mean square: above noise, which gives its own
   * size over √2, and far below a checker of 60 and 190 in squares of 12.5 pixels, which gives 25.
   * Common practice, no source.
   */
  private static final double LEAST_SLOPE = 3;

  private int tiles;
  private int textured;

  private Texture() {}

  /** The share of textured tiles, from 0 to 1; 0 for a picture smaller than a tile. */
  static double share(Luma luma) {
    Texture texture = new Texture();
    for (int top = 1; top + TILE < luma.rows(); top += TILE) {
      for (int left = 1; left + TILE < luma.columns(); left += TILE) {
        texture.tiles++;
        if (slope(luma, left, top) >= LEAST_SLOPE) {
          texture.textured++;
        }
      }
    }
    return texture.tiles == 0 ? 0 : (double) texture.textured / texture.tiles;
  }

  /** Root mean square of the slope along the poorer direction of the tile at a corner. */
  static double slope(Luma luma, int left, int top) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int row = top; row < top + TILE; row++) {
      for (int column = left; column < left + TILE; column++) {
        double x = (luma.at(column + 1, row) - luma.at(column - 1, row)) / 2;
        double y = (luma.at(column, row + 1) - luma.at(column, row - 1)) / 2;
        xx += x * x;
        xy += x * y;
        yy += y * y;
      }
    }
    double half = (xx - yy) / 2;
    double smaller = (xx + yy) / 2 - Math.sqrt(half * half + xy * xy);
    return Math.sqrt(Math.max(0, smaller) / (TILE * TILE));
  }
}
