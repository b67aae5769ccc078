package ringbook.course.compose;

import com.vladsch.flexmark.ast.HtmlInline;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Tags that the author wrote inside a line: they must close in the same line of text. */
final class RawTags {

  private static final List<String> VOID = List.of("br", "wbr");

  private final Scope scope;
  private final Deque<HtmlInline> open = new ArrayDeque<>();

  RawTags(Scope scope) {
    this.scope = scope;
  }

  String write(HtmlInline tag) {
    String text = tag.getChars().toString();
    String name = name(text);
    if (VOID.contains(name)) {
      return "<" + name + " />";
    }
    if (text.startsWith("</")) {
      close(tag, name);
      return "</" + name + ">";
    }
    Optional<String> refusal =
        RawHtml.refusal(text.endsWith("/>") ? text : text + "</" + name + ">");
    refusal.ifPresent(
        reason -> scope.fault(tag, "'" + text + "' cannot stand here: " + reason, "leave it out"));
    if (!text.endsWith("/>")) {
      open.push(tag);
    }
    return text;
  }

  /** Tells the tags that were left open. */
  void finish() {
    for (HtmlInline tag : open) {
      String text = tag.getChars().toString();
      scope.fault(tag, "'" + text + "' is not closed", "write '</" + name(text) + ">' behind it");
    }
  }

  private void close(HtmlInline tag, String name) {
    if (!open.isEmpty() && name(open.peek().getChars().toString()).equals(name)) {
      open.pop();
      return;
    }
    boolean opened = open.removeIf(other -> name(other.getChars().toString()).equals(name));
    scope.fault(
        tag,
        "'" + tag.getChars() + "' closes " + (opened ? "too early" : "nothing"),
        opened ? "close '" + open.peek().getChars() + "' first" : "take it out");
  }

  private static String name(String tag) {
    int start = tag.startsWith("</") ? 2 : 1;
    int end = start;
    while (end < tag.length() && Character.isLetterOrDigit(tag.charAt(end))) {
      end++;
    }
    return tag.substring(start, end);
  }
}
