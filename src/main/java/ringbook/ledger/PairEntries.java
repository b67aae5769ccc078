package ringbook.ledger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import ringbook.assess.MatchSurvival;
import ringbook.assess.SharedSurface;
import ringbook.assess.TurnSurvival;
import ringbook.units.Angle;
import ringbook.units.Unit;

/** Whether two neighbouring photographs of the ring can be tied together. */
final class PairEntries {

  static final String SURVIVAL =
      "exponential fitted to matches counted on five published picture sets; decays of 16° to 23°";

  private PairEntries() {}

  static List<Quantity> entries() {
    return List.of(
        shared(), alike(), matchable(), atLimit(), halving(), halvedFirst(), halvedLast());
  }

  private static Quantity shared() {
    return share("pair.shared", "surface seen by both", "q")
        .range(Range.between(0, 1))
        .meaning(
            "Share of what one photograph sees well of a ball that its neighbour sees well too, at"
                + " the full turn.")
        .formula(caps("ring.realStep"))
        .source("area common to two equal caps of a sphere")
        .checkedBy("test:CameraLibraryTest", "ORB-12", "test:SharedSurfaceTest")
        .by(r -> SharedSurface.ofCaps(r.angle("ring.realStep"), r.angle("aim.incidenceLimit")));
  }

  private static Quantity alike() {
    return share("pair.alike", "spots that still look alike", "q_{\\tau}")
        .range(Range.between(0, 1))
        .meaning("Share of the spots seen by both that still look alike after the turn.")
        .formula("exp(-ring.realStep / aim.decay)")
        .source(SURVIVAL)
        .checkedBy("test:MatchSurvivalTest")
        .by(r -> MatchSurvival.alike(r.angle("ring.realStep"), r.angle("aim.decay")));
  }

  private static Quantity matchable() {
    return share("pair.matchable", "spots that can be matched", "q_{\\mathrm{m}}")
        .range(Range.between(0, 1))
        .meaning("Share of the spots in one photograph that can be found again in its neighbour.")
        .formula("pair.shared * pair.alike")
        .source(SURVIVAL)
        .checkedBy("test:SharedSurfaceTest", "test:MatchSurvivalTest")
        .by(r -> r.si("pair.shared") * r.si("pair.alike"));
  }

  private static Quantity atLimit() {
    return share("pair.atLimit", "spots that can be matched at the largest turn", "q_{\\max}")
        .range(Range.between(0, 1))
        .meaning("The same share at the largest turn with reliable matches, for comparison.")
        .formula(caps("aim.stepLimit") + " * exp(-aim.stepLimit / aim.decay)")
        .source(SURVIVAL)
        .checkedBy("test:SharedSurfaceTest", "test:MatchSurvivalTest")
        .by(r -> matchableAt(r, "aim.stepLimit"));
  }

  /** The share of two caps that is common, as formula text, at the turn of another entry. */
  static String caps(String turn) {
    return "if("
        + turn
        + " >= 2 * aim.incidenceLimit, 0, (4 * acos(sin("
        + turn
        + " / 2) / sin(aim.incidenceLimit)) - 4 * acos(tan("
        + turn
        + " / 2) / tan(aim.incidenceLimit)) * cos(aim.incidenceLimit)) / (2 * pi * (1 -"
        + " cos(aim.incidenceLimit))))";
  }

  /** Share of spots that can be matched at the turn of another entry. */
  static double matchableAt(Reckoning r, String turn) {
    return MatchSurvival.matchable(
        r.angle(turn), r.angle("aim.incidenceLimit"), r.angle("aim.decay"));
  }

  private static Quantity halving() {
    return Entry.of("pair.halving", "turn that halves the matches")
        .meaning("Turn after which half of the spots no longer look alike, by their look alone.")
        .symbol("\\tau_{1/2}", Unit.DEGREE)
        .range(Range.degrees(0, 180))
        .formula("aim.decay * ln(2)")
        .source(SURVIVAL)
        .checkedBy("test:MatchSurvivalTest")
        .by(r -> MatchSurvival.halving(r.angle("aim.decay")).radians());
  }

  private static Quantity halvedFirst() {
    return measured("pair.halvedFirst", "shortest turn that halved the matches", "\\min")
        .range(Range.degrees(0, 180))
        .meaning("Turn over which half of the matches were lost on the set that lost them fastest.")
        .by(r -> Collections.min(halvings()).radians());
  }

  private static Quantity halvedLast() {
    return measured("pair.halvedLast", "longest turn that halved the matches", "\\max")
        .range(Range.degrees(0, 180))
        .meaning("Turn over which half of the matches were lost on the set that kept them longest.")
        .by(r -> Collections.max(halvings()).radians());
  }

  private static Entry measured(String key, String name, String index) {
    return Entry.of(key, name)
        .symbol("\\tau_{" + index + "}", Unit.DEGREE)
        .rounded(Rounding.decimals(0))
        .rule(
            "a straight line through the logarithms of the counts of each measured picture set,"
                + " by least squares")
        .source("matches counted on five published picture sets; see the figure of survival")
        .checkedBy("test:MatchSurvivalTest");
  }

  private static List<Angle> halvings() {
    List<Angle> halvings = new ArrayList<>();
    for (TurnSurvival set : TurnSurvival.ALL) {
      halvings.add(set.halving());
    }
    return halvings;
  }

  private static Entry share(String key, String name, String symbol) {
    return Entry.of(key, name).symbol(symbol, Unit.PERCENT).rounded(Rounding.decimals(0));
  }
}
