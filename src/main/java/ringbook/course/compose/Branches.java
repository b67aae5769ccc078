package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.Branch;
import ringbook.course.ComposedLesson.Markup;

/**
 * What lessons say for some scenes only. Inside markup a branch is a {@code div.branch} with its
 * condition in {@code data-when} or {@code data-unless}, {@code hidden} where it does not stand in
 * the course's own scene.
 */
public final class Branches {

  static final String CLOSE = "</div>";

  private static final String OPEN = "<div class=\"branch\"";
  private static final Pattern DIV = Pattern.compile("<div\\b[^>]*>|</div>");

  private Branches() {}

  /** The start tag of a branch. */
  public static String open(Branch branch) {
    return open(branch.condition(), branch.wanted(), branch.shown());
  }

  static String open(String condition, boolean wanted, boolean shown) {
    return OPEN
        + (wanted ? " data-when=\"" : " data-unless=\"")
        + Xhtml.attribute(condition)
        + (shown ? "\">" : "\" hidden=\"hidden\">");
  }

  /** What of the blocks stands in the course's own scene, without a trace of branches. */
  static List<Block> shown(List<Block> blocks) {
    Sink sink = Sink.ofLesson();
    addShown(blocks, sink);
    return new ArrayList<>(sink.blocks());
  }

  private static void addShown(List<Block> blocks, Sink sink) {
    for (Block block : blocks) {
      if (block instanceof Branch branch) {
        addShown(branch.shown() ? branch.blocks() : List.of(), sink);
      } else if (block instanceof Markup markup) {
        sink.addText(shown(markup.xhtml()));
      } else {
        sink.add(block);
      }
    }
  }

  /** The same inside markup. */
  static String shown(String xhtml) {
    int start = xhtml.indexOf(OPEN);
    if (start < 0) {
      return xhtml;
    }
    Matcher div = DIV.matcher(xhtml);
    div.find(start);
    String tag = div.group();
    int inside = div.end();
    int depth = 1;
    while (depth > 0 && div.find()) {
      depth += div.group().equals(CLOSE) ? -1 : 1;
    }
    // The line ends around the content came with the branch.
    String kept = tag.contains(" hidden=") ? "" : shown(xhtml.substring(inside + 1, div.start()));
    int after = div.end();
    if ((kept.isEmpty() || kept.endsWith("\n")) && xhtml.startsWith("\n", after)) {
      after++;
    }
    return xhtml.substring(0, start) + kept + shown(xhtml.substring(after));
  }
}
