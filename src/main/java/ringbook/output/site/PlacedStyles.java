package ringbook.output.site;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Gathers the {@code style} attributes of fragments (a formula that hangs below its line) as
 * classes of one style sheet, because the pages allow no inline style.
 */
final class PlacedStyles {

  private static final Pattern STYLE = Pattern.compile(" style=\"([^\"]*)\"");
  private static final Pattern CLASS = Pattern.compile(" class=\"([^\"]*)\"");

  private final Map<String, String> classes = new TreeMap<>();

  /** The start tag with a class in place of its style. */
  String moved(String tag) {
    Matcher style = STYLE.matcher(tag);
    if (!style.find()) {
      return tag;
    }
    String name = name(plain(style.group(1)));
    String bare = tag.substring(0, style.start()) + tag.substring(style.end());
    Matcher old = CLASS.matcher(bare);
    if (old.find()) {
      return bare.substring(0, old.start(1)) + name + " " + bare.substring(old.start(1));
    }
    return bare.substring(0, style.start())
        + " class=\""
        + name
        + "\""
        + bare.substring(style.start());
  }

  private static String plain(String attribute) {
    return attribute.replace("&quot;", "\"").replace("&apos;", "'").replace("&amp;", "&");
  }

  private String name(String style) {
    return classes.computeIfAbsent(style, s -> "placed-" + (classes.size() + 1));
  }

  /** The style sheet. */
  String sheet() {
    StringBuilder css = new StringBuilder("/* Styles that came with formulas and drawings. */\n");
    classes.forEach(
        (style, name) -> css.append('.').append(name).append(" { ").append(style).append(" }\n"));
    return css.toString();
  }
}
