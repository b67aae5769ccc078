package ringbook.output;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Negative numbers with a minus sign, as formulas have it, in place of the hyphen that is typed.
 */
public final class MinusSigns {

  private static final Pattern NEGATIVE = Pattern.compile("(?<=^|[\\s\\u00a0(])-(?=[0-9])");

  /** What is typed or read as it stands, and what shows nothing. */
  private static final List<String> KEPT = List.of("code", "pre", "style", "title", "desc");

  private MinusSigns() {}

  /** A text with its signs set. */
  public static String set(String text) {
    return NEGATIVE.matcher(text).replaceAll("\u2212");
  }

  /** Whether the text in an element of this name stays as it is. */
  public static boolean leave(String element) {
    return KEPT.contains(element);
  }
}
