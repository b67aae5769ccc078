package ringbook.course.compose;

import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ext.footnotes.Footnote;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import ringbook.course.markdown.FormulaSpan;
import ringbook.course.markdown.ValueSpan;
import ringbook.course.typeset.Formulas;
import ringbook.course.typeset.Spoken;
import ringbook.values.ExpressionFault;
import ringbook.values.Value;

/** Writes values, formulas, pictures and references to footnotes. */
final class SpanWriter {

  /** Stands where a faulty part would be; nobody sees it, for a course with faults is not made. */
  private static final String NOTHING = "";

  private final Scope scope;

  SpanWriter(Scope scope) {
    this.scope = scope;
  }

  String value(ValueSpan span) {
    if (!span.closed()) {
      scope.fault(span, "'${' is not closed", "write '}' at its end, or '\\$' for a plain $");
      return NOTHING;
    }
    String expression = span.expression().toString();
    try {
      Value value = scope.values().evaluate(expression);
      if (value instanceof Value.Flag) {
        scope.fault(
            span,
            "'" + expression.strip() + "' comes to yes or no",
            "say what to write: (…)?then(\"yes\", \"no\")");
        return NOTHING;
      }
      return ValueXhtml.of(value, expression);
    } catch (ExpressionFault fault) {
      if (!fault.refused() || !scope.dropped()) {
        int offset = span.expression().getStartOffset() + fault.offsetIn(expression);
        scope.fault(offset, fault.fault(), fault.help());
        return NOTHING;
      }
      return ValueXhtml.none(expression);
    }
  }

  String formula(FormulaSpan span) {
    String tex = span.tex().toString();
    return Formulas.inline(tex, Spoken.of(tex))
        .orElseGet(
            () -> {
              scope.fault(
                  span,
                  "the formula '" + tex + "' cannot be typeset",
                  "see that every brace is closed and every command exists");
              return NOTHING;
            });
  }

  String image(Image image) {
    String alternative = new TextCollectingVisitor().collectAndGetText(image);
    String url = image.getUrl().toString();
    if (alternative.isBlank()) {
      scope.fault(
          image,
          "the picture '" + url + "' has no text alternative",
          "say between the brackets what there is to see");
    }
    String source =
        Pictures.source(scope.page().course().parts().folder(), url)
            .orElseGet(
                () -> {
                  scope.fault(
                      image.getUrl().getStartOffset(),
                      "there is no picture '" + url + "'",
                      "put a .png or .jpg file of that name beside the lesson");
                  return NOTHING;
                });
    return "<img alt=\""
        + Xhtml.attribute(alternative)
        + "\" src=\""
        + Xhtml.attribute(source)
        + "\" />";
  }

  String imageReference(ImageRef image) {
    scope.fault(image, "a picture is named right where it stands", "write ![what it shows](file)");
    return NOTHING;
  }

  String footnote(Footnote note) {
    if (!note.isDefined()) {
      scope.fault(
          note,
          "no footnote is called '" + note.getText() + "'",
          "write it on a line of its own: [^" + note.getText() + "]: …");
      return NOTHING;
    }
    int number = scope.page().footnotes().number(note.getFootnoteBlock(), scope);
    String name = "note-" + Math.abs(number);
    PageIds ids = scope.page().ids();
    String id = number > 0 ? " id=\"" + ids.full(name + "-ref") + "\"" : "";
    return "<sup class=\"note-ref\"><a"
        + id
        + " href=\"course:"
        + scope.page().lesson()
        + "#"
        + ids.full(name)
        + "\">"
        + Math.abs(number)
        + "</a></sup>";
  }
}
