package ringbook.figures;

/**
 * How wide a line of text is.
 *
 * <p>Advance widths of Liberation Sans Regular in thousandths of the size, measured from the font
 * file; the widths of Arial and Helvetica are the same by design.
 */
public final class TextWidth {

  private static final int[] FROM_SPACE = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  private static final int OTHER = 600;

  private TextWidth() {}

  /** The width of {@code text} set in {@code size}. */
  public static double of(String text, double size) {
    int sum = 0;
    for (int i = 0; i < text.length(); i++) {
      sum += of(text.charAt(i));
    }
    return sum * size / 1000;
  }

  private static int of(char c) {
    if (c >= ' ' && c - ' ' < FROM_SPACE.length) {
      return FROM_SPACE[c - ' '];
    }
    return switch (c) {
      case '\u00a0' -> 278;
      case '°' -> 400;
      case '²', '·', '’' -> 333;
      case '→', '—' -> 1000;
      case '∞' -> 713;
      default -> OTHER;
    };
  }
}
