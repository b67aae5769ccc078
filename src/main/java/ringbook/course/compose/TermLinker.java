package ringbook.course.compose;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.Branch;
import ringbook.course.ComposedLesson.Markup;

/**
 * Links the first use of each trade word on a page to the glossary. Headings, links, workings,
 * tables' heads, values, figures, exercises and what this scene does not show are left alone.
 */
final class TermLinker {

  private static final Pattern TAG =
      Pattern.compile("<[A-Za-z/](?:[^\"'<>]++|\"[^\"]*+\"|'[^']*+')*+>");

  private static final Set<String> LEFT_ALONE =
      Set.of(
          "a", "h2", "h3", "h4", "code", "pre", "svg", "data", "caption", "th", "sup", "summary");

  private static final String TERM_LINK = "<a class=\"term\" href=\"";

  private final Glossary glossary;
  private final TermUses uses;
  private final String page;
  private final Set<Glossary.Term> linked = new LinkedHashSet<>();
  private final Set<Glossary.Term> everyday = new LinkedHashSet<>();
  private final Deque<String> open = new ArrayDeque<>();
  private int closed;
  private int strong;

  /**
   * @param page the id of the page
   * @param everyday words that the page uses in their everyday sense
   * @param uses takes up where terms are used
   */
  TermLinker(Glossary glossary, String page, List<String> everyday, TermUses uses) {
    this.glossary = glossary;
    this.page = page;
    this.uses = uses;
    everyday.forEach(word -> glossary.find(word).ifPresent(this.everyday::add));
  }

  /** The blocks with their terms linked. */
  List<Block> link(List<Block> blocks) {
    List<Block> out = new ArrayList<>();
    for (Block block : blocks) {
      if (block instanceof Markup markup) {
        out.add(new Markup(link(markup.xhtml())));
      } else if (block instanceof Branch branch && branch.shown()) {
        out.add(new Branch(branch.condition(), branch.wanted(), true, link(branch.blocks())));
      } else {
        out.add(block);
      }
    }
    return out;
  }

  private String link(String xhtml) {
    StringBuilder out = new StringBuilder(xhtml.length() + 200);
    Matcher tags = TAG.matcher(xhtml);
    int at = 0;
    while (tags.find()) {
      text(xhtml.substring(at, tags.start()), out);
      tag(tags.group(), out);
      at = tags.end();
    }
    text(xhtml.substring(at), out);
    return out.toString();
  }

  private void text(String text, StringBuilder out) {
    int at = 0;
    if (closed == 0) {
      for (Glossary.Hit hit : glossary.in(text)) {
        if (everyday.contains(hit.term())) {
          continue;
        }
        if (strong > 0 && isAll(hit, text)) {
          uses.introduce(hit.term(), page);
        }
        if (linked.add(hit.term())) {
          out.append(text, at, hit.start())
              .append(opening(hit.term(), hit.term().address()))
              .append(text, hit.start(), hit.end())
              .append("</a>");
          at = hit.end();
        }
      }
    }
    out.append(text.substring(at));
  }

  /** Whether the text is the term and nothing else, as where a lesson explains it. */
  private static boolean isAll(Glossary.Hit hit, String text) {
    return hit.end() - hit.start() >= text.strip().length() - 1;
  }

  /** The start of a link; its first one on the page can be led to. */
  private String opening(Glossary.Term term, String address) {
    String id = PageIds.full(page, "use-" + term.anchor());
    uses.use(term, page, id);
    return "<a class=\"term\" id=\"" + id + "\" href=\"" + Xhtml.attribute(address) + "\">";
  }

  private void tag(String tag, StringBuilder out) {
    if (tag.startsWith("</")) {
      String name = open.pop();
      closed -= isLeftAlone(name) ? 1 : 0;
      strong -= name.equals("strong") ? 1 : 0;
      out.append(tag);
      return;
    }
    if (!tag.endsWith("/>")) {
      String name = name(tag);
      open.push(name);
      closed += isLeftAlone(name) ? 1 : 0;
      strong += name.equals("strong") ? 1 : 0;
    }
    out.append(tag.startsWith(TERM_LINK) ? byHand(tag) : tag);
  }

  /** A link that the author wrote counts as the first one, if it is. */
  private String byHand(String tag) {
    String address = tag.substring(TERM_LINK.length(), tag.length() - 2);
    for (Glossary.Term term : glossary.terms()) {
      if (term.address().equals(address) && linked.add(term)) {
        return opening(term, address);
      }
    }
    return tag;
  }

  private static boolean isLeftAlone(String name) {
    return LEFT_ALONE.contains(name) || name.indexOf('.') > 0;
  }

  /** The element, with a point behind it where its attributes say that it is to be left alone. */
  private static String name(String tag) {
    int end = 1;
    while (Character.isLetterOrDigit(tag.charAt(end))) {
      end++;
    }
    String name = tag.substring(1, end);
    boolean leftAlone =
        tag.startsWith(" class=\"working", end)
            || tag.startsWith(" class=\"word\"", end)
            || tag.startsWith(" class=\"value\"", end)
            || tag.contains(" hidden=\"hidden\"");
    return leftAlone ? name + "." : name;
  }
}
