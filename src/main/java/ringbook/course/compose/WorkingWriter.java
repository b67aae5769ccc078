package ringbook.course.compose;

import com.vladsch.flexmark.util.ast.Document;
import ringbook.course.markdown.Markdown;
import ringbook.course.typeset.Formulas;
import ringbook.ledger.Ledger;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;
import ringbook.problems.Nearest;
import ringbook.values.ExpressionFault;

/** Writes how a quantity is worked out: formula, numbers put in, result. */
final class WorkingWriter {

  private final Scope scope;

  WorkingWriter(Scope scope) {
    this.scope = scope;
  }

  String write(FenceWriter.Fence fence) {
    String key = fence.rest().toString();
    Reckoning reckoning = scope.values().reckoning();
    if (isUnknown(scope, fence, key)) {
      return "";
    }
    if (reckoning.of(key) instanceof Outcome.Refused refused && !scope.dropped()) {
      ExpressionFault fault = ExpressionFault.refused(key, refused);
      scope.fault(fence.rest().getStartOffset(), fault.fault(), fault.help());
    }
    Document before = Markdown.parse(fence.body());
    return "<div class=\"working\" data-key=\""
        + key
        + "\">\n"
        + new BlockWriter(scope).inside(before)
        + (scope.dropped() ? "" : steps(Working.of(reckoning, key), reckoning))
        + "</div>";
  }

  /** Whether no quantity has that key, which is told. */
  static boolean isUnknown(Scope scope, FenceWriter.Fence fence, String key) {
    Ledger ledger = scope.values().reckoning().ledger();
    if (ledger.find(key).isPresent()) {
      return false;
    }
    scope.fault(
        key.isEmpty() ? fence.wordOffset() : fence.rest().getStartOffset(),
        key.isEmpty() ? "the working does not say of what" : "no quantity is called '" + key + "'",
        key.isEmpty()
            ? "write its key: working distance.standoff"
            : Nearest.to(key, ledger.keys())
                .map(near -> "did you mean '" + near + "'?")
                .orElse("the command 'quantities' lists them all"));
    return true;
  }

  /** The steps alone. */
  static String steps(Working working, Reckoning reckoning) {
    StringBuilder out = new StringBuilder();
    if (!working.rule().isEmpty()) {
      out.append("<p class=\"rule\">").append(Xhtml.text(working.rule())).append("</p>\n");
    }
    working.formula().ifPresent(line -> out.append(line("formula", line)));
    working.numbers().ifPresent(line -> out.append(line("numbers", line)));
    out.append(line("result", working.result()));
    return out.append(inputs(working, reckoning)).toString();
  }

  /** What is put in. */
  static String inputs(Working working, Reckoning reckoning) {
    StringBuilder out = new StringBuilder();
    if (!working.inputs().isEmpty()) {
      out.append("<ul class=\"inputs\">\n");
      working.inputs().forEach(input -> out.append(input(input, reckoning)));
      out.append("</ul>\n");
    }
    return out.toString();
  }

  /** One line. */
  static String line(String kind, Working.Line line) {
    return "<p class=\"" + kind + "\">" + typeset(line) + "</p>\n";
  }

  private static String typeset(Working.Line line) {
    return Formulas.display(line.tex(), line.speech()).orElseGet(() -> Xhtml.text(line.text()));
  }

  /** A symbol as it is read out, with its index but not the sign for it: "u f" for u_f. */
  private static String spoken(String symbol) {
    return symbol.replace('_', ' ');
  }

  private static String input(Working.Input input, Reckoning reckoning) {
    String symbol = reckoning.ledger().get(input.key()).symbol();
    return "<li>"
        + Formulas.inline(symbol, spoken(input.symbol()))
            .orElseGet(() -> Xhtml.text(input.symbol()))
        + " <a href=\"course:quantities#"
        + input.key()
        + "\">"
        + Xhtml.text(input.name())
        + "</a>: "
        + Xhtml.text(input.text())
        + "</li>\n";
  }
}
