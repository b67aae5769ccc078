package ringbook.sheets;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.Locale;

/** Names in the order of a list for people: without regard to capitals and accents at first. */
final class LearnerOrder {

  /** By name; different names never come out equal. */
  static final Comparator<String> BY_NAME = LearnerOrder::compare;

  /** By name, then in the order of the course, then in the order they were handed in. */
  static final Comparator<Entry> OF_ENTRIES =
      Comparator.comparing(Entry::learner, BY_NAME)
          .thenComparingInt(Entry::exercise)
          .thenComparingLong(entry -> entry.place().count());

  private LearnerOrder() {}

  private static int compare(String a, String b) {
    if (a.equals(b)) {
      return 0;
    }
    int folded =
        isAscii(a) && isAscii(b)
            ? String.CASE_INSENSITIVE_ORDER.compare(a, b)
            : folded(a).compareTo(folded(b));
    return folded != 0 ? folded : a.compareTo(b);
  }

  /** In small letters, without accents, with one space for every run of blanks. */
  static String folded(String name) {
    StringBuilder plain = new StringBuilder();
    Normalizer.normalize(name, Normalizer.Form.NFD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .forEach(plain::appendCodePoint);
    return plain.toString().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
  }

  static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > 127) {
        return false;
      }
    }
    return true;
  }
}
