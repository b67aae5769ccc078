package ringbook.exercises;

import ringbook.units.Num;

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
   * denominator: 33 halves have two digits. Of several numbers in a row the last one tells: 5 ft 3
   * in was rounded to the inch, and 63 of them have two digits. Powers of ten tell nothing.
   */
  static LastDigit of(String text, double number) {
    int slash = text.lastIndexOf('/');
    if (slash > 0 && isDigit(text.charAt(slash - 1))) {
      return ofFraction(text, slash, number);
    }
    int first = nextDigit(text, 0);
    if (first == text.length() || number == 0) {
      return UNKNOWN;
    }
    int from = first;
    int to = endOfRun(text, first);
    while (nextDigit(text, to) < text.length()) {
      if (text.charAt(to) == 'e' || text.charAt(to) == 'E') {
        return UNKNOWN;
      }
      from = nextDigit(text, to);
      to = endOfRun(text, from);
    }
    String run = text.substring(from, to);
    double step = Math.abs(number) / digits(run);
    if (from == first && isPowerOfTen(step)) {
      return new LastDigit(significant(run), step / 2);
    }
    int mark = Math.max(run.lastIndexOf('.'), run.lastIndexOf(','));
    return parts(number, mark < 0 ? 1 : Num.pow(10, run.length() - 1 - mark));
  }

  private static int endOfRun(String text, int from) {
    int to = from;
    while (to < text.length() && (isDigit(text.charAt(to)) || separates(text, to))) {
      to++;
    }
    return to;
  }

  /** All digits of {@code run} as one number. */
  private static double digits(String run) {
    double whole = 0;
    for (int i = 0; i < run.length(); i++) {
      whole = isDigit(run.charAt(i)) ? whole * 10 + (run.charAt(i) - '0') : whole;
    }
    return whole;
  }

  private static LastDigit ofFraction(String text, int slash, double number) {
    int end = endOfRun(text, slash + 1);
    return parts(number, digits(text.substring(slash + 1, end)));
  }

  /** {@code number} is a whole number of parts; unknown where it is not. */
  private static LastDigit parts(double number, double denominator) {
    double parts = Math.abs(number) * denominator;
    double whole = Math.floor(parts + 0.5);
    return whole > 0 && whole < 1e9 && Math.abs(parts - whole) < 1e-6
        ? new LastDigit(String.valueOf((long) whole).length(), 0.5 / denominator)
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
    double power = Num.pow(10, Num.round(Num.log(step) / Num.log(10)));
    return Math.abs(step / power - 1) < 1e-9;
  }
}
