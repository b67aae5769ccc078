package ringbook.course.compose;

import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.Optional;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.course.markdown.Markdown;
import ringbook.course.typeset.Formulas;
import ringbook.ledger.Ledger;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;
import ringbook.shots.SceneChanges;
import ringbook.values.ExpressionFault;

/**
 * Writes a working whose last lines are left open, to be filled in: {@code working ring.chord
 * open=1 with aim.step = 10°}. It is counted and solved like an exercise, but nothing is handed in.
 */
final class FadedWriter {

  private static final String OPEN = " open=";
  private static final String WITH = " with ";
  private static final String GAP =
      "<span class=\"gap\" role=\"img\" aria-label=\"to be filled in\"></span>";

  private final Scope scope;
  private final FenceWriter.Fence fence;
  private final String key;
  private final int open;

  private FadedWriter(Scope scope, FenceWriter.Fence fence, String key, int open) {
    this.scope = scope;
    this.fence = fence;
    this.key = key;
    this.open = open;
  }

  /** Whether a fence asks for open lines. */
  static boolean isMeant(FenceWriter.Fence fence) {
    return fence.rest().indexOf(OPEN) >= 0;
  }

  /** Writes the fence; faults are told. */
  static void write(Scope scope, FenceWriter.Fence fence, Sink sink) {
    String rest = fence.rest().toString();
    int at = rest.indexOf(OPEN);
    String key = rest.substring(0, at).strip();
    int with = rest.indexOf(WITH);
    String count = rest.substring(at + OPEN.length(), with < 0 ? rest.length() : with).strip();
    int lines = count.length() == 1 ? count.charAt(0) - '0' : 0;
    Optional<Reckoning> reckoning =
        with < 0
            ? Optional.of(scope.values().reckoning())
            : changed(scope, fence, with + WITH.length());
    if (WorkingWriter.isUnknown(scope, fence, key)) {
      return;
    }
    if (lines < 1 || lines > 3) {
      scope.fault(
          fence.rest().getStartOffset() + at + 1,
          "'" + OPEN.strip() + count + "' leaves no line open",
          "write open=1 for the result, open=2 for the numbers too, open=3 for the formula too");
    } else if (!sink.takesBlocks()) {
      scope.fault(
          fence.wordOffset(),
          "a working with open lines cannot stand inside a box, a list or a quotation",
          "put it before or after");
    } else if (reckoning.isPresent()) {
      new FadedWriter(scope, fence, key, lines).write(reckoning.get(), sink);
    }
  }

  private static Optional<Reckoning> changed(Scope scope, FenceWriter.Fence fence, int from) {
    BasedSequence changes = fence.rest().subSequence(from, fence.rest().length());
    SceneChanges.Result result =
        SceneChanges.apply(scope.values().reckoning().scene(), changes.toString());
    result
        .faults()
        .forEach(fault -> scope.fault(changes.getStartOffset(), fault.message(), fault.help()));
    return result.scene().map(Reckoning::of);
  }

  private void write(Reckoning reckoning, Sink sink) {
    if (reckoning.of(key) instanceof Outcome.Refused refused && !scope.dropped()) {
      ExpressionFault fault = ExpressionFault.refused(key, refused);
      scope.fault(fence.rest().getStartOffset(), fault.fault(), fault.help());
      return;
    }
    Scope own =
        new Scope(scope.page(), scope.places(), scope.values().over(reckoning), scope.dropped());
    String before = new BlockWriter(own).inside(Markdown.parse(fence.body()));
    if (scope.dropped()) {
      return;
    }
    Working working = Working.of(reckoning, key);
    Quantity quantity = reckoning.ledger().get(key);
    int number = scope.page().nextExercise();
    String id = "working-" + scope.page().lesson() + "-" + number;
    sink.add(
        new ExerciseBlock(
            new ComposedExercise(
                id,
                number,
                "Finish the working: " + quantity.name(),
                before
                    + "<div class=\"working\">\n"
                    + openLines(working, reckoning)
                    + "</div>\n<p class=\"conditions\">Fill in what is open; nothing is handed in."
                    + " This is <code>"
                    + id
                    + "</code>.</p>\n",
                java.util.List.of(),
                "",
                reckoning.text(key),
                "<div class=\"working\">\n" + WorkingWriter.steps(working, reckoning) + "</div>\n",
                "")));
  }

  /** The lines of the working, the last ones open; then what is put in. */
  private String openLines(Working working, Reckoning reckoning) {
    StringBuilder out = new StringBuilder();
    if (!working.rule().isEmpty()) {
      out.append("<p class=\"rule\">").append(Xhtml.text(working.rule())).append("</p>\n");
    }
    working
        .formula()
        .ifPresent(line -> out.append(open > 2 ? gap() : WorkingWriter.line("formula", line)));
    working
        .numbers()
        .ifPresent(line -> out.append(open > 1 ? gap() : WorkingWriter.line("numbers", line)));
    return out.append(gap()).append(WorkingWriter.inputs(working, reckoning)).toString();
  }

  private String gap() {
    Ledger ledger = scope.values().reckoning().ledger();
    Quantity quantity = ledger.get(key);
    return "<p class=\"open\">"
        + Formulas.inline(quantity.symbol(), quantity.name())
            .orElseGet(() -> Xhtml.text(quantity.name()))
        + " = "
        + GAP
        + "</p>\n";
  }
}
