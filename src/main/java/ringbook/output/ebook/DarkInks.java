package ringbook.output.ebook;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.output.Templates;

/**
 * The site's colours of drawings on a dark page, written out: many reading systems know no var().
 */
final class DarkInks {

  private static final Pattern COLOUR = Pattern.compile("--([a-z0-9-]+): (#[0-9a-f]{6});");
  private static final Pattern USE = Pattern.compile("var\\(--([a-z0-9-]+)\\)");
  private static final String DARK = "(prefers-color-scheme: dark)";

  private DarkInks() {}

  /** Rules for the end of a style sheet. */
  static String rules() throws IOException {
    String palette = Templates.style("css/palette");
    Map<String, String> dark = new LinkedHashMap<>();
    Matcher colours = COLOUR.matcher(palette.substring(palette.indexOf(DARK)));
    while (colours.find()) {
      dark.putIfAbsent(colours.group(1), colours.group(2));
    }
    String inks = Templates.style("css/inks") + ".fig-ground { fill: var(--card); }\n";
    return "@media "
        + DARK
        + " {\n"
        + USE.matcher(inks).replaceAll(use -> dark.get(use.group(1)))
        + "}\n";
  }
}
