package ringbook.ledger;

import java.util.List;
import ringbook.optics.Filter;
import ringbook.optics.Lamp;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Unit;

/** How even the light of a lamp is, and what polarising filters cost. */
final class LampEntries {

  private static final double EVEN_STOPS = 0.5;
  private static final double GLINT = 0.01;
  private static final String SQUARE = "inverse square law, small lamp; textbooks of lighting";
  private static final String STOP = "definition of the stop";
  private static final String MALUS = "law of Malus: the square of the cosine";
  private static final Angle CROSSED = Angle.ofDegrees(90);

  private LampEntries() {}

  static List<Quantity> entries() {
    return List.of(
        spread(),
        evenDistance(),
        farShare(),
        polariserShare(),
        polariserTime(),
        crossedStops(),
        crossedTime(),
        glint(),
        crossingLimit(),
        bareLamp());
  }

  private static Quantity spread() {
    return Entry.of("light.lampSpread", "unevenness of the lamp over the object")
        .meaning("How many stops the side away from one small lamp is darker than the side to it.")
        .symbol("q_{\\mathrm{l}}", Unit.STOP)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula(
            "2 * log2((place.lampDistance + distance.turningWidth / 2)"
                + " / (place.lampDistance - distance.turningWidth / 2))")
        .source(SQUARE)
        .checkedBy("LGT-03", "LGT-04", "LGT-07")
        .by(
            r -> {
              Length lamp = lamp(r);
              return Lamp.spread(lamp, r.length("distance.turningWidth"));
            });
  }

  private static Quantity evenDistance() {
    return Entry.of("light.evenDistance", "lamp distance for even light")
        .meaning("How far the lamp must be from the object's middle for half a stop of unevenness.")
        .symbol("d_{\\mathrm{even}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("distance.turningWidth / 2 * (2 ^ 0.25 + 1) / (2 ^ 0.25 - 1)")
        .source(SQUARE + "; half a stop is common practice, no source")
        .checkedBy("LGT-07")
        .by(r -> Lamp.distanceFor(r.length("distance.turningWidth"), EVEN_STOPS).metres());
  }

  private static Quantity farShare() {
    return Entry.of("light.farShare", "light on the far side")
        .meaning("How much of the light in the middle reaches the side away from the lamp.")
        .symbol("E_{\\mathrm{far}}", Unit.PERCENT)
        .range(Range.above(0).below(1))
        .rounded(Rounding.significant(2))
        .formula("(place.lampDistance / (place.lampDistance + distance.turningWidth / 2)) ^ 2")
        .source(SQUARE)
        .checkedBy("LGT-01", "LGT-02", "LGT-06")
        .by(
            r -> {
              Length lamp = r.length("place.lampDistance");
              Length far = lamp.plus(r.length("distance.turningWidth").times(0.5));
              return Lamp.illuminanceLux(1, lamp, far);
            });
  }

  private static Quantity polariserShare() {
    return Entry.of("light.polariserShare", "light through the polarising filter")
        .meaning("How much of the light a polarising filter before the lens lets through.")
        .symbol("\\tau_{\\mathrm{pol}}", Unit.PERCENT)
        .range(Range.above(0).upTo(0.5))
        .rounded(Rounding.significant(2))
        .formula("2 ^ (-kit.polariserLoss)")
        .source(STOP)
        .checkedBy("POL-01", "POL-04")
        .by(r -> Filter.transmittance(r.si("kit.polariserLoss")));
  }

  private static Quantity polariserTime() {
    return Entry.of("light.polariserTime", "exposure time with a polarising filter")
        .meaning("The time at the lowest ISO with a polarising filter before the lens.")
        .symbol("t_{\\mathrm{pol}}", Unit.SECOND)
        .range(Range.above(0))
        .rounded(Rounding.fraction(2))
        .formula("light.timeBase / light.polariserShare")
        .source(STOP)
        .checkedBy("POL-04")
        .by(r -> r.si("light.timeBase") / r.si("light.polariserShare"));
  }

  private static Quantity crossedStops() {
    return Entry.of("light.crossedStops", "stops lost with crossed filters")
        .meaning(
            "What crossed polarising filters on lamp and lens cost the light that the surface"
                + " scatters; the glint goes altogether.")
        .symbol("q_{\\mathrm{x}}", Unit.STOP)
        .range(Range.from(2))
        .rounded(Rounding.significant(2))
        .formula("2 * kit.polariserLoss")
        .source("one filter before each; scattered light loses its polarisation")
        .checkedBy("POL-05")
        .by(r -> Filter.stopsLost(Filter.transmittance(2 * r.si("kit.polariserLoss"))));
  }

  private static Quantity crossedTime() {
    return Entry.of("light.crossedTime", "exposure time with crossed filters")
        .meaning("The time at the lowest ISO with polarising filters on lamp and lens.")
        .symbol("t_{\\mathrm{x}}", Unit.SECOND)
        .range(Range.above(0))
        .rounded(Rounding.fraction(2))
        .formula("light.timeBase * 2 ^ light.crossedStops")
        .source(STOP)
        .checkedBy("POL-05")
        .by(r -> r.si("light.timeBase") / Filter.transmittance(r.si("light.crossedStops")));
  }

  private static Quantity glint() {
    return Entry.of("light.glint", "glint that passes the filters")
        .meaning("How much of the glint comes through, the filters being that far from crossed.")
        .symbol("g_{\\mathrm{x}}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.significant(2))
        .formula("cos(90deg - kit.polariserError) ^ 2")
        .source(MALUS)
        .checkedBy("POL-02")
        .by(r -> Filter.malus(CROSSED.minus(r.angle("kit.polariserError"))));
  }

  private static Quantity crossingLimit() {
    return Entry.of("light.crossingLimit", "turn from crossed that lets one percent through")
        .meaning(
            "How exactly the filters must be crossed to keep out all but a hundredth of the glint.")
        .symbol("\\delta_{\\max}", Unit.DEGREE)
        .range(Range.degrees(0, 90))
        .rounded(Rounding.significant(2))
        .formula("90deg - acos(sqrt(0.01))")
        .source(MALUS + "; one percent is common practice, no source")
        .checkedBy("POL-03")
        .by(r -> CROSSED.minus(Filter.malusAngle(GLINT)).radians());
  }

  private static Quantity bareLamp() {
    return Entry.of("light.bareLamp", "light of one bare lamp")
        .meaning("What one lamp without a shade gives at the middle of the object.")
        .symbol("E_{\\mathrm{l}}", Unit.LUX)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("place.lampFlux / (4 * pi * place.lampDistance ^ 2)")
        .source("flux spread evenly over a sphere; " + SQUARE)
        .checkedBy("LGT-08")
        .by(r -> Lamp.luxOfFlux(r.si("place.lampFlux"), r.length("place.lampDistance")));
  }

  /** Distance from lamp to middle; refused where the lamp would stand inside the object. */
  static Length lamp(Reckoning r) {
    Length lamp = r.length("place.lampDistance");
    Length half = r.length("distance.turningWidth").times(0.5);
    if (lamp.compareTo(half) <= 0) {
      double even = Lamp.distanceFor(half.times(2), EVEN_STOPS).metres();
      throw new RefusedException(
          "The lamp, "
              + r.text("place.lampDistance")
              + " from the middle of the object, would stand inside it.",
          "Move it to " + Enough.text(r, "place.lampDistance", even) + " for even light.");
    }
    return lamp;
  }
}
