package ringbook.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.units.Dimension;
import ringbook.units.Measure;
import ringbook.units.MeasureReader;
import ringbook.units.MeasureReading;
import ringbook.units.NumberStyle;
import ringbook.units.Unit;

/** Judges an answer that should be a number with a unit. */
final class NumberJudge {

  private static final List<String> INFINITE =
      List.of("∞", "infinity", "infinite", "inf", "to infinity", "unlimited", "no limit");

  private final Quantity quantity;
  private final double truthSi;
  private final Tolerance tolerance;
  private final NumberTask task;
  private final Reckoning reckoning;
  private List<Optional<Tolerance>> slips = List.of();

  NumberJudge(NumberTask task, Reckoning reckoning) {
    this.quantity = task.entry(reckoning);
    this.truthSi = task.truth(reckoning);
    this.tolerance = Tolerance.of(quantity, truthSi, task.tolerance());
    this.task = task;
    this.reckoning = reckoning;
  }

  /**
   * Judges answers for the right value of what is wrong in {@code fault}; all of {@code spreadSi}
   * is as good as that value.
   */
  NumberJudge(FaultTask fault, Spread spreadSi, Reckoning reckoning) {
    this.quantity = reckoning.ledger().get(fault.wrongItem().like());
    this.truthSi = fault.truth(reckoning);
    this.task = new NumberTask(quantity.key(), fault.tolerance());
    this.tolerance = Tolerance.of(quantity, truthSi, spreadSi, fault.tolerance());
    this.reckoning = reckoning;
  }

  Verdict judge(String written) {
    String folded = Plain.folded(written);
    if (INFINITE.contains(folded) || folded.startsWith("∞")) {
      return truthSi == Double.POSITIVE_INFINITY
          ? new Verdict.Right()
          : new Verdict.Off(OptionalDouble.empty());
    }
    Verdict verdict = judge(read(written, NumberStyle.EITHER), written);
    return verdict instanceof Verdict.Unreadable || verdict instanceof Verdict.NotWhole
        ? better(verdict, written)
        : verdict;
  }

  /** "1,500 mm" can be read in two ways; the learner gets the better one. */
  private Verdict better(Verdict verdict, String written) {
    Verdict point = judge(read(written, NumberStyle.POINT), written);
    Verdict comma = judge(read(written, NumberStyle.COMMA), written);
    Verdict best = worth(comma) > worth(point) ? comma : point;
    boolean thousands = // things are counted in wholes, so that the comma parts them
        dimension() == Dimension.COUNT && verdict instanceof Verdict.Unreadable;
    return worth(best) > 0 ? best : thousands ? point : verdict;
  }

  private int worth(Verdict verdict) {
    return verdict instanceof Verdict.SlipMade slip
        ? 1 + task.slips().get(slip.index()).worth().quarters()
        : Credit.of(verdict).quarters();
  }

  private MeasureReading read(String written, NumberStyle style) {
    return MeasureReader.read(written, dimension(), style);
  }

  private Verdict judge(MeasureReading reading, String written) {
    if (reading instanceof MeasureReading.WrongKind other) {
      return new Verdict.WrongKind(dimension(), other.found().dimension());
    }
    if (reading instanceof MeasureReading.Unreadable unreadable) {
      return isPartOfThing(written)
          ? new Verdict.NotWhole()
          : new Verdict.Unreadable(
              Plain.line(unreadable.message()),
              Plain.line(unreadable.help(reckoning.scene().aim().lengths())));
    }
    if (Math.abs(truthSi) == Double.POSITIVE_INFINITY) {
      return new Verdict.Off(OptionalDouble.empty());
    }
    if (reading instanceof MeasureReading.MissingUnit missing) {
      return judgeBare(missing.number(), written);
    }
    Measure measure = ((MeasureReading.Read) reading).measure();
    return measure.unit() == Unit.PART ? judgePart(measure, written) : judge(measure, written);
  }

  /** Whether a number with a fraction stands where things are counted. */
  private boolean isPartOfThing(String written) {
    if (dimension() != Dimension.COUNT) {
      return false;
    }
    MeasureReading plain = MeasureReader.read(written, Dimension.RATIO, NumberStyle.EITHER);
    return plain instanceof MeasureReading.Read
        || (plain instanceof MeasureReading.WrongKind other && other.found() == Unit.PIECE);
  }

  /** "0.75" is a share as it stands; "0.5" may lack its per cent sign. */
  private Verdict judgePart(Measure measure, String written) {
    Verdict asItStands = judge(measure, written);
    Measure percent = new Measure(measure.number(), Unit.PERCENT);
    return !(asItStands instanceof Verdict.Right) && isRight(percent, written)
        ? new Verdict.UnitMissing(Optional.of(Unit.PERCENT))
        : asItStands;
  }

  private Verdict judge(Measure measure, String written) {
    if (isRight(measure, written)) {
      return new Verdict.Right();
    }
    List<Optional<Tolerance>> ways = slips();
    for (int i = 0; i < ways.size(); i++) {
      if (ways.get(i).isPresent() && fits(ways.get(i).get(), measure, written)) {
        return new Verdict.SlipMade(i);
      }
    }
    return dimension() == Dimension.COUNT ? count(measure) : wrong(measure, written);
  }

  /** What the wrong ways come to; worked out only when an answer is not right, and then once. */
  private List<Optional<Tolerance>> slips() {
    if (slips.size() < task.slips().size()) {
      slips = task.slips().stream().map(this::slip).toList();
    }
    return slips;
  }

  private Optional<Tolerance> slip(Slip slip) {
    double value = slip.isKnown(reckoning) ? slip.value(reckoning) : Double.NaN;
    return Math.abs(value) < Double.POSITIVE_INFINITY
        ? Optional.of(Tolerance.of(quantity, value, task.tolerance()))
        : Optional.empty();
  }

  /** A number without the unit it needs: right if one unit is added, or not at all. */
  private Verdict judgeBare(double number, String written) {
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
    if (tolerance.isNear(quantity.unit().fromSi(measure.si()))) {
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
    return fits(tolerance, measure, written);
  }

  private boolean fits(Tolerance wanted, Measure measure, String written) {
    double answer = quantity.unit().fromSi(measure.si());
    if (dimension() == Dimension.COUNT) {
      return wanted.counts(answer);
    }
    LastDigit last = LastDigit.of(written, measure.number());
    double perUnit = quantity.unit().fromSi(measure.unit().toSi(1));
    return wanted.accepts(answer, new LastDigit(last.digits(), last.half() * perUnit));
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
