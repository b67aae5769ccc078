package ringbook.course.compose;

import java.util.ArrayList;
import java.util.List;
import ringbook.course.ComposedQuantity;
import ringbook.course.typeset.Formulas;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;

/** All quantities of the course's scene, as the appendix lists them. */
final class Appendix {

  private Appendix() {}

  static List<ComposedQuantity> of(Reckoning reckoning) {
    List<ComposedQuantity> rows = new ArrayList<>();
    for (Quantity quantity : reckoning.ledger().quantities()) {
      rows.add(row(quantity, reckoning));
    }
    return rows;
  }

  private static ComposedQuantity row(Quantity quantity, Reckoning reckoning) {
    return new ComposedQuantity(
        quantity.key(),
        quantity.name(),
        quantity.meaning(),
        Formulas.inline(quantity.symbol(), quantity.name())
            .orElseGet(() -> Xhtml.text(quantity.symbol())),
        definition(quantity, reckoning),
        value(quantity, reckoning),
        quantity.rangeText(),
        quantity.source(),
        String.join(", ", quantity.checks()));
  }

  /** What the scene leaves out is a gap, not a refusal. */
  private static String value(Quantity quantity, Reckoning reckoning) {
    boolean leftOut =
        quantity.definition() instanceof Quantity.Given
            && reckoning.of(quantity.key()) instanceof Outcome.Refused;
    return leftOut ? "not stated" : reckoning.text(quantity.key());
  }

  private static String definition(Quantity quantity, Reckoning reckoning) {
    if (quantity.definition() instanceof Quantity.Given) {
      return ComposedQuantity.STATED;
    }
    Working working = Working.of(reckoning, quantity.key());
    return working
        .formula()
        .map(
            line ->
                Formulas.display(line.tex(), line.speech())
                    .orElseGet(() -> Xhtml.text(line.text())))
        .orElseGet(() -> Xhtml.text(working.rule()));
  }
}
