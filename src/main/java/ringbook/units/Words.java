package ringbook.units;

/** Letter case for the Latin letters of names, the same on every platform. */
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
}
