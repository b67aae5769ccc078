package ringbook.ledger;

import java.util.List;
import ringbook.optics.Framing;
import ringbook.optics.ThinLens;
import ringbook.shots.Aim;
import ringbook.shots.Scene;
import ringbook.shots.Subject;
import ringbook.units.Num;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** How far to stand so that the object fits the picture. */
final class DistanceEntries {

  private DistanceEntries() {}

  static List<Quantity> entries() {
    return List.of(
        widthAsItTurns(),
        sideUp(),
        sideAcross(),
        acrossNeeded(),
        upNeeded(),
        standoffNeeded(),
        heldOff(),
        middle(),
        far(),
        magnification(),
        field("distance.fieldLong", "long", "kit.sensorWidth", "F_{\\mathrm{l}}"),
        field("distance.fieldShort", "short", "kit.sensorHeight", "F_{\\mathrm{s}}"),
        along("distance.alongLong", "long", "l_{\\mathrm{l}}", true),
        along("distance.alongShort", "short", "l_{\\mathrm{s}}", false),
        filled("distance.filledLong", "long", "distance.alongLong", "distance.fieldLong"),
        filled("distance.filledShort", "short", "distance.alongShort", "distance.fieldShort"));
  }

  private static Quantity widthAsItTurns() {
    return Entry.of("distance.turningWidth", "width of the object as it turns")
        .meaning(
            "The widest the object ever looks on a walk round it: the diameter of the circle"
                + " it sweeps.")
        .symbol("W", Unit.CENTIMETRE)
        .range(Range.above(0))
        .rule(
            "the diameter of a round object; the diagonal of width and depth of a rectangular"
                + " one, which the ring also shows cornerwise",
            "subject.width",
            "subject.depth")
        .source("Pythagoras")
        .checkedBy("test:DistanceRoutesTest")
        .by(DistanceEntries::turningWidth);
  }

