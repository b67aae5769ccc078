package ringbook.assess.coverage;

import ringbook.assess.MatchSurvival;
import ringbook.units.Angle;
import ringbook.units.Num;

/**
 * {@link MatchSurvival#alike} of two lines of sight, read from a table over their chord (the
 * distance of the ends of two directions of length 1), because it is asked for millions of pairs.
 * The straight lines between its {@value #STEPS} steps are off by less than 1e-5.
 */
final class Alike {

  private static final int STEPS = 1024;

  private final double[] table = new double[STEPS + 2];

  Alike(Angle decay) {
    for (int i = 0; i <= STEPS; i++) {
      table[i] = MatchSurvival.alike(turn(2.0 * i / STEPS), decay);
    }
    table[STEPS + 1] = table[STEPS];
  }

  /** The angle whose chord it is, {@code 2 asin(c / 2)}. */
  static Angle turn(double chord) {
    return new Angle(2 * Num.asin(Math.min(1, chord / 2)));
  }

  /** The chord of an angle. */
  static double chord(Angle turn) {
    return 2 * Num.sin(turn.radians() / 2);
  }

  double at(double chord) {
    double place = Math.min(chord, 2) * (STEPS / 2.0);
    int step = (int) place;
    double share = place - step;
    return table[step] + share * (table[step + 1] - table[step]);
  }
}
