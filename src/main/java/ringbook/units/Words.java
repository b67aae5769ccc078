package ringbook.units;

/** Letter case, blanks and plurals of English names, the same on every platform. */
public final class Words {

  private Words() {}

  /** A to Z become a to z; everything else stays. */
  public static String lower(String text) {
    StringBuilder lower = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      lower.append(c >= 'A' && c <= 'Z' ? (char) (c + 'a' - 'A') : c);
    }
    return lower.toString();
  }

  /** a to z become A to Z; everything else stays. */
  public static String upper(String text) {
    StringBuilder upper = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      upper.append(c >= 'a' && c <= 'z' ? (char) (c + 'A' - 'a') : c);
    }
    return upper.toString();
  }

  /** So many of a thing with a regular plural: {@code 1 run}, {@code 5 runs}. */
  public static String count(int count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  /** Without blanks at both ends; what counts as blank is the same on every platform. */
  public static String trimmed(String text) {
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

  /** Whether there is nothing but blanks. */
  public static boolean isBlank(String text) {
    return trimmed(text).isEmpty();
  }

  /** Control characters that part words, spaces and line ends, but no no-break spaces. */
  private static boolean isBlank(char c) {
    return c == ' '
        || (c >= '\t' && c <= '\r')
        || (c >= '\u001c' && c <= '\u001f')
        || c == '\u1680'
        || (c >= '\u2000' && c <= '\u200a' && c != '\u2007')
        || c == '\u2028'
        || c == '\u2029'
        || c == '\u205f'
        || c == '\u3000';
  }
}
