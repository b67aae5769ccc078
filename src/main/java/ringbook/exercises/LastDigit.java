package ringbook.exercises;

/**
 * How finely a learner wrote a number: {@code 41 cm} says no more than 40.5 to 41.5.
 *
 * @param digits significant digits written; 0 where the number was not written as one run of digits
 * @param half half of the last digit written, in the unit of the number; 0 likewise
 */
record LastDigit(int digits, double half) {

  private static final LastDigit UNKNOWN = new LastDigit(0, 0);

  /**
   * Looks for the digits of {@code number} in {@code text}. A fraction (16 1/2) was rounded to its
   * denominator: 33 halves have two digits. Powers of ten and several numbers in a row (5 ft 3 in)
   * tell nothing.
   */
  static LastDigit of(String text, double number) {
    int slash = text.lastIndexOf('/');
    if (slash > 0 && isDigit(text.charAt(slash - 1))) {
      return ofFraction(text, slash, number);
    }
    int from = nextDigit(text, 0);
    if (from == text.length() || number == 0) {
      return UNKNOWN;
    }
    int to = from;
    while (to < text.length() && (isDigit(text.charAt(to)) || separates(text, to))) {
      to++;
    }
    double whole = 0;
    for (int i = from; i < to; i++) {
      whole = isDigit(text.charAt(i)) ? whole * 10 + (text.charAt(i) - '0') : whole;
    }
    double step = Math.abs(number) / whole;
    boolean decimal = isPowerOfTen(step);
    return nextDigit(text, to) < text.length() || !decimal
        ? UNKNOWN
        : new LastDigit(significant(text.substring(from, to)), step / 2);
  }

  private static LastDigit ofFraction(String text, int slash, double number) {
    double denominator = 0;
    for (int i = slash + 1; i < text.length() && isDigit(text.charAt(i)); i++) {
      denominator = denominator * 10 + (text.charAt(i) - '0');
    }
    double parts = Math.abs(number) * denominator;
    return parts > 0 && parts < 1e9
        ? new LastDigit(String.valueOf((long) (parts + 0.5)).length(), 0.5 / denominator)
        : UNKNOWN;
  }

  /** How many digits {@code text} has from its first digit above 0 on. */
  static int significant(String text) {
    int digits = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      digits += isDigit(c) && (digits > 0 || c != '0') ? 1 : 0;
    }
    return digits;
  }

  private static boolean separates(String text, int at) {
    char c = text.charAt(at);
    boolean mark = c == '.' || c == ',' || c == '\'' || c == '’' || Plain.isBlank(c);
    return mark && at + 1 < text.length() && isDigit(text.charAt(at + 1));
  }

  private static int nextDigit(String text, int from) {
    int at = from;
    while (at < text.length() && !isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isPowerOfTen(double step) {
    if (!(step > 0 && step < Double.POSITIVE_INFINITY)) {
      return false;
    }
    double power = 1;
    while (power * 3 < step) {
      power *= 10;
    }
    while (power > step * 3) {
      power /= 10;
    }
    return Math.abs(step / power - 1) < 1e-9;
  }
}
