package ringbook.units;

/** Prints numbers the same way on every platform, without locale. */
public final class Numbers {

  private Numbers() {}

  /** {@code fixed(2.5, 2)} is {@code "2.50"}; values below 10^12, at most 6 decimals. */
  public static String fixed(double value, int decimals) {
    long scale = 1;
    for (int i = 0; i < decimals; i++) {
      scale *= 10;
    }
    long n = (long) Math.floor(Math.abs(value) * scale + 0.5);
    String whole = (value < 0 && n > 0 ? "-" : "") + n / scale;
    return decimals == 0 ? whole : whole + "." + String.valueOf(scale + n % scale).substring(1);
  }

  /** {@code value} with so many significant digits, without trailing zeros after the point. */
  public static String significant(double value, int digits) {
    if (value == 0) {
      return "0";
    }
    int decimals = digits - 1;
    double size = Math.abs(value);
    while (size >= 10) {
      size /= 10;
      decimals--;
    }
    while (size < 1) {
      size *= 10;
      decimals++;
    }
    return trimmed(fixed(value, Math.max(0, Math.min(6, decimals))));
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
}
