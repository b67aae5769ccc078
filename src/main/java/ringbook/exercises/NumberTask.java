package ringbook.exercises;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Dimension;
import ringbook.units.Numbers;

/**
 * Asks for a quantity of the ledger on the exercise's scene.
 *
 * @param quantity its key
 * @param tolerance how far an answer may be off, as a share of the true value, above 0 and at most
 *     {@link #WIDEST_TOLERANCE}; empty for what the ledger's rounding gives
 * @param slips typical wrong ways. Where one cannot be told from the right way or from an earlier
 *     slip on the exercise's scene, it is passed over: another group's kit must not break the
 *     exercise
 */
public record NumberTask(String quantity, OptionalDouble tolerance, List<Slip> slips)
    implements Task {

  /** Beyond this a doubled answer could not be told from a right one. */
  public static final double WIDEST_TOLERANCE = 0.25;

  public NumberTask {
    slips = List.copyOf(slips);
    if (tolerance.isPresent()
        && !(tolerance.getAsDouble() > 0 && tolerance.getAsDouble() <= WIDEST_TOLERANCE)) {
      throw new IllegalArgumentException(
          "tolerance out of range: " + Numbers.shortest(tolerance.getAsDouble()));
    }
  }

  /** A task without slips. */
  public NumberTask(String quantity, OptionalDouble tolerance) {
    this(quantity, tolerance, List.of());
  }

  @Override
  public <T> T show(Cases<T> cases) {
    return cases.number(this);
  }

  @Override
  public void check(Reckoning reckoning) {
    if (reckoning.of(quantity) instanceof Outcome.Refused refused) {
      throw new IllegalArgumentException(quantity + " has no value: " + refused.reason());
    }
    if (entry(reckoning).unit().dimension() == Dimension.YES_NO) {
      throw new IllegalArgumentException(quantity + " is no number but yes or no");
    }
  }

  @Override
  public String answerHint(Reckoning reckoning) {
    Dimension dimension = entry(reckoning).unit().dimension();
    if (dimension == Dimension.SHARE) {
      return "a share, in per cent";
    }
    return dimension.noun() + (UnitNeed.of(dimension) ? ", with its unit" : "");
  }

  @Override
  public String answerText(Reckoning reckoning) {
    return entry(reckoning).answerText(truth(reckoning));
  }

  @Override
  public NumberTask worded(UnaryOperator<Wording> change) {
    return new NumberTask(
        quantity,
        tolerance,
        slips.stream().map(slip -> slip.with(change.apply(slip.says()))).toList());
  }

  @Override
  public Optional<String> asked() {
    return Optional.of(quantity);
  }

  @Override
  public Optional<String> blur(Reckoning reckoning) {
    return SlipsApart.fault(this, reckoning);
  }

  @Override
  public Verdict judge(String written, Reckoning reckoning) {
    return new NumberJudge(this, reckoning).judge(written);
  }

  /** The entry of the ledger that is asked for. */
  public Quantity entry(Reckoning reckoning) {
    return reckoning.ledger().get(quantity);
  }

  /** The true value, in SI; infinite only where the entry allows it. */
  public double truth(Reckoning reckoning) {
    return ((Outcome.Known) reckoning.of(quantity)).si();
  }
}
