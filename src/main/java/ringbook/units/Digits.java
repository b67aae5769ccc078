package ringbook.units;

import java.util.Arrays;

/**
 * A number of zero or above in decimal digits, exact: {@code 0.d1 d2 d3 ... x 10^point}. Changes in
 * place; one use only. Between texts and doubles it needs no arithmetic that could round.
 */
final class Digits {

  /** Doubling or halving so many times at once keeps every step within an int. */
  private static final int MOST_BITS = 27;

  private static final int LOWEST_EXPONENT = -1074;

  private int[] digits;
  private int count;
  private int point;

  private Digits(int[] digits, int count, int point) {
    this.digits = digits;
    this.count = count;
    this.point = point;
    trim();
  }

  /**
   * The digits characters of {@code text}, of which the first {@code point} stand before the point.
   */
  static Digits ofText(String text, int point) {
    int[] digits = new int[text.length()];
    for (int i = 0; i < digits.length; i++) {
      digits[i] = text.charAt(i) - '0';
    }
    return new Digits(digits, digits.length, point);
  }

  /** Exactly what the double {@code value} holds; finite, at least 0. */
  static Digits of(double value) {
    long bits = Double.doubleToRawLongBits(value);
    int exponent = (int) (bits >>> 52);
    long whole = bits & 0xFFFFFFFFFFFFFL;
    if (exponent == 0) {
      exponent = 1;
    } else {
      whole |= 0x10000000000000L;
    }
    String text = Long.toString(whole);
    Digits exact = ofText(text, text.length());
    exact.timesTwoTo(exponent - 1075);
    return exact;
  }

  /** The fewest digits that still read back as {@code value}. */
  static Digits shortest(double value) {
    for (int length = 15; length < 17; length++) {
      Digits tried = of(value);
      tried.keep(length);
      if (tried.copy().toDouble() == value) {
        return tried;
      }
    }
    Digits full = of(value);
    full.keep(17);
    return full;
  }

  private Digits copy() {
    return new Digits(Arrays.copyOf(digits, count), count, point);
  }

  boolean isZero() {
    return count == 0;
  }

  /** How many digits stand before the point; 0 or less for numbers below one tenth or so. */
  int point() {
    return point;
  }

  /** Rounds to the first {@code wanted} digits, halves up; none are left below 0. */
  void keep(int wanted) {
    if (wanted >= count) {
      return;
    }
    boolean up = wanted >= 0 && digits[wanted] >= 5;
    count = Math.max(0, wanted);
    if (up) {
      addOneToLast();
    }
    trim();
  }

  private void addOneToLast() {
    int i = count - 1;
    while (i >= 0 && digits[i] == 9) {
      i--;
    }
    if (i < 0) {
      digits[0] = 1;
      count = 1;
      point++;
    } else {
      digits[i]++;
      count = i + 1;
    }
  }

  /** Digits before the point, then a point and {@code decimals} more (no point for 0). */
  String plain(int decimals) {
    StringBuilder text = new StringBuilder();
    if (point <= 0) {
      text.append('0');
    }
    for (int i = 0; i < point; i++) {
      text.append(digitAt(i));
    }
    if (decimals > 0) {
      text.append('.');
    }
    for (int i = point; i < point + decimals; i++) {
      text.append(digitAt(i));
    }
    return text.toString();
  }

  private int digitAt(int i) {
    return i >= 0 && i < count ? digits[i] : 0;
  }

  /** How many digits stand after the point. */
  int decimals() {
    return Math.max(0, count - point);
  }

  /** The nearest double, halves to the even one; infinity beyond the largest. */
  double toDouble() {
    if (count == 0 || point < -330) {
      return 0;
    }
    if (point > 310) {
      return Double.POSITIVE_INFINITY;
    }
    int exponent = 0;
    while (point > 16 || (point == 16 && whole() >= 0x20000000000000L)) {
      int step = point > 25 ? MOST_BITS : 1;
      timesTwoTo(-step);
      exponent += step;
    }
    while (whole() < 0x10000000000000L && exponent > LOWEST_EXPONENT) {
      int step = Math.min(point < 7 ? MOST_BITS : 1, exponent - LOWEST_EXPONENT);
      timesTwoTo(step);
      exponent -= step;
    }
    long rounded = whole() + (roundsUp() ? 1 : 0);
    double mantissa = rounded;
    return exponent > 971 ? Double.POSITIVE_INFINITY : Exact.scaled(mantissa, exponent);
  }

  private boolean roundsUp() {
    int next = digitAt(point);
    if (next != 5 || count > point + 1) {
      return next >= 5;
    }
    return (whole() & 1) == 1;
  }

  private long whole() {
    long whole = 0;
    for (int i = 0; i < point; i++) {
      whole = whole * 10 + digitAt(i);
    }
    return whole;
  }

  private void timesTwoTo(int exponent) {
    int left = Math.abs(exponent);
    while (left > 0) {
      int bits = Math.min(left, MOST_BITS);
      if (exponent > 0) {
        multiply(bits);
      } else {
        divide(bits);
      }
      left -= bits;
    }
  }

  private void multiply(int bits) {
    int[] larger = new int[count + 9];
    int carry = 0;
    for (int i = larger.length - 1; i >= 0; i--) {
      int value = carry + (i >= 9 ? digits[i - 9] << bits : 0);
      larger[i] = value % 10;
      carry = value / 10;
    }
    digits = larger;
    count = larger.length;
    point += 9;
    trim();
  }

  private void divide(int bits) {
    int[] longer = new int[count + bits];
    int rest = 0;
    for (int i = 0; i < longer.length; i++) {
      int value = rest * 10 + digitAt(i);
      longer[i] = value >> bits;
      rest = value - (longer[i] << bits);
    }
    digits = longer;
    count = longer.length;
    trim();
  }

  /** Drops zeros at both ends. */
  private void trim() {
    int first = 0;
    while (first < count && digits[first] == 0) {
      first++;
    }
    if (first > 0) {
      digits = Arrays.copyOfRange(digits, first, count);
      count -= first;
      point -= first;
    }
    while (count > 0 && digits[count - 1] == 0) {
      count--;
    }
    if (count == 0) {
      point = 0;
    }
  }
}
