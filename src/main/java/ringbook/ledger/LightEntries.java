package ringbook.ledger;

import java.util.List;
import ringbook.optics.CloseUp;
import ringbook.optics.Exposure;
import ringbook.optics.Lamp;
import ringbook.units.Span;
import ringbook.units.Unit;

/** How long the exposure must be in the light there is. */
final class LightEntries {

  private static final String METER = "incident-light meter with C = 250, as in ISO 2720";
  private static final String APEX = "exposure in steps of two; Exif annex on APEX";

  private LightEntries() {}

  static List<Quantity> entries() {
    return List.of(
        ev100(),
        ev("light.evBase", "lowest", "kit.baseIso", "\\mathrm{EV}_{\\min}"),
        ev("light.evHighest", "highest", "kit.highestIso", "\\mathrm{EV}_{\\max}"),
        closeStops(),
        closeFactor(),
        time("light.timeBase", "lowest", "light.evBase", "t_{\\min}"),
        time("light.timeHighest", "highest", "light.evHighest", "t_{\\max}"),
        apertureValue(),
        speedValue(),
        timeValue(),
        brightnessValue(),
        luminance(),
        timeClosed(),
        luxByHand(),
        doseHours());
  }

  private static Quantity ev100() {
    return Entry.of("light.ev100", "exposure value of the light")
        .meaning(
            "The light at the object in steps of two, for ISO 100: one more is twice as bright.")
        .symbol("\\mathrm{EV}_{100}", Unit.ONE)
        .range(Range.any())
        .formula("log2(place.illuminance / 2.5lx)")
        .source(METER)
        .checkedBy("EXP-10", "EXP-11", "EXP-12", "LGT-10")
        .by(r -> Exposure.valueFor(r.si("place.illuminance")));
  }

  private static Quantity ev(String key, String which, String iso, String symbol) {
    return Entry.of(key, "exposure value at the " + which + " ISO")
        .meaning("The exposure value that f-number and time must make up at the " + which + " ISO.")
        .symbol(symbol, Unit.ONE)
        .range(Range.any())
        .formula("light.ev100 + log2(" + iso + " / 100)")
        .source(APEX)
        .checkedBy("EXP-15")
        .by(r -> r.si("light.ev100") - Exposure.valueAt100(0, r.si(iso)));
  }

  private static Quantity closeStops() {
    return Entry.of("light.closeStops", "stops lost by focusing close")
        .meaning("How much less light reaches the sensor because the lens is focused close.")
        .symbol("q_{\\mathrm{close}}", Unit.STOP)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("2 * log2(1 + sharp.magnification)")
        .source("similar triangles; lens that moves as a whole")
        .checkedBy("CLO-05", "CLO-07", "CLO-11")
        .by(r -> CloseUp.stopsLost(r.si("sharp.magnification")));
  }

  private static Quantity closeFactor() {
    return Entry.of("light.closeFactor", "exposure factor of focusing close")
        .meaning("How many times longer the exposure becomes because the lens is focused close.")
        .symbol("k_{\\mathrm{close}}", Unit.ONE)
        .range(Range.above(1))
        .formula("(1 + sharp.magnification) ^ 2")
        .source("similar triangles; lens that moves as a whole")
        .checkedBy("CLO-08", "CLO-09")
        .by(r -> CloseUp.exposureFactor(r.si("sharp.magnification")));
  }

  private static Quantity time(String key, String which, String ev, String symbol) {
    return Entry.of(key, "exposure time at the " + which + " ISO")
        .meaning("How long the shutter must be open at the " + which + " ISO, in this light.")
        .symbol(symbol, Unit.SECOND)
        .range(Range.above(0))
        .rounded(Rounding.fraction(2))
        .formula("sharp.effective ^ 2 / 2 ^ " + ev)
        .source(APEX + "; gives seconds")
        .checkedBy("EXP-07", "EXP-08", "EXP-21")
        .by(r -> Exposure.time(r.fNumber("sharp.effective"), r.si(ev)).seconds());
  }

