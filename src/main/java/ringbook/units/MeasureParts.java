package ringbook.units;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a measure in several units, the larger ones first: 5 ft 6 in, 1 h 30 min, 1 m 20 cm. Only
 * the last number may have a fraction. The last unit may be missing where only one can be meant: 5
 * ft 6, 1 h 30.
 */
final class MeasureParts {

  /**
   * Units that people put one behind the other, each with how many of the next it has. Hours and
   * minutes: SI brochure (9th edition 2019, table 8). Feet and inches: NIST SP 811 appendix B.
   */
  private static final List<List<Step>> LADDERS =
      List.of(
          List.of(new Step(Unit.YARD, 3), new Step(Unit.FOOT, 12), new Step(Unit.INCH, 0)),
          List.of(new Step(Unit.HOUR, 60), new Step(Unit.MINUTE, 60), new Step(Unit.SECOND, 0)),
          List.of(
              new Step(Unit.METRE, 100),
              new Step(Unit.CENTIMETRE, 10),
              new Step(Unit.MILLIMETRE, 0)));

  private final Dimension expected;
  private final NumberStyle style;

  private record Step(Unit unit, int ofNext) {}

  MeasureParts(Dimension expected, NumberStyle style) {
    this.expected = expected;
    this.style = style;
  }

  /** The measure in its smallest unit, if {@code rest} goes on from {@code first} in such units. */
  Optional<Measure> read(double first, String rest) {
    double number = Math.abs(first);
    double total = 0;
    Optional<Unit> before = Optional.empty();
    String left = rest;
    while (true) {
      int end = nextDigit(left);
      Optional<Unit> unit = unit(left.substring(0, end), before, end == left.length());
      int times = unit.isEmpty() ? 0 : times(before, unit.get());
      if (times == 0 || Math.floor(total) != total) {
        return Optional.empty();
      }
      total = total * times + number;
      if (end == left.length()) {
        return Optional.of(new Measure(first < 0 ? -total : total, unit.get()));
      }
      NumberScan scan = new NumberScan(left.substring(end), style);
      OptionalDouble next = scan.read();
      if (next.isEmpty()) {
        return Optional.empty();
      }
      number = next.getAsDouble();
      left = PlainMarks.trimmed(scan.rest());
      before = unit;
    }
  }

  private static int nextDigit(String text) {
    int at = 0;
    while (at < text.length() && !NumberScan.isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private Optional<Unit> unit(String written, Optional<Unit> before, boolean last) {
    String name = PlainMarks.trimmed(written);
    if (!last && name.endsWith(",")) {
      name = PlainMarks.trimmed(name.substring(0, name.length() - 1));
    } else if (!last && name.endsWith(" and")) {
      name = PlainMarks.trimmed(name.substring(0, name.length() - 4));
    }
    return name.isEmpty() && last ? before.flatMap(this::understood) : found(name);
  }

  private Optional<Unit> found(String name) {
    return UnitSpellings.written(name, expected);
  }

  private Optional<Unit> understood(Unit before) {
    return switch (before) {
      case FOOT -> Optional.of(Unit.INCH);
      case HOUR -> Optional.of(Unit.MINUTE);
      case MINUTE -> Optional.of(Unit.SECOND);
      default -> Optional.empty();
    };
  }

  /** How many {@code unit} the unit before has; 0 where the two do not go together. */
  private static int times(Optional<Unit> before, Unit unit) {
    for (List<Step> ladder : LADDERS) {
      int times = before.isEmpty() ? 1 : 0;
      for (Step step : ladder) {
        if (step.unit() == unit) {
          return times;
        }
        times = before.equals(Optional.of(step.unit())) ? step.ofNext() : times * step.ofNext();
      }
    }
    return 0;
  }
}
