package ringbook.ledger;

import java.util.List;
import ringbook.assess.Standing;
import ringbook.geometry.ArcSet;
import ringbook.shots.Ring;
import ringbook.units.Length;
import ringbook.units.Num;
import ringbook.units.Unit;

/** What walls and furniture take off the ring. The ways round it are {@link WayRoundEntries}. */
final class RoomEntries {

  private static final String PLAN = "circle and straight sides in plan";

  private RoomEntries() {}

  static List<Quantity> entries() {
    return List.of(
        standing(), free(), blockedArc(), widestBlock(), lost(), gapTurn(), closes(), gapMatch());
  }

  private static Quantity standing() {
    return Entry.of("room.standing", "room needed from the middle of the object")
        .meaning("From the middle of the object to the back of the person behind the lens.")
        .symbol("r_{\\mathrm{s}}", Unit.CENTIMETRE)
        .range(Range.above(0))
        .formula("ring.floorDistance + place.bodyRoom")
        .source("sum of lengths")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> r.si("ring.floorDistance") + r.si("place.bodyRoom"));
  }

  private static Quantity free() {
    return Entry.of("room.free", "largest ring with nothing in the way")
        .meaning(
            "Largest distance on the floor at which the whole ring is free; 0 if there is none.")
        .symbol("r_{\\mathrm{free}}", Unit.CENTIMETRE)
        .range(Range.from(0).orEndless())
        .rule(
            "distance of the nearest wall or piece of furniture from the middle of the object, less"
                + " the room a person needs",
            "place.bodyRoom")
        .source(PLAN)
        .checkedBy("test:PlanRoutesTest")
        .by(r -> Math.max(0, Standing.nearestMetres(r.scene().place()) - r.si("place.bodyRoom")));
  }

  static ArcSet blocked(Reckoning r) {
    return Standing.blocked(r.scene().place(), r.length("room.standing"));
  }

  private static Quantity blockedArc() {
    return Entry.of("room.blockedArc", "part of the ring that is blocked")
        .meaning("All directions together in which a wall or piece of furniture is in the way.")
        .symbol("\\beta_{\\mathrm{b}}", Unit.DEGREE)
        .range(Range.degrees(0, 360))
        .rounded(Rounding.decimals(0))
        .rule(
            "directions in which an outline in plan comes nearer than the room needed",
            "room.standing")
        .source(PLAN)
        .checkedBy("test:PlanRoutesTest")
        .by(r -> blocked(r).total().radians());
  }

  private static Quantity widestBlock() {
    return Entry.of("room.widestBlock", "widest blocked part")
        .meaning("The widest blocked part of the ring in one piece.")
        .symbol("\\beta_{\\max}", Unit.DEGREE)
        .range(Range.degrees(0, 360))
        .rounded(Rounding.decimals(0))
        .rule("the widest of the blocked parts", "room.standing")
        .source(PLAN)
        .checkedBy("test:PlanRoutesTest")
        .by(r -> blocked(r).widest().radians());
  }

  private static List<Integer> usable(Reckoning r) {
    return Standing.usable(blocked(r), Ring.FIRST, (int) r.si("ring.photos"));
  }

  private static Quantity lost() {
    return Entry.of("room.stationsLost", "stations that are blocked")
        .meaning("Stations of the ring that nobody can photograph from.")
        .symbol("n_{\\mathrm{lost}}", Unit.PIECE)
        .range(Range.wholeFrom(0))
        .rounded(Rounding.decimals(0))
        .rule(
            "stations of the ring in blocked directions, the first on the door side",
            "room.standing",
            "ring.photos")
        .source(PLAN)
        .checkedBy("test:PlanRoutesTest")
        .by(r -> r.si("ring.photos") - usable(r).size());
  }

  private static Quantity gapTurn() {
    return Entry.of("room.gapTurn", "largest turn left")
        .meaning("The largest turn between two neighbouring stations that can be used.")
        .symbol("\\alpha_{\\mathrm{g}}", Unit.DEGREE)
        .range(Range.degrees(0, 360))
        .rounded(Rounding.decimals(0))
        .rule(
            "longest run of real turns from one usable station to the next",
            "room.standing",
            "ring.photos",
            "ring.realStep")
        .source(PLAN)
        .checkedBy("test:PlanRoutesTest")
        .by(
            r -> {
              List<Integer> usable = usable(r);
              if (usable.isEmpty()) {
                throw new RefusedException(
                    "no station of this ring is free",
                    "move the table, or turn the object on a turntable before a plain background");
              }
              int photos = (int) r.si("ring.photos");
              return Standing.longestStep(usable, photos) * r.si("ring.realStep");
            });
  }

  private static Quantity closes() {
    return Entry.of("room.closes", "ring closes?")
        .meaning("Whether no turn between usable neighbours is larger than matches bear.")
        .symbol("\\mathrm{closes}", Unit.ANSWER)
        .formula("room.gapTurn <= aim.stepLimit")
        .source("comparison")
        .checkedBy("test:PlanRoutesTest")
        .by(r -> Quantity.atMost(r.si("room.gapTurn"), r.si("aim.stepLimit")));
  }

  private static Quantity gapMatch() {
    return Entry.of("room.gapMatchable", "spots that can be matched across the gap")
        .meaning("Share of the spots on one side of the gap that can be found again on the other.")
        .symbol("q_{\\mathrm{g}}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.decimals(0))
        .formula(PairEntries.caps("room.gapTurn") + " * exp(-room.gapTurn / aim.decay)")
        .source(PairEntries.SURVIVAL)
        .checkedBy("test:SharedSurfaceTest", "test:MatchSurvivalTest")
        .by(r -> PairEntries.matchableAt(r, "room.gapTurn"));
  }

  /** Sampling on the object's middle at a distance of the lens, in metres. */
  static double samplingAt(Reckoning r, double metres) {
    double focal = r.si("kit.focalLength");
    return r.si("kit.pixelPitch") * (metres - focal) / focal;
  }

  /** Cosine of the ring's elevation. */
  static double flat(Reckoning r) {
    return Num.cos(r.si("aim.elevation"));
  }

  static Length standing(Reckoning r) {
    return r.length("room.standing");
  }
}
