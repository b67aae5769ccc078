package ringbook.ledger;

import java.util.List;
import ringbook.shots.Ring;
import ringbook.units.Angle;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** Where the ring of stations runs, how many stations it has and how far they are apart. */
final class RingEntries {

  private static final String GEOMETRY = "plane and spherical trigonometry";

  private RingEntries() {}

  static List<Quantity> entries() {
    return List.of(
        radius(),
        floorDistance(),
        rise(),
        middleHeight(),
        lensHeight(),
        lensAboveTable(),
        lowestElevation(),
        highestElevation(),
        reachable(),
        photos(),
        fewest(),
        realStep(),
        chord(),
        baseRatio(),
        rayAngle(),
        fewestByRay());
  }

  private static Quantity radius() {
    return Entry.of("ring.radius", "lens to the middle of the object")
        .meaning("How far the lens is from the middle of the object, all the way round.")
        .symbol("D", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("distance.middle")
        .source("definition")
        .checkedBy("test:RingRoutesTest")
        .by(r -> r.si("distance.middle"));
  }

  private static Quantity floorDistance() {
    return Entry.of("ring.floorDistance", "distance on the floor")
        .meaning("Radius of the circle on the floor that the lens moves above.")
        .symbol("D_{\\mathrm{f}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("ring.radius * cos(aim.elevation)")
        .source(GEOMETRY)
        .checkedBy("ORB-07", "ORB-08")
        .by(r -> r.si("ring.radius") * Num.cos(r.si("aim.elevation")));
  }

  private static Quantity rise() {
    return Entry.of("ring.rise", "lens above the middle of the object")
        .meaning("How much higher than the middle of the object the lens is; below 0 if lower.")
        .symbol("\\Delta z", Unit.CENTIMETRE)
        .range(Range.any())
        .formula("ring.radius * sin(aim.elevation)")
        .source(GEOMETRY)
        .checkedBy("ORB-07", "ORB-08")
        .by(r -> r.si("ring.radius") * Num.sin(r.si("aim.elevation")));
  }

  private static Quantity middleHeight() {
    return Entry.of("ring.middleHeight", "height of the object's middle")
        .meaning("Floor to the middle of the object as it stands on the table.")
        .symbol("z_{\\mathrm{m}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("place.tableHeight + subject.height / 2")
        .source("definition")
        .checkedBy("test:RingRoutesTest")
        .by(r -> r.si("place.tableHeight") + r.si("subject.height") / 2);
  }

  private static Quantity lensHeight() {
    return Entry.of("ring.lensHeight", "height of the lens")
        .meaning("Floor to lens on this ring; below 0 would be under the floor.")
        .symbol("z", Unit.CENTIMETRE)
        .range(Range.any())
        .formula("ring.middleHeight + ring.rise")
        .source(GEOMETRY)
        .checkedBy("test:CameraLibraryTest", "ORB-09", "ORB-07")
        .by(r -> r.si("ring.middleHeight") + r.si("ring.rise"));
  }

  private static Quantity lensAboveTable() {
    return Entry.of("ring.lensAboveTable", "lens above the table top")
        .meaning("How far the lens is above the table top; below 0 the table hides the object.")
        .symbol("z_{\\mathrm{a}}", Unit.CENTIMETRE)
        .range(Range.any())
        .formula("ring.lensHeight - place.tableHeight")
        .source("definition")
        .checkedBy("test:RingRoutesTest")
        .by(r -> r.si("ring.lensHeight") - r.si("place.tableHeight"));
  }

  private static Quantity lowestElevation() {
    return elevationFor("ring.lowestElevation", "lowest elevation within reach", "e_{\\min}")
        .range(Range.degrees(-90, 90))
        .meaning(
            "Elevation at which the lens is as low as the group can hold it, or straight below.")
        .formula("asin(max(-1, (place.lowestLens - ring.middleHeight) / ring.radius))")
        .checkedBy("test:RingRoutesTest")
        .by(RingEntries::lowestOf);
  }

  private static Quantity highestElevation() {
    return elevationFor("ring.highestElevation", "highest elevation within reach", "e_{\\max}")
        .range(Range.degrees(-90, 90))
        .meaning(
            "Elevation at which the lens is as high as the group can hold it, or straight above.")
        .formula("asin(min(1, (place.highestLens - ring.middleHeight) / ring.radius))")
        .checkedBy("test:RingRoutesTest")
        .by(RingEntries::highestOf);
  }

  private static Entry elevationFor(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.DEGREE)
        .rounded(Rounding.decimals(0))
        .source(GEOMETRY);
  }

  private static double sineAt(Reckoning r, String height) {
    return (r.si(height) - r.si("ring.middleHeight")) / r.si("ring.radius");
  }

  private static double lowestOf(Reckoning r) {
    double sine = sineAt(r, "place.lowestLens");
    if (sine > 1) {
      throw new RefusedException(
          "even the lowest lens within reach is above every ring at this distance",
          "put the object higher, or hold the lens lower");
    }
    return Num.asin(Math.max(-1, sine));
  }

  private static double highestOf(Reckoning r) {
    double sine = sineAt(r, "place.highestLens");
    if (sine < -1) {
      throw new RefusedException(
          "even the highest lens within reach is below every ring at this distance",
          "put the object lower");
    }
    return Num.asin(Math.min(1, sine));
  }

  private static Quantity reachable() {
    return Entry.of("ring.reachable", "ring within reach?")
        .meaning(
            "Whether the group can hold the lens at the height of the ring, above the table top.")
        .symbol("\\mathrm{reach}", Unit.ANSWER)
        .formula(
            "both(ring.lensHeight >= place.lowestLens, ring.lensHeight <= place.highestLens,"
                + " ring.lensAboveTable > 0)")
        .source("definition")
        .checkedBy("test:RingRoutesTest")
        .by(
            r -> {
              double height = r.si("ring.lensHeight");
              boolean within =
                  Whole.atMost(r.si("place.lowestLens"), height)
                      && Whole.atMost(height, r.si("place.highestLens"));
              return within && r.si("ring.lensAboveTable") > 0 ? 1 : 0;
            });
  }

  private static Quantity photos() {
    return count("ring.photos", "photographs in the ring", "n")
        .range(Range.wholeFrom(3))
        .meaning("How many photographs go once round at the chosen turn.")
        .formula("ceil(360deg / aim.step)")
        .source("count of equal turns in a full turn")
        .checkedBy("ORB-01", "ORB-03", "ORB-14")
        .by(r -> Ring.photosFor(r.angle("aim.step")));
  }

  private static Quantity fewest() {
    return count("ring.fewest", "fewest photographs in the ring", "n_{\\min}")
        .range(Range.wholeFrom(3))
        .meaning("How many photographs go once round at the largest turn with reliable matches.")
        .formula("ceil(360deg / aim.stepLimit)")
        .source("count of equal turns in a full turn")
        .checkedBy("ORB-01", "ORB-14")
        .by(r -> Ring.photosFor(r.angle("aim.stepLimit")));
  }

  private static Quantity realStep() {
    return Entry.of("ring.realStep", "real turn")
        .meaning("The turn from photograph to photograph when they are spread evenly.")
        .symbol("\\alpha_{n}", Unit.DEGREE)
        .range(Range.degrees(0, 120))
        .formula("360deg / ring.photos")
        .source("definition")
        .checkedBy("ORB-03", "ORB-04")
        .by(r -> Angle.FULL_TURN.radians() / r.si("ring.photos"));
  }

  private static Quantity chord() {
    return Entry.of("ring.chord", "way from station to station")
        .meaning("Straight way of the lens from one photograph to the next.")
        .symbol("B", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("2 * ring.floorDistance * sin(ring.realStep / 2)")
        .source("chord of a circle")
        .checkedBy("test:CameraLibraryTest", "ORB-05", "ORB-06")
        .by(r -> 2 * r.si("ring.floorDistance") * Num.sin(r.si("ring.realStep") / 2));
  }

  private static Quantity baseRatio() {
    return Entry.of("ring.baseRatio", "base to distance")
        .meaning("Way from station to station over the distance to the object.")
        .symbol("k_{B}", Unit.ONE)
        .range(Range.above(0).upTo(2))
        .formula("ring.chord / ring.radius")
        .source("definition")
        .checkedBy("ORB-06")
        .by(r -> r.si("ring.chord") / r.si("ring.radius"));
  }

  private static Quantity rayAngle() {
    return Entry.of("ring.rayAngle", "angle between lines of sight")
        .meaning(
            "Angle at the object between the lines of sight of neighbours; on a raised ring smaller"
                + " than the turn.")
        .symbol("\\gamma", Unit.DEGREE)
        .range(Range.degrees(0, 120))
        .formula("2 * asin(cos(aim.elevation) * sin(ring.realStep / 2))")
        .source("spherical trigonometry")
        .checkedBy("ORB-11")
        .by(r -> 2 * Num.asin(Num.cos(r.si("aim.elevation")) * Num.sin(r.si("ring.realStep") / 2)));
  }

  private static Quantity fewestByRay() {
    return count("ring.fewestByRay", "fewest photographs by line of sight", "n_{\\gamma}")
        .range(Range.wholeFrom(3))
        .meaning(
            "Fewest photographs, at least three, that keep the angle between lines of sight within"
                + " the largest turn; the pictures still turn more than that against each other.")
        .formula(
            "if(sin(aim.stepLimit / 2) >= cos(aim.elevation), 3, max(3, ceil(360deg / (2 *"
                + " asin(sin(aim.stepLimit / 2) / cos(aim.elevation))))))")
        .source("spherical trigonometry")
        .checkedBy("ORB-13", "ORB-14")
        .by(r -> Ring.photosForRays(r.angle("aim.stepLimit"), r.angle("aim.elevation")));
  }

  private static Entry count(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PIECE).rounded(Rounding.decimals(0));
  }

  /** Half the width of the object as it turns: the radius of a round one. */
  static Length outlineRadius(Reckoning r) {
    return r.length("distance.turningWidth").times(0.5);
  }
}
