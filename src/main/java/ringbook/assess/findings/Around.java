package ringbook.assess.findings;

import java.util.Arrays;
import ringbook.units.Angle;

/**
 * The arc of directions that some points take up, as seen from above.
 *
 * @param from where it begins, from +x towards +y
 * @param width how far it runs on; a full turn if it has no gap worth naming
 */
record Around(Angle from, Angle width) {

  /** A gap narrower than this is none. */
  private static final double GAP = Angle.ofDegrees(40).radians();

  /** Of directions in radians; at least one. */
  static Around of(double[] radians) {
    double[] all = radians.clone();
    double full = Angle.FULL_TURN.radians();
    for (int i = 0; i < all.length; i++) {
      all[i] -= full * Math.floor(all[i] / full);
    }
    Arrays.sort(all);
    int last = all.length - 1;
    int widest = last;
    double gap = all[0] + full - all[last];
    for (int i = 0; i < last; i++) {
      if (all[i + 1] - all[i] > gap) {
        gap = all[i + 1] - all[i];
        widest = i;
      }
    }
    double from = all[widest == last ? 0 : widest + 1];
    return gap < GAP
        ? new Around(Angle.ZERO, Angle.FULL_TURN)
        : new Around(new Angle(from), new Angle(full - gap));
  }

  boolean isAll() {
    return width.compareTo(Angle.FULL_TURN) >= 0;
  }

  Angle to() {
    return from.plus(width);
  }

  Angle middle() {
    return from.plus(width.times(0.5));
  }

  /** Wider by so much on both sides. */
  Around grown(Angle by) {
    Angle grown = width.plus(by.times(2));
    return grown.compareTo(Angle.FULL_TURN) >= 0
        ? new Around(Angle.ZERO, Angle.FULL_TURN)
        : new Around(from.minus(by), grown);
  }

  String words() {
    return isAll()
        ? "all round"
        : "between "
            + Say.direction(from)
            + " and "
            + Say.direction(to())
            + " ("
            + Say.side(middle())
            + " on the ring plan)";
  }
}
