package ringbook.ledger;

import java.util.List;
import ringbook.optics.Flicker;
import ringbook.units.Num;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** Lamps on the mains pulse; which times get the same light in every photograph. */
final class FlickerEntries {

  private static final double STEADY_STOPS = 0.1;
  private static final String PULSES = "mean of a sine-shaped pulse over the exposure";

  private FlickerEntries() {}

  static List<Quantity> entries() {
    return List.of(
        pulses(),
        shortest(),
        usualPulses(),
        usualSafe(),
        during(),
        left(),
        swing(),
        swingStops(),
        steady(),
        safeTime());
  }

  private static Quantity pulses() {
    return Entry.of("flicker.pulses", "pulses of the lamps")
        .meaning("How often lamps on the mains grow bright: twice a period.")
        .symbol("f_{\\mathrm{l}}", Unit.HERTZ)
        .range(Range.between(100, 120))
        .formula("2 * place.mains")
        .source("alternating current; not for lamps fed through electronics")
        .checkedBy("FLK-01", "FLK-02")
        .by(r -> 2 * r.si("place.mains"));
  }

  private static Quantity shortest() {
    return Entry.of("flicker.shortest", "shortest flicker-safe time")
        .meaning("One whole pulse: shorter times catch it at a different moment every time.")
        .symbol("t_{\\mathrm{safe}}", Unit.SECOND)
        .range(Range.between(1 / 120.0, 1 / 100.0))
        .rounded(Rounding.fraction(2))
        .formula("1 / flicker.pulses")
        .source(PULSES)
        .checkedBy("FLK-03", "FLK-04", "FLK-05")
        .by(r -> 1 / r.si("flicker.pulses"));
  }

  private static Quantity usualPulses() {
    return Entry.of("flicker.usualPulses", "pulses during the usual time")
        .meaning("How many pulses of the lamps the shutter time usually set lasts.")
        .symbol("x_{\\mathrm{u}}", Unit.ONE)
        .range(Range.above(0))
        .formula("flicker.pulses * aim.usualTime")
        .source("multiplication")
        .checkedBy("FLK-01", "FLK-02")
        .by(r -> r.si("flicker.pulses") * r.si("aim.usualTime"));
  }

  private static Quantity usualSafe() {
    return Entry.of("flicker.usualSafe", "usual time is flicker-safe")
        .meaning(
            "Whether the usual time lasts whole pulses, so that every photograph is as bright.")
        .symbol("\\mathrm{safe}", Unit.ANSWER)
        .formula(
            "both(flicker.usualPulses >= 1, flicker.usualPulses <= floor(flicker.usualPulses))")
        .source(PULSES)
        .checkedBy("FLK-03", "FLK-04", "FLK-05")
        .by(r -> Quantity.answer(Flicker.isSafe(r.si("flicker.usualPulses"))));
  }

  private static Quantity during() {
    return Entry.of("flicker.during", "pulses during the exposure")
        .meaning("How many pulses of the lamps the time to set lasts.")
        .symbol("x", Unit.ONE)
        .range(Range.above(0))
        .formula("flicker.pulses * motion.time")
        .source("multiplication")
        .checkedBy("FLK-01", "FLK-02")
        .by(r -> r.si("flicker.pulses") * r.si("motion.time"));
  }

  private static Quantity left() {
    return Entry.of("flicker.left", "share of the flicker left")
        .meaning("How much of the flicker a single exposure does not average away.")
        .symbol("s_{x}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.significant(2))
        .formula("abs(sin(pi * (flicker.during - floor(flicker.during)))) / (pi * flicker.during)")
        .source(PULSES)
        .checkedBy("FLK-06", "FLK-07")
        .by(r -> Flicker.left(r.si("flicker.during")));
  }

  private static Quantity swing() {
    return Entry.of("flicker.swing", "brightest over darkest photograph")
        .meaning("How many times brighter the luckiest photograph is than the unluckiest one.")
        .symbol("r_{\\mathrm{f}}", Unit.ONE)
        .range(Range.from(1).orEndless())
        .formula(
            "(1 + place.flickerShare * flicker.left) / (1 - place.flickerShare * flicker.left)")
        .source(PULSES)
        .checkedBy("FLK-06", "FLK-07")
        .by(r -> Flicker.swing(r.si("place.flickerShare"), r.si("flicker.left")));
  }

  private static Quantity swingStops() {
    return Entry.of("flicker.swingStops", "flicker left in stops")
        .meaning("How many stops apart the brightest and the darkest photograph are.")
        .symbol("q_{\\mathrm{f}}", Unit.STOP)
        .range(Range.from(0).orEndless())
        .rounded(Rounding.significant(2))
        .formula("log2(flicker.swing)")
        .source("definition of the stop")
        .checkedBy("FLK-06", "FLK-07")
        .by(r -> Num.log2(r.si("flicker.swing")));
  }

  private static Quantity steady() {
    return Entry.of("flicker.steady", "flicker does not show")
        .meaning("Whether all photographs are within a tenth of a stop of each other.")
        .symbol("\\mathrm{steady}", Unit.ANSWER)
        .formula("flicker.swingStops <= 0.1")
        .source("comparison; a tenth of a stop is common practice, no source")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Quantity.atMost(r.si("flicker.swingStops"), STEADY_STOPS));
  }

  private static Quantity safeTime() {
    return Entry.of("flicker.time", "flicker-safe time to set")
        .meaning("The longest time of whole pulses that is not longer than the time to set.")
        .symbol("t_{\\mathrm{f}}", Unit.SECOND)
        .range(Range.above(0))
        .rounded(Rounding.fraction(2))
        .formula("floor(flicker.during) / flicker.pulses")
        .source(PULSES)
        .checkedBy("FLK-02", "FLK-03", "FLK-04")
        .by(
            r -> {
              double safe = Whole.down(r.si("flicker.during")) / r.si("flicker.pulses");
              if (safe == 0) {
                throw new RefusedException(
                    "The time to set is shorter than one pulse of the lamps.",
                    "Photograph in daylight, or set "
                        + r.text("flicker.shortest")
                        + " and a tripod.");
              }
              return safe;
            });
  }
}
