package ringbook.units;

import java.util.OptionalDouble;

/** Reads plain decimal numbers the same way on every platform. */
public final class Decimal {

  private static final int LONGEST = 400;

  /** Whole numbers of so many digits are exact as doubles. */
  private static final int EXACT_DIGITS = 15;

  /** Powers of ten up to this are exact as doubles. */
  private static final int EXACT_POWER = 22;

  private Decimal() {}

  /**
   * The double nearest to the number that {@code text} writes: a sign ({@code +}, {@code -} or
   * {@code −}), digits with at most one point, and where wanted {@code e} with a whole power of
   * ten. Digits on one side of the point are enough. Empty for any other text, spaces included, for
   * more than 400 characters, and for numbers too large for a double.
   */
  public static OptionalDouble parse(String text) {
    if (text.isEmpty() || text.length() > LONGEST) {
      return OptionalDouble.empty();
    }
    boolean negative = isMinus(text, 0);
    int at = negative || text.charAt(0) == '+' ? 1 : 0;
    StringBuilder digits = new StringBuilder();
    int point = -1;
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (c >= '0' && c <= '9') {
        digits.append(c);
      } else if (c == '.' && point < 0) {
        point = digits.length();
      } else {
        break;
      }
    }
    if (digits.length() == 0 || !endsWithPower(text, at)) {
      return OptionalDouble.empty();
    }
    int before = (point < 0 ? digits.length() : point) + power(text, at);
    double size = nearest(digits.toString(), before);
    return size == Double.POSITIVE_INFINITY
        ? OptionalDouble.empty()
        : OptionalDouble.of(negative && size > 0 ? -size : size);
  }

  /** The double nearest to {@code digits} with the point after the first {@code before}. */
  private static double nearest(String digits, int before) {
    int power = before - digits.length();
    if (digits.length() > EXACT_DIGITS || Math.abs(power) > EXACT_POWER) {
      return Digits.ofText(digits, before).toDouble();
    }
    double whole = 0;
    for (int i = 0; i < digits.length(); i++) {
      whole = whole * 10 + (digits.charAt(i) - '0');
    }
    double ten = 1;
    for (int i = 0; i < Math.abs(power); i++) {
      ten *= 10;
    }
    // Both are exact, so that one step rounds once.
    return power < 0 ? whole / ten : whole * ten;
  }

  /**
   * Whether {@code text} ends at {@code at}, or goes on with a power of ten of at most 4 digits.
   */
  private static boolean endsWithPower(String text, int at) {
    if (at == text.length()) {
      return true;
    }
    if (text.charAt(at) != 'e' && text.charAt(at) != 'E') {
      return false;
    }
    int from = firstOfPower(text, at);
    for (int i = from; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return text.length() > from && text.length() <= from + 4;
  }

  private static int power(String text, int at) {
    if (at == text.length()) {
      return 0;
    }
    int from = firstOfPower(text, at);
    int size = 0;
    for (int i = from; i < text.length(); i++) {
      size = size * 10 + (text.charAt(i) - '0');
    }
    return isMinus(text, at + 1) ? -size : size;
  }

  private static int firstOfPower(String text, int e) {
    boolean signed = isMinus(text, e + 1) || (e + 1 < text.length() && text.charAt(e + 1) == '+');
    return signed ? e + 2 : e + 1;
  }

  private static boolean isMinus(String text, int at) {
    return at < text.length() && (text.charAt(at) == '-' || text.charAt(at) == '\u2212');
  }
}
