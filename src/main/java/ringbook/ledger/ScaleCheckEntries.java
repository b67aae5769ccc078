package ringbook.ledger;

import java.util.List;
import ringbook.units.Unit;

/** How far the scale may be off, and what a bar tells that took no part in setting it. */
final class ScaleCheckEntries {

  private static final String ERRORS = "propagation of independent errors";
  private static final String PROOF = "test:LaterRoutesTest";

  private ScaleCheckEntries() {}

  static List<Quantity> entries() {
    return List.of(allowed(), carriedOne(), checkSpread(), checkLimit());
  }

  private static Quantity allowed() {
    return Entry.of("scale.allowed", "error of scale that the tolerance allows")
        .meaning("The tolerance on size as a share of the longest side of the object.")
        .symbol("\\varepsilon_{T}", Unit.PERCENT)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("aim.tolerance / scale.longest")
        .source("definition")
        .checkedBy(PROOF)
        .by(r -> r.si("aim.tolerance") / r.si("scale.longest"));
  }

  private static Quantity carriedOne() {
    return sigma("scale.carriedOne", "error of the object's size from one bar", "\\sigma_{A1}")
        .meaning("Standard deviation of the object's longest side if a single bar sets the scale.")
        .formula("scale.oneBar * scale.longest")
        .source(ERRORS)
        .checkedBy(PROOF)
        .by(r -> r.si("scale.oneBar") * r.si("scale.longest"));
  }

  private static Quantity checkSpread() {
    return sigma("scale.checkSpread", "error of a spare bar", "\\sigma_{c}")
        .meaning(
            "Standard deviation of a spare bar's length in the model, when the other bars set the"
                + " scale: its own error and theirs.")
        .formula("scale.oneBar * kit.barLength * sqrt(1 + 1 / kit.barCount)")
        .source(ERRORS)
        .checkedBy(PROOF)
        .by(
            r ->
                r.si("scale.oneBar")
                    * r.si("kit.barLength")
                    * Math.sqrt(1 + 1 / r.si("kit.barCount")));
  }

  private static Quantity checkLimit() {
    return sigma("scale.checkLimit", "difference at a spare bar that means a mistake", "d_{\\max}")
        .meaning(
            "A spare bar that comes out longer or shorter by more than this tells of a mistake, not"
                + " of chance.")
        .formula("3 * scale.checkSpread")
        .source("three standard deviations, common practice, no source")
        .checkedBy(PROOF)
        .by(r -> 3 * r.si("scale.checkSpread"));
  }

  private static Entry sigma(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.MILLIMETRE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2));
  }
}
