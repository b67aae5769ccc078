package ringbook.course.compose;

import com.vladsch.flexmark.ext.definition.DefinitionItem;
import com.vladsch.flexmark.ext.definition.DefinitionList;
import com.vladsch.flexmark.ext.definition.DefinitionTerm;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import java.util.ArrayList;
import java.util.List;
import ringbook.course.markdown.Markdown;

/** Reads the entries of a {@code terms} fence: a definition list, one entry a term. */
final class TermList {

  /** What opens such a fence. */
  static final String FENCE = "terms";

  /**
   * An entry of the glossary.
   *
   * @param name the term
   * @param also other words for it
   * @param offset where it stands in the file
   * @param meaning what it means, to be written
   */
  record Entry(String name, List<String> also, int offset, Node meaning) {

    Entry {
      also = List.copyOf(also);
    }

    /** The name and the other words. */
    List<String> forms() {
      List<String> forms = new ArrayList<>(List.of(name));
      forms.addAll(also);
      return forms;
    }
  }

  private final Scope scope;
  private final List<Entry> entries = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private int offset;

  private TermList(Scope scope) {
    this.scope = scope;
  }

  /** The entries of the fence in its order; faults are told. */
  static List<Entry> read(FenceWriter.Fence fence, Scope scope) {
    TermList list = new TermList(scope);
    for (Node block : Markdown.parse(fence.body()).getChildren()) {
      if (block instanceof DefinitionList) {
        block.getChildren().forEach(list::part);
        list.close();
      } else {
        scope.fault(
            block,
            "between the terms stands something else",
            "write each term on a line of its own and ': ' with its meaning below");
      }
    }
    return list.entries;
  }

  private void part(Node part) {
    if (part instanceof DefinitionTerm) {
      if (names.isEmpty()) {
        offset = part.getStartOffset();
      }
      names.add(new TextCollectingVisitor().collectAndGetText(part).strip());
    } else if (part instanceof DefinitionItem && names.isEmpty()) {
      scope.fault(part, "the term has two meanings", "keep one of them");
    } else if (part instanceof DefinitionItem) {
      entries.add(new Entry(names.get(0), names.subList(1, names.size()), offset, part));
      names.clear();
    }
  }

  private void close() {
    if (!names.isEmpty()) {
      scope.fault(offset, "the term has no meaning", "write ': ' and what it means below");
      names.clear();
    }
  }
}
