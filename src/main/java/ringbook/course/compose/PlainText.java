package ringbook.course.compose;

import com.vladsch.flexmark.util.sequence.Escaping;

/** The words of a fragment without its markup. */
final class PlainText {

  private PlainText() {}

  /** The text of {@code xhtml}; a drawing gives its label. */
  static String of(String xhtml) {
    StringBuilder out = new StringBuilder();
    int at = 0;
    while (at < xhtml.length()) {
      int tag = xhtml.indexOf('<', at);
      if (tag < 0) {
        tag = xhtml.length();
      }
      out.append(xhtml, at, tag);
      at = xhtml.indexOf('>', tag) + 1;
      if (at == 0) {
        break;
      }
      out.append(label(xhtml.substring(tag, at)));
    }
    return Escaping.unescapeHtml(out.toString()).strip();
  }

  private static String label(String tag) {
    String mark = "aria-label=\"";
    int start = tag.indexOf(mark);
    return tag.startsWith("<svg") && start >= 0
        ? tag.substring(start + mark.length(), tag.indexOf('"', start + mark.length()))
        : "";
  }
}
