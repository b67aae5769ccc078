package ringbook.units;

/**
 * Prints numbers the same way on every platform, without locale.
 *
 * <p>What is rounded is the shortest decimal text that stands for the double, as a person would
 * write it, and halves go away from zero: 0.125 with two decimals is 0.13, and 4.35 with one is 4.4
 * although its double lies a little below. Minus is the hyphen, zero has no sign, infinity is
 * {@code ∞}; what is no number is printed as {@code not a number}.
 */
public final class Numbers {

  private static final double FAST_LIMIT = 1e12;

  /** Powers of ten that fit an int; each is exact as a double too. */
  private static final int[] TENS = {
    1, 10, 100, 1000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000
  };

  private static final double[] SMALL = {1, 0.1, 0.01, 0.001, 1e-4, 1e-5, 1e-6};
  private static final String THIN_SPACE = "\u202f";

  private Numbers() {}

  /**
   * {@code fixed(2.5, 2)} is {@code "2.50"}.
   *
   * @param decimals digits after the point, from 0 to 30
   */
  public static String fixed(double value, int decimals) {
    if (!isFinite(value)) {
      return special(value);
    }
    Require.atLeast("decimals", 0, decimals);
    String text = size(Math.abs(value), decimals);
    return value < 0 && hasDigitAboveZero(text) ? "-" + text : text;
  }

  private static String size(double size, int decimals) {
    if (isQuick(size, decimals)) {
      return quick(size, decimals);
    }
    Digits digits = Digits.shortest(size);
    digits.keep(digits.point() + decimals);
    return digits.plain(decimals);
  }

  /** Whether {@link #quick} rounds as the long way does. */
  private static boolean isQuick(double size, int decimals) {
    if (decimals < 0 || decimals >= TENS.length) {
      return false;
    }
    double scaled = size * TENS[decimals];
    double over = scaled - Math.floor(scaled);
    // Away from a half the product's last bit cannot change the rounding.
    return scaled < FAST_LIMIT && Math.abs(over - 0.5) > 1e-3;
  }

  /** Long numbers are slow in a browser: both halves are ints, but for very large ones. */
  private static String quick(double size, int decimals) {
    int scale = TENS[decimals];
    double rounded = Math.floor(size * scale + 0.5);
    double before = Math.floor(rounded / scale);
    String whole =
        before < Integer.MAX_VALUE ? Integer.toString((int) before) : Long.toString((long) before);
    if (decimals == 0) {
      return whole;
    }
    String behind = Integer.toString((int) (rounded - before * scale));
    return whole + "." + "000000000".substring(0, decimals - behind.length()) + behind;
  }

  /**
   * {@code value} rounded to so many significant digits, without zeros at the end behind the point:
   * {@code significant(0.0123456, 3)} is {@code "0.0123"}, {@code significant(123456, 3)} is {@code
   * "123000"}.
   *
   * @param digits at least 1
   */
  public static String significant(double value, int digits) {
    if (!isFinite(value)) {
      return special(value);
    }
    Require.atLeast("significant digits", 1, digits);
    int decimals = digits - before(Math.abs(value));
    if (isQuick(Math.abs(value), decimals)) {
      String text = trimmed(quick(Math.abs(value), decimals));
      return value < 0 ? "-" + text : text;
    }
    Digits number = Digits.shortest(Math.abs(value));
    number.keep(digits);
    String text = number.plain(number.decimals());
    return value < 0 ? "-" + text : text;
  }

  /**
   * How many digits stand before the point; 0 or less for numbers below 1. Very small and large
   * ones count as none of those that are quick to print.
   */
  private static int before(double size) {
    if (size < 1) {
      for (int i = 1; i < SMALL.length; i++) {
        if (size >= SMALL[i]) {
          return 1 - i;
        }
      }
      return Integer.MIN_VALUE / 2;
    }
    int before = 1;
    while (before < TENS.length && size >= TENS[before]) {
      before++;
    }
    return before < TENS.length ? before : Integer.MAX_VALUE / 2;
  }

  /** All digits of the shortest text that stands for {@code value}, without a power of ten. */
  public static String shortest(double value) {
    return significant(value, 17);
  }

  /** {@code fixed} text without zeros (and point) at its end. */
  public static String trimmed(String fixed) {
    int end = fixed.length();
    if (fixed.indexOf('.') < 0) {
      return fixed;
    }
    while (fixed.charAt(end - 1) == '0') {
      end--;
    }
    if (fixed.charAt(end - 1) == '.') {
      end--;
    }
    return fixed.substring(0, end);
  }

  /**
   * {@code fixed} text with narrow no-break spaces (U+202F) between groups of three digits before
   * the point, where there are at least five of them: {@code 12 500}, but {@code 1250}. Groups by
   * spaces: ISO 80000-1.
   */
  public static String grouped(String fixed) {
    int start = fixed.startsWith("-") ? 1 : 0;
    int end = fixed.indexOf('.') < 0 ? fixed.length() : fixed.indexOf('.');
    if (end - start < 5) {
      return fixed;
    }
    StringBuilder text = new StringBuilder(fixed);
    for (int i = end - 3; i > start; i -= 3) {
      text.insert(i, THIN_SPACE);
    }
    return text.toString();
  }

  private static boolean isFinite(double value) {
    return Math.abs(value) < Double.POSITIVE_INFINITY;
  }

  private static String special(double value) {
    if (Double.isNaN(value)) {
      return "not a number";
    }
    return value > 0 ? "∞" : "-∞";
  }

  private static boolean hasDigitAboveZero(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '1' && text.charAt(i) <= '9') {
        return true;
      }
    }
    return false;
  }
}
