package ringbook.course.markdown;

import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** <code>{#name .class}</code> in running text: a name or classes for what it follows. */
public final class MarkSpan extends Node {

  MarkSpan(BasedSequence chars) {
    super(chars);
  }

  /** The name, or nothing. */
  public String id() {
    return words("#");
  }

  /** The classes, joined by blanks; may be empty. */
  public String classes() {
    return words(".");
  }

  @Override
  public BasedSequence[] getSegments() {
    return EMPTY_SEGMENTS;
  }

  private String words(String mark) {
    StringBuilder found = new StringBuilder();
    String inside = getChars().toString();
    for (String word : inside.substring(1, inside.length() - 1).trim().split(" +", -1)) {
      if (word.startsWith(mark)) {
        found.append(found.isEmpty() ? "" : " ").append(word.substring(1));
      }
    }
    return found.toString();
  }
}
