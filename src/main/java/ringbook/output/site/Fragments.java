package ringbook.output.site;

import freemarker.core.TemplateXMLOutputModel;
import freemarker.core.XHTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.course.ComposedQuantity;

/**
 * Makes the well-formed fragments of the page model ready for a page of the site: links inside the
 * course lead to its files, values say what they are, styles move to the style sheet.
 */
final class Fragments {

  /** A start tag; values of attributes may hold {@code >} but, being XML, never {@code <}. */
  private static final Pattern TAG =
      Pattern.compile("<[A-Za-z](?:[^\"'<>]++|\"[^\"]*+\"|'[^']*+')*+>");

  private static final Pattern LINK = Pattern.compile(" href=\"course:([^\"#]*)");

  /** Pages typeset formulas anew by other means; see {@code live.js}. */
  private static final Pattern TEX = Pattern.compile(" data-tex=\"[^\"]*\"");

  private static final Pattern KEY = Pattern.compile(" data-key=\"([^\"]*)\"");

  private final Map<String, String> names = new TreeMap<>();
  private final PlacedStyles styles;

  Fragments(List<ComposedQuantity> quantities, PlacedStyles styles) {
    for (ComposedQuantity quantity : quantities) {
      names.put(quantity.key(), quantity.name());
    }
    this.styles = styles;
  }

  /** The fragment as markup that a template prints as it is. */
  TemplateXMLOutputModel ready(String xhtml) {
    try {
      return XHTMLOutputFormat.INSTANCE.fromMarkup(rewritten(xhtml));
    } catch (TemplateModelException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  String rewritten(String xhtml) {
    return TAG.matcher(xhtml).replaceAll(m -> Matcher.quoteReplacement(tag(m)));
  }

  private String tag(MatchResult match) {
    String light = TEX.matcher(match.group()).replaceAll("");
    String linked = LINK.matcher(light).replaceAll(" href=\"$1.html");
    return styles.moved(named(linked));
  }

  private String named(String tag) {
    Matcher key = KEY.matcher(tag);
    if (!tag.startsWith("<data ") || tag.contains(" title=") || !key.find()) {
      return tag;
    }
    String name = names.get(key.group(1));
    return name == null ? tag : "<data title=\"" + escaped(name) + "\"" + tag.substring(5);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
