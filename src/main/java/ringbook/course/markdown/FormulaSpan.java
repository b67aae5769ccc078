package ringbook.course.markdown;

import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;

/** {@code $`tex`$} in running text: a formula to typeset. */
public final class FormulaSpan extends Node {

  private final BasedSequence tex;

  FormulaSpan(BasedSequence chars, BasedSequence tex) {
    super(chars);
    this.tex = tex;
  }

  /** What stands between the marks. */
  public BasedSequence tex() {
    return tex;
  }

  @Override
  public BasedSequence[] getSegments() {
    return new BasedSequence[] {tex};
  }
}
