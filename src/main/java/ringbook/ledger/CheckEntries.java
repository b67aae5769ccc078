package ringbook.ledger;

import java.util.List;
import ringbook.units.Num;
import ringbook.units.Unit;
import ringbook.units.Whole;

/** The check on the spot: gaps in a ring, how many photographs to look at, how long it takes. */
final class CheckEntries {

  private static final String PROOF = "test:LaterRoutesTest";
  private static final double GLANCE_SECONDS = 1;
  private static final double LOOK_SECONDS = 10;

  /** The sample may miss the bad photographs once in so many times. */
  private static final double ONE_IN = 20;

  private CheckEntries() {}

  static List<Quantity> entries() {
    return List.of(
        gapOne(), gapMatchable(), bearable(), blur(), sample(), chance(), glance(), look(), time());
  }

  private static Quantity gapOne() {
    return Entry.of("check.gapOne", "turn across one missing photograph")
        .meaning("Turn between the two neighbours of a photograph that is missing.")
        .symbol("\\alpha_{2}", Unit.DEGREE)
        .range(Range.degrees(0, 240))
        .formula("2 * ring.realStep")
        .source("definition")
        .checkedBy(PROOF)
        .by(r -> 2 * r.si("ring.realStep"));
  }

  private static Quantity gapMatchable() {
    return Entry.of("check.gapMatchable", "spots that can be matched across it")
        .meaning("Share of the spots beside the missing photograph that are found again past it.")
        .symbol("q_{2}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.decimals(0))
        .formula(PairEntries.caps("check.gapOne") + " * exp(-check.gapOne / aim.decay)")
        .source(PairEntries.SURVIVAL)
        .checkedBy("test:SharedSurfaceTest", "test:MatchSurvivalTest")
        .by(r -> PairEntries.matchableAt(r, "check.gapOne"));
  }

  private static Quantity bearable() {
    return Entry.of("check.bearable", "photographs that may be missing in a row")
        .meaning("How many neighbours in one ring may fail before the turn grows beyond the limit.")
        .symbol("n_{\\mathrm{gap}}", Unit.PIECE)
        .range(Range.wholeFrom(0))
        .rounded(Rounding.decimals(0))
        .formula("max(0, floor(aim.stepLimit / ring.realStep) - 1)")
        .source("count of equal steps")
        .checkedBy(PROOF)
        .by(r -> Math.max(0, Whole.down(r.si("aim.stepLimit") / r.si("ring.realStep")) - 1));
  }

  private static Quantity blur() {
    return Entry.of("check.blur", "widest smear that passes for sharp")
        .meaning("The blur that is still accepted, on the object, in its middle.")
        .symbol("b_{o}", Unit.MILLIMETRE)
        .range(Range.above(0))
        .rounded(Rounding.significant(2))
        .formula("aim.blurLimit * distance.samplingMiddle")
        .source("pixels times object size of a pixel")
        .checkedBy(PROOF)
        .by(r -> r.si("aim.blurLimit") * r.si("distance.samplingMiddle"));
  }

  private static Quantity sample() {
    return Entry.of("check.sample", "photographs to look at closely")
        .meaning(
            "So many, picked at random, show at least one bad photograph 19 times out of 20, if as"
                + " many are bad as there are spare ones.")
        .symbol("n_{k}", Unit.PIECE)
        .range(Range.wholeFrom(1))
        .rounded(Rounding.decimals(0))
        .formula("min(job.photos, ceil(ln(20) / ln(1 + aim.spare)))")
        .source("chance of drawing only good ones; textbooks of statistics (acceptance sampling)")
        .checkedBy(PROOF)
        .by(
            r ->
                Math.min(
                    r.si("job.photos"),
                    Whole.up(Num.log(ONE_IN) / Num.log(1 + r.si("aim.spare")))));
  }

  private static Quantity chance() {
    return Entry.of("check.chance", "chance that the sample shows a bad one")
        .meaning("Chance to meet at least one bad photograph in it, if as many are bad as spare.")
        .symbol("p_{k}", Unit.PERCENT)
        .range(Range.between(0, 1))
        .rounded(Rounding.significant(2))
        .formula("1 - exp(-check.sample * ln(1 + aim.spare))")
        .source("chance of drawing only good ones; textbooks of statistics (acceptance sampling)")
        .checkedBy(PROOF)
        .by(r -> 1 - Num.exp(-r.si("check.sample") * Num.log(1 + r.si("aim.spare"))));
  }

  private static Quantity glance() {
    return seconds("check.glance", "time for a glance", "t_{g}")
        .meaning("Time to see one photograph while leafing through all of them.")
        .formula("1s")
        .by(r -> GLANCE_SECONDS);
  }

  private static Quantity look() {
    return seconds("check.look", "time for a close look", "t_{k}")
        .meaning("Time to enlarge one photograph in three places and judge it.")
        .formula("10s")
        .by(r -> LOOK_SECONDS);
  }

  private static Quantity time() {
    return Entry.of("check.time", "time for the check")
        .meaning("A glance at every photograph and a close look at the sample.")
        .symbol("t_{\\mathrm{check}}", Unit.MINUTE)
        .range(Range.above(0))
        .rounded(Rounding.decimals(0))
        .formula("job.photos * check.glance + check.sample * check.look")
        .source("count times time")
        .checkedBy(PROOF)
        .by(
            r ->
                r.si("job.photos") * r.si("check.glance")
                    + r.si("check.sample") * r.si("check.look"));
  }

  private static Entry seconds(String key, String name, String symbol) {
    return Entry.of(key, name)
        .symbol(symbol, Unit.SECOND)
        .range(Range.above(0))
        .source("common practice, no source");
  }
}
