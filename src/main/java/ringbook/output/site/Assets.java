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
          "answers",
          "live",
          "figures",
          "inks",
          "appendix",
          "field",
          "print");

  /** The one style sheet that is not copied but written for the course. */
  static final String PLACED = "css/placed.css";

  /** The calculations, made from the program's own classes when it was built. */
  private static final String CALCULATIONS = "js/calc.js";

  /** Those of the worker. */
  private static final String SIGHT = "js/sight.js";

  /** What uses them in the pages. */
  static final List<String> SCRIPTS =
      List.of(
          "live",
          "math",
          "numbers",
          "parts",
          "scene-entries",
          "scene-file",
          "test-photo",
          "scene-card",
          "working-panel",
          "own-scene",
          "answer-store",
          "answer-sheet",
          "answer-desk",
          "controls",
          "rank",
          "plan-rows",
          "check");

  /** Those of them that only pages with exercises need; the first page too, if from "answer-". */
  static final List<String> ANSWERING = SCRIPTS.subList(SCRIPTS.size() - 7, SCRIPTS.size());

  /** What the field view needs beside the plan of the course. */
  static final List<String> FIELD_SCRIPTS = List.of("field-log", "field-plan", "field-view");

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

  /** Whether the calculations are there as a script; without them pages are to be read only. */
  static boolean hasCalculations() {
    ClassLoader loader = Assets.class.getClassLoader();
    return loader.getResource(ROOT + CALCULATIONS) != null
        && loader.getResource(ROOT + SIGHT) != null;
  }

  static void copyCalculationsTo(Path site) throws IOException {
    copy(ROOT + CALCULATIONS, site.resolve(CALCULATIONS));
    copy(ROOT + SIGHT, site.resolve(SIGHT));
    for (String script : SCRIPTS) {
      String file = "js/" + script + ".js";
      copy(ROOT + file, site.resolve(file));
    }
  }

  static void copyFieldViewTo(Path site) throws IOException {
    for (String script : FIELD_SCRIPTS) {
      String file = "js/" + script + ".js";
      copy(ROOT + file, site.resolve(file));
    }
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
