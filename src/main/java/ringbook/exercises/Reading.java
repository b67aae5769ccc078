package ringbook.exercises;

import java.util.OptionalDouble;
import ringbook.units.Decimal;
import ringbook.units.Dimension;
import ringbook.units.Measure;
import ringbook.units.Unit;

/** What stands in an answer: a number in a unit of the kind asked for, or why there is none. */
sealed interface Reading {
  record Read(Measure measure) implements Reading {}

  record MissingUnit(double number) implements Reading {}

  record OtherKind(Dimension given) implements Reading {}

  record Unreadable(String why) implements Reading {}

  static Reading of(String text, Dimension asked) {
    String rest = Plain.trimmed(text);
    if (rest.startsWith("f/") || rest.startsWith("F/")) {
      OptionalDouble n = Decimal.parse(rest.substring(2));
      return n.isEmpty()
          ? new Unreadable("")
          : asked == Dimension.F_NUMBER
              ? new Read(new Measure(n.getAsDouble(), Unit.F_STOP))
              : new OtherKind(Dimension.F_NUMBER);
    }
    int to = 0;
    while (to < rest.length() && "0123456789.,-−+".indexOf(rest.charAt(to)) >= 0) {
      to++;
    }
    OptionalDouble n = Decimal.parse(rest.substring(0, to).replace(',', '.').replace('−', '-'));
    if (n.isEmpty()) {
      return new Unreadable("");
    }
    String unit = Plain.trimmed(rest.substring(to));
    Unit other = null;
    for (Unit u : Unit.values()) {
      if (u.symbol().equals(unit) || u.spellings().contains(unit)) {
        if (u.dimension() == asked) {
          return new Read(new Measure(n.getAsDouble(), u));
        }
        other = u;
      }
    }
    if (unit.isEmpty()) {
      return new MissingUnit(n.getAsDouble());
    }
    return other == null ? new Unreadable("") : new OtherKind(other.dimension());
  }
}
