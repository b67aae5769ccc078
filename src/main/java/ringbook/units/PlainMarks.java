package ringbook.units;

/** Brings the many marks people and keyboards make to one plain form. */
final class PlainMarks {

  private static final String FRACTIONS = "½¼¾⅓⅔⅛⅜⅝⅞⅕";
  private static final String[] SPELLED = {
    "1/2", "1/4", "3/4", "1/3", "2/3", "1/8", "3/8", "5/8", "7/8", "1/5",
  };

  private PlainMarks() {}

  /**
   * Trimmed, with plain spaces, apostrophes, quotation marks, minus signs and slashes, and with
   * single-character fractions spelled out after a space.
   */
  static String of(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = plain(text.charAt(i));
      int fraction = FRACTIONS.indexOf(c);
      if (fraction >= 0) {
        boolean parted = plain.length() > 0 && plain.charAt(plain.length() - 1) == ' ';
        plain.append(parted ? "" : " ").append(SPELLED[fraction]);
      } else if (c == '\'' && plain.length() > 0 && plain.charAt(plain.length() - 1) == '\'') {
        plain.setCharAt(plain.length() - 1, '"');
      } else if (c != ' ' || plain.length() == 0 || plain.charAt(plain.length() - 1) != ' ') {
        plain.append(c);
      }
    }
    return withPower(trimmed(plain.toString()));
  }

  /**
   * A power of ten behind a sign of multiplication ({@code 4.12 × 10^2}, {@code 4.12·10⁻³}) in the
   * form of calculators: {@code 4.12e2}.
   */
  private static String withPower(String text) {
    int at = 0;
    while (at < text.length() && "×·⋅*".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    int ten = skip(text, at + 1);
    int power = ten + 2;
    if (at == 0 || !text.startsWith("10", ten) || power >= text.length()) {
      return text;
    }
    power += text.charAt(power) == '^' ? 1 : 0;
    StringBuilder digits = new StringBuilder();
    int end = power;
    while (end < text.length() && powerDigit(text.charAt(end), digits)) {
      end++;
    }
    return digits.length() == 0
        ? text
        : trimmed(text.substring(0, at)) + "e" + digits + text.substring(end);
  }

  private static int skip(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
    return at;
  }

  /** Adds a digit or sign of a power, raised or not; false where it is none. */
  private static boolean powerDigit(char c, StringBuilder digits) {
    int raised = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺".indexOf(c);
    char plain = raised < 0 ? c : "0123456789-+".charAt(raised);
    boolean sign = plain == '-' || plain == '+';
    boolean known = sign ? digits.length() == 0 : plain >= '0' && plain <= '9';
    if (known) {
      digits.append(plain);
    }
    return known;
  }

  private static char plain(char c) {
    return switch (c) {
      case '\t', '\u00a0', '\u2007', '\u2008', '\u2009', '\u200a', '\u202f' -> ' ';
      case '\u2212', '\u2013', '\u2010', '\u2011' -> '-';
      case '\u2018', '\u2019', '\u2032', '\u00b4' -> '\'';
      case '\u201c', '\u201d', '\u2033' -> '"';
      case '\u2044', '\u2215' -> '/';
      case '\u03bc' -> '\u00b5';
      case '\u0192' -> 'f';
      case '\u00ba' -> '°';
      default -> c;
    };
  }

  /** Without spaces at both ends. */
  static String trimmed(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && plain(text.charAt(from)) == ' ') {
      from++;
    }
    while (to > from && plain(text.charAt(to - 1)) == ' ') {
      to--;
    }
    return text.substring(from, to);
  }
}
