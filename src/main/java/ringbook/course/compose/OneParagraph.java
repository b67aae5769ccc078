package ringbook.course.compose;

import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import ringbook.course.markdown.Markdown;

/** Writes texts that must be one paragraph: captions, titles, options. */
final class OneParagraph {

  private OneParagraph() {}

  /** The inside of the paragraph; nothing, with the fault told, where there is more or less. */
  static String write(BasedSequence markdown, Scope scope) {
    Document document = Markdown.parse(markdown);
    if (document.getFirstChild() instanceof Paragraph paragraph
        && document.getLastChild() == paragraph) {
      return InlineWriter.write(paragraph, scope);
    }
    scope.fault(
        markdown.getStartOffset(),
        "this text must be one paragraph",
        "leave out headings, lists, fences and empty lines");
    return "";
  }
}
