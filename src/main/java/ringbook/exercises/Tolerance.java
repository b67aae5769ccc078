package ringbook.exercises;

import java.util.OptionalDouble;
import ringbook.ledger.Quantity;
import ringbook.units.Num;

/**
 * How far from the true value an answer still counts as right, and as near. All in the unit the
 * quantity is printed in.
 *
 * <p>Right is what lies within the tolerance the author stated, or else within one whole step of
 * the last digit the course prints (a learner who goes on with printed numbers is often one step
 * off), but no more than {@link #KIND} of the value where the steps are coarse. What the course
 * itself prints is always right. So is a number the learner rounded properly, to two significant
 * digits at least or to as many as the course prints, but never one that is off by more than {@link
 * NumberTask#WIDEST_TOLERANCE}. Near is what lies within {@link #NEAR}, or within twice the
 * tolerance stated. Common practice, no source.
 *
 * @param truth the true value, finite
 * @param spread what is as good as true, and so is what lies between: the true value, and what
 *     comes out with {@link PrintedNumbers}
 * @param slack right within this
 * @param near near within this
 * @param digits significant digits a rounded answer must have
 */
record Tolerance(double truth, Spread spread, double slack, double near, int digits) {

  private static final double KIND = 0.05;
  private static final double NEAR = 0.05;

  /** Forgives what binary fractions add, far below anything printed. */
  private static final double BINARY = 1e-9;

  static Tolerance of(Quantity quantity, double truthSi, OptionalDouble stated) {
    return of(quantity, truthSi, Spread.of(truthSi), stated);
  }

  /** The same where all of {@code spreadSi}, which has the true value in it, is as good as true. */
  static Tolerance of(Quantity quantity, double truthSi, Spread spreadSi, OptionalDouble stated) {
    double truth = quantity.unit().fromSi(truthSi);
    double size = Math.abs(truth);
    double printed = quantity.slack(truth);
    double wanted =
        stated.isPresent() ? stated.getAsDouble() * size : Math.min(2 * printed, KIND * size);
    double slack = Math.max(printed, wanted);
    double near = Math.max(slack, Math.max(NEAR * size, 2 * stated.orElse(0) * size));
    int digits = LastDigit.significant(quantity.number(truthSi));
    Spread spread =
        new Spread(quantity.unit().fromSi(spreadSi.low()), quantity.unit().fromSi(spreadSi.high()));
    return new Tolerance(truth, spread, slack, near, Math.max(1, Math.min(2, digits)));
  }

  /** Whether it is right to have counted {@code answer} things. */
  boolean counts(double answer) {
    return answer >= Num.round(spread.low()) && answer <= Num.round(spread.high());
  }

  /**
   * Whether the answer is right.
   *
   * @param answer in the unit the quantity is printed in
   * @param written how finely it was written, in the same unit
   */
  boolean accepts(double answer, LastDigit written) {
    double rounded = Math.min(written.half(), NumberTask.WIDEST_TOLERANCE * Math.abs(truth));
    double allowed = written.digits() >= digits ? Math.max(slack, rounded) : slack;
    return within(answer, allowed);
  }

  /**
   * Whether the answer is wrong however it is written, once rounded by at most {@code rounding}.
   */
  boolean isBeyond(double answer, double rounding) {
    double most = Math.max(slack, NumberTask.WIDEST_TOLERANCE * Math.abs(truth));
    return !within(answer, most + rounding);
  }

  /** Whether the answer is right, written out in full. */
  boolean takes(double answer) {
    return within(answer, slack);
  }

  /** Whether the answer is near. */
  boolean isNear(double answer) {
    return within(answer, near);
  }

  private boolean within(double answer, double allowed) {
    double off = Math.max(spread.low() - answer, answer - spread.high());
    return off <= allowed + BINARY * (Math.abs(truth) + allowed);
  }
}
