package ringbook.output.marks;

/** Texts of learners on a page. */
final class PageText {

  private static final int LONGEST = 300;

  private PageText() {}

  /** Without control and direction characters, and not too long. */
  static String of(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(LONGEST)
        .forEach(
            c -> {
              int type = Character.getType(c);
              boolean shown =
                  type != Character.CONTROL
                      && type != Character.FORMAT
                      && type != Character.SURROGATE
                      && type != Character.UNASSIGNED
                      && c != 0xfffe
                      && c != 0xffff;
              out.appendCodePoint(shown ? c : ' ');
            });
    return text.codePointCount(0, text.length()) > LONGEST ? out + "…" : out.toString();
  }
}
