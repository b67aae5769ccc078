package ringbook.assess;

import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * How many of the spots that two photographs share can still be recognised in both. The look of a
 * spot changes with the turn, whatever the object; texture sets how many spots there are to begin
 * with.
 *
 * <p>A model fitted to the measured rings of {@link TurnSurvival}; decays of 16° to 23° fit them.
 * Common local features only: other ways of matching have other decays.
 */
public final class MatchSurvival {

  private MatchSurvival() {}

  /**
   * Share of spots that still look alike after a turn: {@code exp(−t / τ)}.
   *
   * @param turn t, at least 0
   * @param decay τ, above 0: the turn after which 1/e, about 37 %, are left
   */
  public static double alike(Angle turn, Angle decay) {
    return Num.exp(-turn.radians() / decay.radians());
  }

  /**
   * Share of the spots in one photograph that can be matched in its neighbour: seen by both ({@link
   * SharedSurface#ofCaps}) and still alike.
   */
  public static double matchable(Angle turn, Angle limit, Angle decay) {
    return SharedSurface.ofCaps(turn, limit) * alike(turn, decay);
  }

  /** The turn after which half of the spots no longer look alike: {@code τ ln 2}. */
  public static Angle halving(Angle decay) {
    return decay.times(Num.log(2));
  }
}
