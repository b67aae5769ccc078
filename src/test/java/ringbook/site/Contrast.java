package ringbook.site;

/**
 * Contrast of two colours as the W3C Web Content Accessibility Guidelines 2.2 define it: {@code (L1
 * + 0.05) / (L2 + 0.05)} of their relative luminances, the lighter one first.
 */
public final class Contrast {

  /** Share of full brightness up to which a colour channel counts as linear. */
  static final double THRESHOLD = 0.04045;

  private Contrast() {}

  /** The ratio, 1 to 21, of colours written {@code #rrggbb}. */
  public static double ratio(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    if (!colour.matches("#[0-9a-f]{6}")) {
      throw new IllegalArgumentException("not a colour: " + colour);
    }
    int rgb = Integer.parseInt(colour.substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int code) {
    double value = (code & 255) / 255.0;
    return value <= THRESHOLD ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
