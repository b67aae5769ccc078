package ringbook.course.markdown;

import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** {@code ${expression}} in running text: a value of the ledger. */
public final class ValueSpan extends Node {

  private final BasedSequence expression;
  private final boolean closed;

  ValueSpan(BasedSequence chars, BasedSequence expression, boolean closed) {
    super(chars);
    this.expression = expression;
    this.closed = closed;
  }

  /** What stands between the braces. */
  public BasedSequence expression() {
    return expression;
  }

  /** Whether the closing brace was found. */
  public boolean closed() {
    return closed;
  }

  @Override
  public BasedSequence[] getSegments() {
    return new BasedSequence[] {expression};
  }
}
