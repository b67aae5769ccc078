package ringbook.course.compose;

import java.util.List;
import ringbook.problems.Nearest;

/** Places tables that are worked out from the ledger. */
final class StockTableWriter {

  private final Scope scope;

  StockTableWriter(Scope scope) {
    this.scope = scope;
  }

  void write(FenceWriter.Fence fence, Sink sink) {
    String name = fence.rest().toString();
    List<String> names = StockTables.names();
    if (!names.contains(name)) {
      scope.fault(
          name.isEmpty() ? fence.wordOffset() : fence.rest().getStartOffset(),
          name.isEmpty() ? "the table has no name" : "no table is called '" + name + "'",
          Nearest.help(name, names));
      return;
    }
    if (fence.body().isBlank()) {
      scope.fault(
          fence.wordOffset(), "the table has no caption", "say below what it shows in a sentence");
      return;
    }
    String caption = OneParagraph.write(fence.body(), scope);
    sink.add(StockTables.write(name, caption, scope.values().reckoning()));
  }
}