  private static Quantity apertureValue() {
    return Entry.of("light.apertureValue", "aperture value")
        .meaning("The f-number to set in steps of two, as it is stored in the photograph.")
        .symbol("\\mathrm{Av}", Unit.ONE)
        .range(Range.any())
        .formula("2 * log2(sharp.fNumber)")
        .source(APEX)
        .checkedBy("EXP-01", "EXP-02", "EXP-03", "EXP-06")
        .by(r -> Exposure.apertureValue(r.fNumber("sharp.fNumber")));
  }

  private static Quantity speedValue() {
    return Entry.of("light.speedValue", "speed value")
        .meaning("The ISO that goes with the time to set, in steps of two: 5 is ISO 100.")
        .symbol("\\mathrm{Sv}", Unit.ONE)
        .range(Range.any())
        .formula("log2(motion.iso / 3.125)")
        .source(APEX)
        .checkedBy("EXP-17")
        .by(r -> Exposure.speedValue(r.si("motion.iso")));
  }

  private static Quantity timeValue() {
    return Entry.of("light.timeValue", "time value")
        .meaning("The time to set in steps of two: one more is half the time.")
        .symbol("\\mathrm{Tv}", Unit.ONE)
        .range(Range.any())
        .formula("-log2(motion.time)")
        .source(APEX)
        .checkedBy("EXP-05")
        .by(r -> Exposure.timeValue(new Span(r.si("motion.time"))));
  }

  private static Quantity brightnessValue() {
    return Entry.of("light.brightnessValue", "brightness value")
        .meaning("The light in steps of two on the scale that is stored in the photograph.")
        .symbol("\\mathrm{Bv}", Unit.ONE)
        .range(Range.any())
        .formula("light.ev100 - log2(100 / 3.125)")
        .source(APEX + "; exposure value is brightness value plus speed value")
        .checkedBy("EXP-17", "EXP-18")
        .by(r -> r.si("light.ev100") - Exposure.speedValue(100));
  }

  private static Quantity luminance() {
    return Entry.of("light.luminance", "luminance of a middle grey surface")
        .meaning("What a meter that looks at a middle grey surface reads in this light.")
        .symbol("L_{\\mathrm{v}}", Unit.CANDELA_PER_SQUARE_METRE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("0.125 * 2 ^ light.ev100")
        .source("reflected-light meter with K = 12.5, as in ISO 2720; gives cd/m²")
        .checkedBy("EXP-09")
        .by(r -> Exposure.luminance(r.si("light.ev100"), Exposure.K));
  }

  private static Quantity timeClosed() {
    return Entry.of("light.timeClosed", "exposure time at the narrow end of the window")
        .meaning("How long it takes at the lowest ISO with the largest f-number that may be set.")
        .symbol("t_{N_{2}}", Unit.SECOND)
        .range(Range.above(0))
        .rounded(Rounding.fraction(2))
        .formula("light.timeBase * (sharp.windowTo / sharp.fNumber) ^ 2")
        .source(APEX + "; the same light through a smaller hole")
        .checkedBy("EXP-22")
        .by(
            r ->
                Exposure.sameExposure(
                        new Span(r.si("light.timeBase")),
                        r.fNumber("sharp.fNumber"),
                        r.fNumber("sharp.windowTo"))
                    .seconds());
  }

  private static Quantity luxByHand() {
    return Entry.of("light.luxByHand", "light needed for working by hand")
        .meaning("The illuminance at which the highest ISO allows the longest hand-held time.")
        .symbol("E_{\\mathrm{hand}}", Unit.LUX)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("place.illuminance * light.timeHighest / motion.byTremor")
        .source("time goes with one over the illuminance; " + METER)
        .checkedBy("EXP-10", "EXP-22")
        .by(r -> r.si("place.illuminance") * r.si("light.timeHighest") / r.si("motion.byTremor"));
  }

  private static Quantity doseHours() {
    return Entry.of("light.doseHours", "hours until a year's light dose is used up")
        .meaning(
            "How long the most sensitive things (dyes, paper, feathers) may stay in this light in"
                + " one year; ask the keeper of the object first.")
        .symbol("t_{\\mathrm{dose}}", Unit.HOUR)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("15000lx * 3600s / place.illuminance")
        .source("15 000 lux hours a year, CIE 157:2004 (from memory)")
        .checkedBy("LGT-11")
        .by(r -> Unit.HOUR.toSi(Lamp.doseHours(15_000, r.si("place.illuminance"))));
  }
}
