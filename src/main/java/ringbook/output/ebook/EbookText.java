package ringbook.output.ebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.course.ComposedCourse;
import ringbook.course.typeset.MathMl;

/**
 * Makes the fragments of the page model ready for one page of the e-book: formulas become MathML,
 * links lead to its pages, drawings get a ground of their own, and the first use of each quantity
 * can be led to.
 */
final class EbookText {

  private static final Pattern FORMULA =
      Pattern.compile(
          "(<p class=\"(?:formula|numbers|result)\">)?<svg class=\"math\"([^>]*)>.*?</svg>",
          Pattern.DOTALL);

  private static final Pattern TAG =
      Pattern.compile("<[A-Za-z](?:[^\"'<>]++|\"[^\"]*+\"|'[^']*+')*+>");

  private static final Pattern LINK = Pattern.compile(" href=\"course:([^\"#]*)");
  private static final Pattern KEY = Pattern.compile(" data-key=\"([^\"]*)\"");
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");
  private static final Pattern BOX = Pattern.compile(" viewBox=\"(\\S+) (\\S+) (\\S+) (\\S+)\"");
  private static final Pattern WIDTH = Pattern.compile("style=\"width:([0-9]+)\\.");

  /** In em; the narrowest column has about 18, and a box in a box leaves 13 of them. */
  private static final int WIDE = 11;

  private static final String GROUND = "#fcf8f0";

  private final Map<String, String> uses = new LinkedHashMap<>();

  /** By key of a quantity, the id of the place where the page first uses it. */
  Map<String, String> uses() {
    return uses;
  }

  /** Text, a question, a caption or a drawing. */
  String ready(String xhtml) {
    return rewritten(xhtml, true);
  }

  /** What stands apart, where no link should lead. */
  String apart(String xhtml) {
    return rewritten(xhtml, false);
  }

  private String rewritten(String xhtml, boolean leads) {
    String written = FORMULA.matcher(xhtml).replaceAll(m -> Matcher.quoteReplacement(formula(m)));
    return TAG.matcher(written)
        .replaceAll(m -> Matcher.quoteReplacement(tag(m.group(), leads)))
        .replace(
            "<sup class=\"note-ref\"><a ",
            "<sup class=\"note-ref\"><a epub:type=\"noteref\" role=\"doc-noteref\" ");
  }

  private static String formula(MatchResult found) {
    String attributes = found.group(2);
    String line = found.group(1) == null ? "" : found.group(1);
    String before = isWide(attributes) ? line.replace(">", " tabindex=\"0\">") : line;
    Optional<String> tex = attribute(attributes, "data-tex");
    String speech = attribute(attributes, "aria-label").orElse("");
    return tex.flatMap(t -> MathMl.of(t, speech, !before.isEmpty()))
        .map(math -> before + math)
        .orElse(found.group());
  }

  /** Whether it scrolls on a narrow page, and must be reached by keys for that. */
  private static boolean isWide(String attributes) {
    Matcher width = WIDTH.matcher(attributes);
    return width.find() && Integer.parseInt(width.group(1)) >= WIDE;
  }

  private static Optional<String> attribute(String attributes, String name) {
    Matcher found = Pattern.compile(" " + name + "=\"([^\"]*)\"").matcher(attributes);
    return found.find() ? Optional.of(plain(found.group(1))) : Optional.empty();
  }

  private static String plain(String escaped) {
    return escaped
        .replace("&quot;", "\"")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }

  private String tag(String tag, boolean leads) {
    String inside =
        tag.replace(
            " href=\"course:" + ComposedCourse.FIELD_VIEW + "\"", ""); // the website alone has it
    String linked = LINK.matcher(inside).replaceAll(" href=\"$1.xhtml");
    if (linked.startsWith("<svg")) {
      return drawing(linked.replaceAll(" data-tex=\"[^\"]*\"", ""));
    }
    if (linked.startsWith("<section class=\"footnotes\"")) {
      return linked.replace(
          ">", " epub:type=\"endnotes\" role=\"doc-endnotes\" aria-label=\"Notes\">");
    }
    if (linked.startsWith("<dl class=\"terms\"")) {
      return linked.replace(">", " epub:type=\"glossary\">");
    }
    if (linked.startsWith("<div class=\"table\"")) { // it scrolls on a narrow page
      linked = linked.replace(">", " tabindex=\"0\">");
    }
    return leads ? led(linked) : linked;
  }

  /** The tag with an id, if it is the first of the page for its quantity. */
  private String led(String tag) {
    Matcher key = KEY.matcher(tag);
    if (!key.find() || uses.containsKey(key.group(1))) {
      return tag;
    }
    Matcher id = ID.matcher(tag);
    if (id.find()) {
      uses.put(key.group(1), id.group(1));
      return tag;
    }
    String made = "use-" + key.group(1);
    uses.put(key.group(1), made);
    return tag.substring(0, key.start()) + " id=\"" + made + "\"" + tag.substring(key.start());
  }

  /** A drawing cannot know the page's colour: a ground in its own colours lies under it. */
  private static String drawing(String tag) {
    String named =
        tag.contains(" xmlns=")
            ? tag
            : "<svg xmlns=\"http://www.w3.org/2000/svg\"" + tag.substring(4);
    Matcher box = BOX.matcher(tag);
    if (!tag.contains(" class=\"fig\"") || !box.find()) {
      return named;
    }
    return named
        + "<rect class=\"fig-ground\" x=\"%1\" y=\"%2\" width=\"%3\" height=\"%4\" fill=\"%5\"/>"
            .replace("%1", box.group(1))
            .replace("%2", box.group(2))
            .replace("%3", box.group(3))
            .replace("%4", box.group(4))
            .replace("%5", GROUND);
  }
}
