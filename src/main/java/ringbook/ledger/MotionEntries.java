package ringbook.ledger;

import java.util.List;
import ringbook.optics.Exposure;
import ringbook.optics.Movement;
import ringbook.optics.ShutterMarks;
import ringbook.units.Num;
import ringbook.units.Span;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** How long the shutter may be open before something moves too far, and the time to set. */
final class MotionEntries {

  private static final String STEADY = "movement at constant speed";

  private MotionEntries() {}

  static List<Quantity> entries() {
    return List.of(
        rule(),
        byTremor(),
        byWalking(),
        walkBlur(),
        rimSpeed(),
        byTurntable(),
        tripod(),
        stopsShort(),
        handBlur(),
        time(),
        dialTime(),
        usualExact(),
        iso(),
        dialIso());
  }

  private static Quantity rule() {
    return time("motion.rule", "hand-held time of the old rule", "t_{35}")
        .range(Range.above(0))
        .meaning("One second over the 35 mm equivalent in millimetres: made for prints.")
        .formula("1mm * 1s / kit.equivalent")
        .source("rule of thumb; common practice, no source")
        .checkedBy("MOT-06")
        .by(r -> 0.001 / r.si("kit.equivalent"));
  }

  private static Quantity byTremor() {
    return time("motion.byTremor", "longest hand-held time", "t_{\\mathrm{hand}}")
        .range(Range.above(0))
        .meaning("How long hands hold the camera still enough for the movement accepted.")
        .formula(
            "2 ^ kit.stabiliser * aim.motionBlur * kit.pixelPitch"
                + " / (sharp.imageDistance * aim.tremor)")
        .source(STEADY + "; the camera turns")
        .checkedBy("MOT-05", "MOT-06")
        .by(
            r ->
                Num.pow(2, r.si("kit.stabiliser"))
                    * Movement.turningTime(
                            r.length("kit.pixelPitch").times(r.si("aim.motionBlur")),
                            r.length("sharp.imageDistance"),
                            r.si("aim.tremor"))
                        .seconds());
  }

  private static Quantity byWalking() {
    return time("motion.byWalking", "longest time while walking", "t_{\\mathrm{walk}}")
        .range(Range.above(0))
        .meaning("How long the shutter may be open if one photographs without stopping.")
        .formula("aim.motionBlur * distance.samplingNear / aim.walkingSpeed")
        .source(STEADY)
        .checkedBy("MOT-02", "MOT-03", "MOT-04")
        .by(
            r ->
                Movement.passingTime(
                        r.si("aim.motionBlur"),
                        r.length("distance.samplingNear"),
                        r.si("aim.walkingSpeed"))
                    .seconds());
  }

