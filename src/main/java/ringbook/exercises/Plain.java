package ringbook.exercises;

import ringbook.units.Words;

/** Texts of learners, freed of what only looks different. */
final class Plain {

  private static final int LONGEST_QUOTE = 60;
  private static final int LONGEST_MESSAGE = 140;

  private Plain() {}

  /** Without blanks of any kind at both ends. */
  static String trimmed(String text) {
    int from = 0;
    int to = text.length();
    while (from < to && isBlank(text.charAt(from))) {
      from++;
    }
    while (to > from && isBlank(text.charAt(to - 1))) {
      to--;
    }
    return text.substring(from, to);
  }

  /**
   * In small letters, with one space for every run of blanks, without marks of emphasis and without
   * a full stop at the end: two texts that a reader takes for the same come out the same.
   */
  static String folded(String text) {
    StringBuilder folded = new StringBuilder(text.length());
    boolean gap = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isBlank(c)) {
        gap = folded.length() > 0;
      } else if (c != '*' && c != '`' && c != '_') {
        folded.append(gap ? " " : "").append(plain(c));
        gap = false;
      }
    }
    int end = folded.length();
    while (end > 0 && (folded.charAt(end - 1) == '.' || folded.charAt(end - 1) == ' ')) {
      end--;
    }
    return Words.lower(folded.substring(0, end));
  }

  /** Without a full stop at the end. */
  static String unstopped(String text) {
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  /** Between quotation marks, on one line, without control characters, and not too long. */
  static String quoted(String text) {
    return "'" + cut(trimmed(text), LONGEST_QUOTE) + "'";
  }

  /** A message that may quote a learner: on one line, without control characters. */
  static String line(String message) {
    return cut(message, LONGEST_MESSAGE);
  }

  private static String cut(String text, int longest) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (out.length() >= longest && !Character.isLowSurrogate(c)) {
        return out.append('…').toString();
      }
      out.append(isBlank(c) ? ' ' : isUnprintable(c) ? '\ufffd' : c);
    }
    return out.toString();
  }

  /** Space, no-break and thin spaces, tab and line ends; also the invisible byte order mark. */
  static boolean isBlank(char c) {
    return c == ' '
        || (c >= '\t' && c <= '\r')
        || c == '\u00a0'
        || (c >= '\u2000' && c <= '\u200b')
        || c == '\u202f'
        || c == '\u3000'
        || c == '\ufeff';
  }

  private static boolean isUnprintable(char c) {
    return c < ' ' || (c >= '\u007f' && c <= '\u009f') || (c >= '\u202a' && c <= '\u202e');
  }

  private static char plain(char c) {
    return switch (c) {
      case '’', '‘' -> '\'';
      case '“', '”' -> '"';
      case '–', '—', '−' -> '-';
      default -> c;
    };
  }
}
