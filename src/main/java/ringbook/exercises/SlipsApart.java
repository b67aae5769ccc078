package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Dimension;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.Num;
import ringbook.units.NumberStyle;
import ringbook.units.Numbers;

/** Whether the slips of a number question can be told from its answer and from each other. */
final class SlipsApart {

  /** Rounding to two significant digits changes a number by less than this share. */
  private static final double TWO_DIGITS = 0.06;

  private final Quantity quantity;
  private final OptionalDouble stated;

  private SlipsApart(Quantity quantity, OptionalDouble stated) {
    this.quantity = quantity;
    this.stated = stated;
  }

  /** The first pair that cannot be told apart on this scene, in words. */
  static Optional<String> fault(NumberTask task, Reckoning reckoning) {
    SlipsApart apart = new SlipsApart(task.entry(reckoning), task.tolerance());
    List<Double> values = new ArrayList<>();
    values.add(task.truth(reckoning));
    for (Slip slip : task.slips()) {
      double value = slip.isKnown(reckoning) ? slip.value(reckoning) : Double.NaN;
      for (int other = 0; other < values.size(); other++) {
        if (apart.same(values.get(other), value)) {
          return Optional.of(
              "slip "
                  + values.size()
                  + " gives the same as "
                  + (other == 0 ? "the right way: " : "slip " + other + ": ")
                  + apart.quantity.text(value));
        }
      }
      values.add(value);
    }
    return Optional.empty();
  }

  /**
   * Whether {@code wrong} passes for right, or the right value for wrong, where {@code quantity} is
   * asked for and all of {@code spread} is as good as {@code right}. All in SI.
   *
   * @param stated the tolerance that the author stated
   */
  static boolean same(
      Quantity quantity, double right, Spread spread, double wrong, OptionalDouble stated) {
    SlipsApart apart = new SlipsApart(quantity, stated);
    if (!(Math.abs(wrong) < Double.POSITIVE_INFINITY)) {
      return false;
    }
    Tolerance tolerance = Tolerance.of(quantity, right, spread, stated);
    return quantity.unit().dimension() == Dimension.COUNT
        ? tolerance.counts(Num.round(quantity.unit().fromSi(wrong)))
        : apart.isTaken(tolerance, wrong) || apart.isTaken(wrong, right);
  }

  private boolean same(double one, double other) {
    boolean numbers =
        Math.abs(one) < Double.POSITIVE_INFINITY && Math.abs(other) < Double.POSITIVE_INFINITY;
    if (!numbers) {
      return false;
    }
    double first = quantity.unit().fromSi(one);
    double second = quantity.unit().fromSi(other);
    if (quantity.unit().dimension() == Dimension.COUNT) {
      return Num.round(first) == Num.round(second);
    }
    return isTaken(one, other) || isTaken(other, one);
  }

  /** Whether {@code answer}, printed or rounded as far as is allowed, passes for {@code truth}. */
  private boolean isTaken(double truth, double answer) {
    return isTaken(Tolerance.of(quantity, truth, stated), answer);
  }

  private boolean isTaken(Tolerance tolerance, double answer) {
    double inUnit = quantity.unit().fromSi(answer);
    if (tolerance.takes(inUnit) || inUnit == 0) {
      return tolerance.takes(inUnit);
    }
    double rounding = Math.max(2 * quantity.slack(inUnit), TWO_DIGITS * Math.abs(inUnit));
    if (tolerance.isBeyond(inUnit, rounding)) {
      return false; // nearly always, and printing takes long
    }
    String printed = quantity.number(answer);
    String rounded = Numbers.significant(inUnit, 2);
    return accepts(tolerance, printed) || accepts(tolerance, rounded);
  }

  private static boolean accepts(Tolerance tolerance, String written) {
    return MeasureReader.read(written, Dimension.RATIO, NumberStyle.POINT)
            instanceof MeasureReading.Read read
        && tolerance.accepts(
            read.measure().number(), LastDigit.of(written, read.measure().number()));
  }
}