  private static Quantity walkBlur() {
    return Entry.of("motion.walkBlur", "movement while walking with the time to set")
        .meaning("How many pixels the near face smears if one walks on with the time to set.")
        .symbol("b_{\\mathrm{walk}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("aim.walkingSpeed * motion.time / distance.samplingNear")
        .source(STEADY)
        .checkedBy("MOT-03")
        .by(
            r ->
                Movement.passingPixels(
                    r.si("aim.walkingSpeed"),
                    new Span(r.si("motion.time")),
                    r.length("distance.samplingNear")));
  }

  private static Quantity rimSpeed() {
    return Entry.of("motion.rimSpeed", "speed of the rim on the turntable")
        .meaning("How fast the outermost part of the object moves while the turntable turns.")
        .symbol("V_{\\mathrm{rim}}", Unit.CENTIMETRE_PER_SECOND)
        .range(Range.above(0))
        .formula("aim.turnRate * distance.turningWidth / 2")
        .source("circumference over time of a turn")
        .checkedBy("MOT-03")
        .by(
            r ->
                Movement.rimMetresPerSecond(
                    r.length("distance.turningWidth").times(0.5), r.si("aim.turnRate")));
  }

  private static Quantity byTurntable() {
    return time("motion.byTurntable", "longest time on the turning table", "t_{\\mathrm{turn}}")
        .range(Range.above(0))
        .meaning(
            "How long the shutter may be open while the turntable turns; better let it stop"
                + " first.")
        .formula("aim.motionBlur * distance.samplingNear / motion.rimSpeed")
        .source(STEADY)
        .checkedBy("MOT-02", "MOT-04")
        .by(
            r ->
                Movement.passingTime(
                        r.si("aim.motionBlur"),
                        r.length("distance.samplingNear"),
                        r.si("motion.rimSpeed"))
                    .seconds());
  }

  private static Quantity tripod() {
    return Entry.of("motion.tripod", "needs a tripod")
        .meaning("Whether even the highest ISO needs a longer time than hands can hold.")
        .symbol("\\mathrm{tripod}", Unit.ANSWER)
        .formula("light.timeHighest > motion.byTremor")
        .source("comparison")
        .checkedBy("test:RingRoutesTest")
        .by(
            r ->
                Quantity.answer(!Whole.atMost(r.si("light.timeHighest"), r.si("motion.byTremor"))));
  }

  private static Quantity stopsShort() {
    return Entry.of("motion.stopsShort", "stops too dark for working by hand")
        .meaning(
            "How much light is missing for working by hand at the highest ISO; below 0 there is"
                + " light to spare.")
        .symbol("q_{\\mathrm{dark}}", Unit.STOP)
        .range(Range.any())
        .rounded(Rounding.significant(2))
        .formula("log2(light.timeHighest / motion.byTremor)")
        .source("definition of the stop")
        .checkedBy("test:RingRoutesTest")
        .by(r -> Num.log2(r.si("light.timeHighest") / r.si("motion.byTremor")));
  }

  private static Quantity handBlur() {
    return Entry.of("motion.handBlur", "movement by hand at the highest ISO")
        .meaning("How many pixels the picture moves if it is taken by hand at the highest ISO.")
        .symbol("b_{\\mathrm{hand}}", Unit.PIXEL)
        .range(Range.above(0))
        .formula("aim.motionBlur * light.timeHighest / motion.byTremor")
        .source(STEADY)
        .checkedBy("MOT-05")
        .by(r -> r.si("aim.motionBlur") * r.si("light.timeHighest") / r.si("motion.byTremor"));
  }

  private static Quantity time() {
    return time("motion.time", "exposure time to set", "t")
        .range(Range.above(0))
        .meaning(
            "On a tripod the time of the lowest ISO; by hand the longest that is held still, if"
                + " the lowest ISO does not need less.")
        .formula("if(motion.tripod, light.timeBase, min(motion.byTremor, light.timeBase))")
        .source("least noise first; common practice, no source")
        .checkedBy("test:RingRoutesTest")
        .by(
            r ->
                r.yes("motion.tripod")
                    ? r.si("light.timeBase")
                    : Math.min(r.si("motion.byTremor"), r.si("light.timeBase")));
  }

  private static Quantity dialTime() {
    return time("motion.dialTime", "mark on the shutter dial", "t_{\\mathrm{dial}}")
        .range(Range.above(0))
        .meaning(
            "The longest time a camera offers in third stops that is not longer than the time to"
                + " set; the ISO makes up the rest.")
        .formula("2 ^ (floor(3 * log2(motion.time)) / 3)")
        .source("powers of two; the engraved names are common practice")
        .checkedBy("FNO-10", "FNO-11")
        .by(r -> ShutterMarks.notLonger(new Span(r.si("motion.time"))).seconds());
  }

  private static Quantity usualExact() {
    return Entry.of("motion.usualExact", "exact time behind the usual mark")
        .meaning("What the camera really does at the time usually set: marks are rounded names.")
        .symbol("t_{\\mathrm{exact}}", Unit.SECOND)
        .range(Range.above(0))
        .formula("2 ^ (round(3 * log2(aim.usualTime)) / 3)")
        .source("third stops are powers of two; the engraved names are common practice")
        .checkedBy("FNO-10", "FNO-11")
        .by(r -> ShutterMarks.exact(new Span(r.si("aim.usualTime"))).seconds());
  }

  private static Quantity iso() {
    return Entry.of("motion.iso", "ISO to set")
        .meaning("The ISO that exposes rightly with the f-number and the time to set.")
        .symbol("S_{\\mathrm{set}}", Unit.ONE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("100 * sharp.effective ^ 2 / (motion.time * 2 ^ light.ev100)")
        .source("exposure in steps of two; Exif annex on APEX")
        .checkedBy("EXP-07", "EXP-15")
        .by(
            r ->
                Exposure.isoFor(
                    r.fNumber("sharp.effective"),
                    new Span(r.si("motion.time")),
                    r.si("light.ev100")));
  }

  private static Quantity dialIso() {
    return Entry.of("motion.dialIso", "ISO that goes with the mark")
        .meaning("The ISO that exposes rightly with the f-number and the mark on the dial.")
        .symbol("S_{\\mathrm{dial}}", Unit.ONE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("motion.iso * motion.time / motion.dialTime")
        .source("the same exposure in another time; Exif annex on APEX")
        .checkedBy("EXP-07", "EXP-15")
        .by(r -> r.si("motion.iso") * r.si("motion.time") / r.si("motion.dialTime"));
  }

  private static Entry time(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.SECOND).rounded(Rounding.fraction(2));
  }
}
