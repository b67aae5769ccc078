package ringbook.ledger;

import java.util.List;
import ringbook.assess.ScaleError;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** How true the size of the model is, set by scale bars in the photographs. */
final class ScaleEntries {

  private static final String ERRORS = "propagation of independent errors";

  private ScaleEntries() {}

  static List<Quantity> entries() {
    return List.of(
        longest(),
        measured(),
        oneBar(),
        error(),
        times(),
        carried(),
        enough(),
        barNeeded(),
        barsNeeded(),
        alarm());
  }

  private static Quantity longest() {
    return Entry.of("scale.longest", "longest side of the object")
        .meaning("The largest length on the object that must come out true.")
        .symbol("A", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("max(subject.height, subject.width)")
        .source("definition")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Math.max(r.si("subject.height"), r.si("subject.width")));
  }

  private static Quantity measured() {
    return sigma("scale.measured", "bar's length in the model", "\\sigma_{l}")
        .range(Range.above(0))
        .meaning("Standard deviation of the bar's length in the model, between its two targets.")
        .formula("sqrt(2) * precision.mean")
        .source(ERRORS)
        .checkedBy("SCB-03")
        .by(r -> ScaleError.betweenTargets(r.length("precision.mean")).metres());
  }

  private static Quantity oneBar() {
    return share("scale.oneBar", "error of scale from one bar", "\\varepsilon_{1}")
        .range(Range.above(0))
        .meaning("Standard deviation of the scale, as a share, if one bar sets it.")
        .formula("sqrt(kit.barError ^ 2 + scale.measured ^ 2) / kit.barLength")
        .source(ERRORS)
        .checkedBy("SCB-01")
        .by(
            r ->
                ScaleError.ofBar(
                    r.length("kit.barLength"),
                    r.length("kit.barError"),
                    r.length("scale.measured")));
  }

  private static Quantity error() {
    return share("scale.error", "error of scale", "\\varepsilon")
        .range(Range.above(0))
        .meaning("Standard deviation of the scale, as a share, from all bars together.")
        .formula("scale.oneBar / sqrt(kit.barCount)")
        .source("weighted mean of equal, independent bars")
        .checkedBy("SCB-05")
        .by(r -> r.si("scale.oneBar") / Math.sqrt(r.si("kit.barCount")));
  }

  private static Quantity times() {
    return Entry.of("scale.times", "object over bar")
        .meaning("How many times the bar goes into the object: its error grows that many times.")
        .symbol("k_{L}", Unit.ONE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("scale.longest / kit.barLength")
        .source("definition")
        .checkedBy("SCB-04")
        .by(r -> r.si("scale.longest") / r.si("kit.barLength"));
  }

  private static Quantity carried() {
    return sigma("scale.carried", "error of the object's size", "\\sigma_{A}")
        .range(Range.above(0))
        .meaning("Standard deviation of the object's longest side that the error of scale makes.")
        .formula("scale.error * scale.longest")
        .source(ERRORS)
        .checkedBy("SCB-02", "SCB-04")
        .by(r -> r.si("scale.error") * r.si("scale.longest"));
  }

  private static Quantity enough() {
    return Entry.of("scale.enough", "size true enough?")
        .meaning("Whether the error of the object's size stays within the tolerance.")
        .symbol("\\mathrm{true}", Unit.ANSWER)
        .formula("scale.carried <= aim.tolerance")
        .source("comparison")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> Quantity.atMost(r.si("scale.carried"), r.si("aim.tolerance")));
  }

  private static Quantity barNeeded() {
    return Entry.of("scale.barNeeded", "bar length needed")
        .meaning("Length each bar needs so that the bars together keep to the tolerance.")
        .symbol("L_{\\min}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula(
            "sqrt(kit.barError ^ 2 + scale.measured ^ 2) * scale.longest / (aim.tolerance *"
                + " sqrt(kit.barCount))")
        .source(ERRORS)
        .checkedBy("test:JobPropertiesTest")
        .by(
            r -> {
              double bar = r.si("kit.barError");
              double model = r.si("scale.measured");
              double both = Math.sqrt(bar * bar + model * model);
              double bars = Math.sqrt(r.si("kit.barCount"));
              return both * r.si("scale.longest") / (r.si("aim.tolerance") * bars);
            });
  }

  private static Quantity barsNeeded() {
    return Entry.of("scale.barsNeeded", "number of bars needed")
        .meaning("How many bars of the stated length keep to the tolerance together.")
        .symbol("m_{\\min}", Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0))
        .formula("max(1, ceil((scale.oneBar * scale.longest / aim.tolerance) ^ 2))")
        .source(ERRORS)
        .checkedBy("test:JobPropertiesTest")
        .by(
            r -> {
              double ratio = r.si("scale.oneBar") * r.si("scale.longest") / r.si("aim.tolerance");
              return Math.max(1, Whole.up(ratio * ratio));
            });
  }

  private static Quantity alarm() {
    return share(
            "scale.alarm", "difference between bars that means a mistake", "\\varepsilon_{\\max}")
        .range(Range.above(0))
        .meaning("Two bars whose scales differ by more than this hide a mistake, not chance.")
        .formula("3 * sqrt(2) * scale.oneBar")
        .source("three standard deviations of a difference, common practice, no source")
        .checkedBy("test:HoleRoutesTest")
        .by(r -> 3 * Math.sqrt(2) * r.si("scale.oneBar"));
  }

  private static Entry sigma(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.MILLIMETRE).rounded(Rounding.significant(2));
  }

  private static Entry share(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PERCENT).rounded(Rounding.significant(2));
  }
}
