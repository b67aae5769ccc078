package ringbook.exercises;

/**
 * A learner's name, freed of what differs between two people writing the same name down: case,
 * spaces, accents and how a computer stores them.
 */
public final class LearnerName {

  /** What the letters from U+00C0 to U+017F are without their accents; a dot keeps the letter. */
  private static final String BASE =
      "aaaaaa.ceeeeiiii.nooooo.ouuuuy..aaaaaa.ceeeeiiii.nooooo.ouuuuy.y"
          + "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii..jjkk.llllll."
          + ".llnnnnnn...oooooo..rrrrrrsssssssstttt..uuuuuuuuuuuuwwyyyzzzzzz.";

  /** The capitals without a base letter; the small letter follows each. */
  private static final String CAPITALS = "\u0132\u013f\u014a\u0152\u0166";

  private LearnerName() {}

  /** {@code " Zoë MÜLLER "} and {@code "zoe muller"} both become {@code "zoe muller"}. */
  public static String normalised(String name) {
    String folded = Plain.folded(name);
    StringBuilder plain = new StringBuilder(folded.length());
    for (int i = 0; i < folded.length(); i++) {
      char c = folded.charAt(i);
      boolean accentAlone = c >= '\u0300' && c <= '\u036f';
      if (!accentAlone) {
        plain.append(base(c));
      }
    }
    return plain.toString();
  }

  private static char base(char c) {
    if (c < '\u00c0' || c > '\u017f') {
      return c;
    }
    char base = BASE.charAt(c - '\u00c0');
    return base == '.' ? lower(c) : base;
  }

  /** The small letter of those without a base letter, such as Æ, Þ and Œ. */
  private static char lower(char c) {
    if (c < '\u00df') {
      return c == '\u00d7' ? c : (char) (c + 0x20);
    }
    return CAPITALS.indexOf(c) < 0 ? c : (char) (c + 1);
  }
}
