package ringbook.exercises;

import ringbook.units.Numbers;

/**
 * What a verdict is worth: the one place where the shares stand.
 *
 * <p>The shares are this course's own choice, no source: half for an answer that is right but for
 * how it is written down, a quarter for one that shows the right way and a slip (or what the author
 * gives that slip), nothing else. Where an answer has parts, the right parts count: see the tasks.
 *
 * @param quarters 0 to 4
 */
public record Credit(int quarters) {

  public static final Credit FULL = new Credit(4);
  public static final Credit THREE_QUARTERS = new Credit(3);
  public static final Credit HALF = new Credit(2);
  public static final Credit QUARTER = new Credit(1);
  public static final Credit NONE = new Credit(0);

  public Credit {
    if (quarters < 0 || quarters > 4) {
      throw new IllegalArgumentException("credit goes from 0 to 4 quarters, got " + quarters);
    }
  }

  /** What {@code verdict} is worth. */
  public static Credit of(Verdict verdict) {
    return verdict.show(new Shares());
  }

  /**
   * {@code counting} of {@code all}, rounded down to quarters; below 0 it is nothing.
   *
   * @param all more than 0
   */
  static Credit partOf(int counting, int all) {
    return new Credit(counting <= 0 ? 0 : (int) Math.floor(4.0 * counting / all));
  }

  /** The share as a number, 1 for all. */
  public double share() {
    return quarters / 4.0;
  }

  /** The share as text: {@code 1}, {@code 0.5}, {@code 0.25}, {@code 0}. */
  public String text() {
    return text(quarters);
  }

  /** A sum of quarters as text: {@code 3.25}. */
  public static String text(int quarters) {
    return Numbers.trimmed(Numbers.fixed(quarters / 4.0, 2));
  }

  private static final class Shares implements Verdict.Cases<Credit> {
    @Override
    public Credit right() {
      return FULL;
    }

    @Override
    public Credit blank() {
      return NONE;
    }

    @Override
    public Credit unreadable(Verdict.Unreadable verdict) {
      return NONE;
    }

    @Override
    public Credit unitMissing(Verdict.UnitMissing verdict) {
      return verdict.fits().isPresent() ? HALF : NONE;
    }

    @Override
    public Credit wrongKind(Verdict.WrongKind verdict) {
      return NONE;
    }

    @Override
    public Credit slip(Verdict.SlipMade verdict) {
      return QUARTER;
    }

    @Override
    public Credit unitSwapped(Verdict.UnitSwapped verdict) {
      return QUARTER;
    }

    @Override
    public Credit tenfold(Verdict.Tenfold verdict) {
      return QUARTER;
    }

    @Override
    public Credit signTurned() {
      return QUARTER;
    }

    @Override
    public Credit roundedEarly() {
      return HALF;
    }

    @Override
    public Credit notWhole() {
      return NONE;
    }

    @Override
    public Credit oneOff(Verdict.OneOff verdict) {
      return NONE;
    }

    @Override
    public Credit off(Verdict.Off verdict) {
      return NONE;
    }

    @Override
    public Credit otherOption(Verdict.OtherOption verdict) {
      return NONE;
    }

    @Override
    public Credit noSuchOption(Verdict.NoSuchOption verdict) {
      return NONE;
    }

    @Override
    public Credit severalOff(Verdict.SeveralOff verdict) {
      return verdict.credit();
    }

    @Override
    public Credit orderOff(Verdict.OrderOff verdict) {
      return verdict.credit();
    }

    @Override
    public Credit pairsOff(Verdict.PairsOff verdict) {
      return verdict.credit();
    }

    @Override
    public Credit otherItem(Verdict.OtherItem verdict) {
      return NONE;
    }

    @Override
    public Credit valueOpen(Verdict.ValueOpen verdict) {
      return HALF;
    }

    @Override
    public Credit planOff(Verdict.PlanOff verdict) {
      return verdict.credit();
    }
  }
}
