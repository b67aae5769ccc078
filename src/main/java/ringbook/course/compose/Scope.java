package ringbook.course.compose;

import com.vladsch.flexmark.util.ast.Node;
import java.util.function.IntFunction;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.values.Expressions;

/**
 * What one Markdown text is written with.
 *
 * @param page the lesson it becomes part of
 * @param places finds the place of a node by its offset
 * @param values its values
 * @param dropped whether the text is only checked and then left out: values the scene refuses are
 *     no fault there
 */
record Scope(Page page, IntFunction<Position> places, Expressions values, boolean dropped) {

  /** The same for a text that is only checked. */
  Scope dropping() {
    return new Scope(page, places, values, true);
  }

  /** Tells a fault at the beginning of {@code node}. */
  void fault(Node node, String message, String help) {
    fault(node.getStartOffset(), message, help);
  }

  /** Tells a fault at {@code offset}. */
  void fault(int offset, String message, String help) {
    problems().add(places.apply(offset), message, help);
  }

  /** Where faults are told. */
  Problems problems() {
    return page.course().problems();
  }
}
