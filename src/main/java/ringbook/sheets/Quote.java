package ringbook.sheets;

/** Words of a sheet inside a message: on one line, harmless to a terminal, not too long. */
final class Quote {

  private static final int LONGEST = 60;

  private Quote() {}

  static String of(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(LONGEST)
        .forEach(c -> out.appendCodePoint(isPrintable(c) ? c : c < ' ' ? ' ' : '\ufffd'));
    return text.codePointCount(0, text.length()) > LONGEST
        ? out.append('…').toString()
        : out.toString();
  }

  private static boolean isPrintable(int c) {
    int type = Character.getType(c);
    return type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE;
  }
}
