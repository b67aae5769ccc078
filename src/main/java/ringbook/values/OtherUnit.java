package ringbook.values;

import java.util.ArrayList;
import java.util.List;
import ringbook.ledger.Quantity;
import ringbook.problems.Nearest;
import ringbook.units.Numbers;
import ringbook.units.Unit;

/** Prints a quantity in another unit than its own, to as many significant digits. */
final class OtherUnit {

  private OtherUnit() {}

  /** The unit that {@code symbol} writes, of the same dimension as {@code own}. */
  static Unit of(Unit own, String symbol) throws ExpressionFault {
    List<String> fitting = new ArrayList<>();
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == own.dimension() && !unit.symbol().isEmpty()) {
        if (unit.symbol().equals(symbol) || unit.spellings().contains(symbol)) {
          return unit;
        }
        fitting.add(unit.symbol());
      }
    }
    throw ExpressionFault.of(
        "'" + symbol + "' is no unit of " + own.dimension().noun(),
        Nearest.help(symbol, fitting),
        "\"" + symbol + "\"");
  }

  static String text(Quantity quantity, double si, Unit unit) {
    String own = quantity.number(si);
    String number =
        own.equals("∞") || own.equals("−∞")
            ? own
            : Numbers.significant(unit.fromSi(si), Math.max(1, digits(own)));
    return unit == Unit.DEGREE ? number + unit.symbol() : number + "\u00a0" + unit.symbol();
  }

  /** How many significant digits {@code number} shows. */
  private static int digits(String number) {
    int digits = 0;
    for (int i = 0; i < number.length(); i++) {
      char c = number.charAt(i);
      if ((c >= '1' && c <= '9') || (c == '0' && digits > 0)) {
        digits++;
      }
    }
    return digits;
  }
}
