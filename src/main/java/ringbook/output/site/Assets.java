package ringbook.output.site;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The files that every page loads: styles, script, typefaces. */
final class Assets {

  /** Where the project's site folder lies on the class path. */
  static final String ROOT = "ringbook/site/";

  /** Where the typefaces lie on the class path. */
  private static final String TYPEFACES = "liberation/";

  /** Style sheets in the order in which pages load them. */
  static final List<String> STYLES =
      List.of(
          "fonts",
          "palette",
          "placed",
          "page",
          "dial",
          "text",
          "boxes",
          "figures",
          "appendix",
          "print");

  /** The one style sheet that is not copied but written for the course. */
  static final String PLACED = "css/placed.css";

  private static final List<String> FONTS =
      List.of(
          "LiberationSerif-Regular.ttf",
          "LiberationSerif-Bold.ttf",
          "LiberationSerif-Italic.ttf",
          "LiberationSerif-BoldItalic.ttf",
          "LiberationSans-Regular.ttf",
          "LiberationSans-Bold.ttf",
          "LiberationMono-Regular.ttf");

  private Assets() {}

  static void copyTo(Path site) throws IOException {
    for (String style : STYLES) {
      String file = "css/" + style + ".css";
      if (!file.equals(PLACED)) {
        copy(ROOT + file, site.resolve(file));
      }
    }
    copy(ROOT + "js/page.js", site.resolve("js/page.js"));
    for (String font : FONTS) {
      copy(TYPEFACES + font, site.resolve("fonts/" + font));
    }
    copy(TYPEFACES + "LICENSE", site.resolve("fonts/LICENSE.txt"));
    copy(ROOT + "fonts/NOTICE.txt", site.resolve("fonts/NOTICE.txt"));
  }

  private static void copy(String from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    try (InputStream in = Assets.class.getClassLoader().getResourceAsStream(from)) {
      if (in == null) {
        throw new FileNotFoundException("not on the class path: " + from);
      }
      Files.copy(in, to);
    }
  }
}
