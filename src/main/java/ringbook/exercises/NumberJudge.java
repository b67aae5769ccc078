package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.ledger.Quantity;
import ringbook.units.Dimension;
import ringbook.units.Measure;
import ringbook.units.Num;
import ringbook.units.Unit;

/** Judges an answer that should be a number with a unit. */
final class NumberJudge {

  private static final List<String> INFINITE =
      List.of("∞", "infinity", "infinite", "inf", "to infinity", "unlimited", "no limit");

  private final Quantity quantity;
  private final double truthSi;
  private final OptionalDouble stated;

  NumberJudge(Quantity quantity, double truthSi, OptionalDouble stated) {
    this.quantity = quantity;
    this.truthSi = truthSi;
    this.stated = stated;
  }

  Verdict judge(String written) {
    String folded = Plain.folded(written);
    boolean endless = INFINITE.contains(folded) || folded.startsWith("∞");
    if (endless || Math.abs(truthSi) == Double.POSITIVE_INFINITY) {
      return judgeEndless(endless, written);
    }
    Reading reading = Reading.of(written, dimension());
    if (reading instanceof Reading.Read read) {
      return read.measure().unit() == Unit.PART
          ? judgeBare(read.measure().number(), written)
          : judge(read.measure(), written);
    }
    if (reading instanceof Reading.MissingUnit missing) {
      return judgeBare(missing.number(), written);
    }
    return unread(reading);
  }

  private Verdict judgeEndless(boolean endless, String written) {
    if (endless) {
      return truthSi == Double.POSITIVE_INFINITY
          ? new Verdict.Right()
          : new Verdict.Off(OptionalDouble.empty());
    }
    Reading reading = Reading.of(written, dimension());
    return reading instanceof Reading.Read || reading instanceof Reading.MissingUnit
        ? new Verdict.Off(OptionalDouble.empty())
        : unread(reading);
  }

  private Verdict unread(Reading reading) {
    return reading instanceof Reading.OtherKind other
        ? new Verdict.WrongKind(dimension(), other.given())
        : new Verdict.Unreadable(((Reading.Unreadable) reading).why());
  }

  private Verdict judge(Measure measure, String written) {
    if (isRight(measure, written)) {
      return new Verdict.Right();
    }
    return dimension() == Dimension.COUNT ? count(measure) : wrong(measure, written);
  }

  /** A number without a unit: right as it is, or right if one unit is added, or neither. */
  private Verdict judgeBare(double number, String written) {
    if (!UnitNeed.of(dimension())) {
      return judge(new Measure(number, quantity.unit()), written);
    }
    if (dimension() == Dimension.SHARE && isRight(new Measure(number, Unit.PART), written)) {
      return new Verdict.Right(); // "0.75" is a share as it stands, "75" lacks its per cent sign
    }
    Optional<Unit> fits = Optional.empty();
    for (Unit unit : units()) {
      if (fits.isEmpty() && isRight(new Measure(number, unit), written)) {
        fits = Optional.of(unit);
      }
    }
    return new Verdict.UnitMissing(fits);
  }

  private Verdict count(Measure measure) {
    double difference = measure.si() - truthSi;
    if (measure.si() != Num.round(measure.si())) {
      return new Verdict.NotWhole();
    }
    return Math.abs(difference) == 1 ? new Verdict.OneOff(difference > 0) : off(measure);
  }

  private Verdict wrong(Measure measure, String written) {
    if (isRight(scaled(measure, -1), written)) {
      return new Verdict.SignTurned();
    }
    for (int factor : new int[] {10, 100, 1000}) {
      if (isRight(scaled(measure, 1.0 / factor), written)) {
        return new Verdict.Tenfold(factor, true);
      }
      if (isRight(scaled(measure, factor), written)) {
        return new Verdict.Tenfold(factor, false);
      }
    }
    if (tolerance().isNear(quantity.unit().fromSi(measure.si()))) {
      return new Verdict.RoundedEarly();
    }
    for (Unit unit : units()) {
      if (unit != measure.unit() && isRight(new Measure(measure.number(), unit), written)) {
        return new Verdict.UnitSwapped(measure.unit(), unit);
      }
    }
    return off(measure);
  }

  private Verdict off(Measure measure) {
    double ratio = measure.si() / truthSi;
    boolean telling = ratio > 0 && ratio < Double.POSITIVE_INFINITY;
    return new Verdict.Off(telling ? OptionalDouble.of(ratio) : OptionalDouble.empty());
  }

  private boolean isRight(Measure measure, String written) {
    if (dimension() == Dimension.COUNT) {
      return measure.si() == Num.round(truthSi);
    }
    LastDigit last = LastDigit.of(written, measure.number());
    double perUnit = quantity.unit().fromSi(measure.unit().toSi(1));
    return tolerance()
        .accepts(
            quantity.unit().fromSi(measure.si()),
            new LastDigit(last.digits(), last.half() * perUnit));
  }

  private Tolerance tolerance() {
    return Tolerance.of(quantity, truthSi, stated);
  }

  /** The units of what is asked for, the printed one first. */
  private List<Unit> units() {
    List<Unit> units = new ArrayList<>();
    units.add(quantity.unit());
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension() && unit != quantity.unit()) {
        units.add(unit);
      }
    }
    return units;
  }

  private Dimension dimension() {
    return quantity.unit().dimension();
  }

  private static Measure scaled(Measure measure, double factor) {
    return new Measure(measure.number() * factor, measure.unit());
  }
}
