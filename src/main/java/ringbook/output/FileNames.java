package ringbook.output;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Names of files made of names of people: letters and digits of any writing stay, all else becomes
 * a hyphen, no name is one that some system keeps for itself, and no two are the same even where
 * capitals and accents do not count.
 */
public final class FileNames {

  private static final int LONGEST = 60;

  /** Names of devices that some systems allow for no file, whatever its ending. */
  private static final Set<String> KEPT = Set.of("con", "prn", "aux", "nul", "com", "lpt");

  private final Set<String> taken = new HashSet<>();

  /** A name without ending that no one had before. */
  public String of(String person) {
    String base = base(person);
    String name = base;
    for (int i = 2; !taken.add(folded(name)); i++) {
      name = base + "-" + i;
    }
    return name;
  }

  private static String base(String person) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(person, Normalizer.Form.NFC)
        .codePoints()
        .map(c -> Character.isLetterOrDigit(c) || isMark(c) ? c : '-')
        .limit(LONGEST)
        .forEach(out::appendCodePoint);
    String name = out.toString().replaceAll("-+", "-").replaceAll("^-|-$", "");
    if (name.isEmpty()) {
      return "learner";
    }
    String letters = name.toLowerCase(Locale.ROOT).replaceAll("[0-9¹²³]+$", "");
    return KEPT.contains(letters) ? "learner-" + name : name;
  }

  /** Signs that belong to a letter, as many writings have them. */
  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
  }

  private static String folded(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }
}
