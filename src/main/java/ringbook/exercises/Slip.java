package ringbook.exercises;

import ringbook.ledger.Formula;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;

/**
 * A typical wrong way to an answer, as the author foresaw it: a learner whose number comes from it
 * is told so.
 *
 * @param way the wrong way, as a formula over the ledger; worked out on the exercise's scene
 * @param says what went wrong, to the learner
 * @param worth what an answer that comes from it is worth
 */
public record Slip(Formula way, Wording says, Credit worth) {

  /** A slip worth what slips are usually worth. */
  public Slip(Formula way, Wording says) {
    this(way, says, Credit.QUARTER);
  }

  /** Whether everything the way needs has a number on this scene. */
  public boolean isKnown(Reckoning reckoning) {
    return way.keys().stream().allMatch(key -> reckoning.of(key) instanceof Outcome.Known);
  }

  /** What the wrong way comes to, in SI; may be anything, infinite or no number too. */
  public double value(Reckoning reckoning) {
    return way.value(key -> ((Outcome.Known) reckoning.of(key)).si());
  }

  Slip with(Wording words) {
    return new Slip(way, words, worth);
  }
}