  private static Quantity sideUp() {
    return bySide("distance.sideUp", "side of the sensor that stands upright", "s_{\\mathrm{h}}")
        .range(Range.above(0))
        .meaning("The side of the picture that the height of the object has to fit.")
        .rule(
            "the long side when the camera is held upright, otherwise the short side",
            "kit.sensorWidth",
            "kit.sensorHeight")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si(upright(r.scene()) ? "kit.sensorWidth" : "kit.sensorHeight"));
  }

  private static Quantity sideAcross() {
    return bySide("distance.sideAcross", "side of the sensor that lies level", "s_{\\mathrm{w}}")
        .range(Range.above(0))
        .meaning("The side of the picture that the width of the object has to fit.")
        .rule(
            "the short side when the camera is held upright, otherwise the long side",
            "kit.sensorWidth",
            "kit.sensorHeight")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si(upright(r.scene()) ? "kit.sensorHeight" : "kit.sensorWidth"));
  }

  private static Quantity acrossNeeded() {
    return needed("distance.acrossNeeded", "width", "u_{\\mathrm{w}}")
        .range(Range.above(0))
        .formula("kit.focalLength * (1 + distance.turningWidth / (aim.fill * distance.sideAcross))")
        .by(r -> standoff(r, "distance.turningWidth", "distance.sideAcross"));
  }

  private static Quantity upNeeded() {
    return needed("distance.upNeeded", "height", "u_{\\mathrm{h}}")
        .range(Range.above(0))
        .formula("kit.focalLength * (1 + subject.height / (aim.fill * distance.sideUp))")
        .by(r -> standoff(r, "subject.height", "distance.sideUp"));
  }

  private static Quantity standoffNeeded() {
    return place("distance.standoff", "standoff", "u")
        .range(Range.above(0))
        .meaning(
            "How far the lens is from the near face of the object: the nearest that fits the"
                + " picture and that the lens can focus on.")
        .formula("max(distance.acrossNeeded, distance.upNeeded, kit.closestFocus)")
        .source("both sides must fit; the lens must be able to focus")
        .checkedBy("test:DistanceRoutesTest")
        .by(
            r ->
                Math.max(
                    Math.max(r.si("distance.acrossNeeded"), r.si("distance.upNeeded")),
                    r.si("kit.closestFocus")));
  }

  private static Quantity heldOff() {
    return Entry.of("distance.heldOff", "closest focus sets the standoff")
        .meaning(
            "Whether the lens keeps the group farther away than the picture asks for, because"
                + " it cannot focus nearer.")
        .symbol("\\mathrm{held}", Unit.ANSWER)
        .formula("kit.closestFocus > max(distance.acrossNeeded, distance.upNeeded)")
        .source("comparison of the three distances")
        .checkedBy("test:DistanceRoutesTest")
        .by(
            r ->
                Quantity.answer(
                    !Whole.atMost(
                        r.si("kit.closestFocus"),
                        Math.max(r.si("distance.acrossNeeded"), r.si("distance.upNeeded")))));
  }

  private static Quantity middle() {
    return place("distance.middle", "distance to the middle", "u_{\\mathrm{m}}")
        .range(Range.above(0))
        .meaning("How far the lens is from the middle of the object.")
        .formula("distance.standoff + distance.turningWidth / 2")
        .source("half the object lies before its middle")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("distance.standoff") + r.si("distance.turningWidth") / 2);
  }

  private static Quantity far() {
    return place("distance.far", "distance to the far face", "u_{\\mathrm{f}}")
        .range(Range.above(0))
        .meaning("How far the lens is from the far side of the object.")
        .formula("distance.standoff + distance.turningWidth")
        .source("the whole object lies before its far side")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si("distance.standoff") + r.si("distance.turningWidth"));
  }

  private static Quantity magnification() {
    return Entry.of("distance.magnification", "magnification at the near face")
        .meaning("Size of the picture on the sensor over size of the object.")
        .symbol("m", Unit.ONE)
        .range(Range.above(0))
        .formula("kit.focalLength / (distance.standoff - kit.focalLength)")
        .source("thin lens; textbooks of optics")
        .checkedBy("LEN-02", "LEN-06")
        .by(
            r ->
                ThinLens.magnification(r.length("kit.focalLength"), r.length("distance.standoff")));
  }

  private static Entry bySide(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.MILLIMETRE).source("the way the camera is held");
  }

  private static Entry needed(String key, String extent, String symbol) {
    return Entry.of(key, "standoff the " + extent + " asks for")
        .meaning(
            "The distance from the lens to the near face at which the "
                + extent
                + " of the object takes up no more of the picture than wanted.")
        .symbol(symbol, Unit.CENTIMETRE)
        .source("thin lens, object distance from magnification; textbooks of optics")
        .checkedBy("LEN-03", "LEN-05", "LEN-14");
  }

  private static Entry place(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.CENTIMETRE);
  }

  private static Quantity field(String key, String side, String length, String symbol) {
    return Entry.of(key, "field along the " + side + " side")
        .meaning("How much the " + side + " side of the picture shows at the near face.")
        .symbol(symbol, Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula(length + " * (distance.standoff - kit.focalLength) / kit.focalLength")
        .source("thin lens; textbooks of optics")
        .checkedBy("LEN-13")
        .by(
            r ->
                Framing.field(
                        r.length("kit.focalLength"),
                        r.length(length),
                        r.length("distance.standoff"))
                    .metres());
  }

  private static Quantity along(String key, String side, String symbol, boolean isLong) {
    return Entry.of(key, "size of the object along the " + side + " side")
        .meaning("What of the object lies along the " + side + " side of the picture.")
        .symbol(symbol, Unit.CENTIMETRE)
        .range(Range.above(0))
        .rule(
            "the height of the object where that side stands upright, otherwise its width as it"
                + " turns",
            "subject.height",
            "distance.turningWidth")
        .source("the way the camera is held")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.si(upright(r.scene()) == isLong ? "subject.height" : "distance.turningWidth"));
  }

  private static Quantity filled(String key, String side, String extent, String field) {
    return Entry.of(key, "share of the " + side + " side filled")
        .meaning("How much of the " + side + " side of the picture the object takes up.")
        .symbol("\\varphi_{\\mathrm{" + side.charAt(0) + "}}", Unit.PERCENT)
        .range(Range.above(0).upTo(1))
        .rounded(Rounding.significant(2))
        .formula(extent + " / " + field)
        .source("division")
        .checkedBy("test:DistanceRoutesTest")
        .by(r -> r.length(extent).over(r.length(field)));
  }

  private static double turningWidth(Reckoning r) {
    return r.scene().subject().outline() == Subject.Outline.ROUND
        ? r.si("subject.width")
        : Num.hypot(r.si("subject.width"), r.si("subject.depth"));
  }

  private static double standoff(Reckoning r, String extent, String side) {
    return Framing.standoff(
            r.length("kit.focalLength"), r.length(extent), r.length(side), r.si("aim.fill"))
        .metres();
  }

  private static boolean upright(Scene scene) {
    return scene.aim().hold() == Aim.Hold.UPRIGHT;
  }
}
