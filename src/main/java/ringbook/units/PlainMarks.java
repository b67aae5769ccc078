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
        plain.append(' ').append(SPELLED[fraction]);
      } else if (c == '\'' && plain.length() > 0 && plain.charAt(plain.length() - 1) == '\'') {
        plain.setCharAt(plain.length() - 1, '"');
      } else if (c != ' ' || plain.length() == 0 || plain.charAt(plain.length() - 1) != ' ') {
        plain.append(c);
      }
    }
    return trimmed(plain.toString());
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
