package ringbook.course.compose;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import ringbook.course.markdown.MarkSpan;

/** Writes headings, each with an id to link to. */
final class HeadingWriter {

  private static final int DEEPEST = 4;

  private final Scope scope;

  HeadingWriter(Scope scope) {
    this.scope = scope;
  }

  String write(Heading heading) {
    int level = heading.getLevel();
    if (level == 1) {
      scope.fault(
          heading,
          "a lesson has one title, and it stands in the front matter",
          "begin headings in the text with '##'");
    } else if (level > DEEPEST) {
      scope.fault(heading, "headings go down to '####'", "use a shorter row of '#'");
    }
    String element = "h" + Math.max(2, Math.min(DEEPEST, level));
    return "<"
        + element
        + " id=\""
        + Xhtml.attribute(scope.page().ids().full(name(heading)))
        + "\">"
        + InlineWriter.write(heading, scope)
        + "</"
        + element
        + ">";
  }

  private String name(Heading heading) {
    PageIds ids = scope.page().ids();
    var position = scope.places().apply(heading.getStartOffset());
    if (heading.getLastChild() instanceof MarkSpan mark && !mark.id().isEmpty()) {
      var here = scope.places().apply(mark.getStartOffset());
      ids.take(mark.id(), here)
          .ifPresent(
              before ->
                  scope.fault(
                      mark,
                      "the name '" + mark.id() + "' is taken already",
                      "the other one stands at line " + before.line() + ": rename one of them"));
      return mark.id();
    }
    return ids.free(PageIds.slug(new TextCollectingVisitor().collectAndGetText(heading)), position);
  }
}
