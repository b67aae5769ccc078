package ringbook.ledger;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import ringbook.units.Decimal;

/**
 * The numbers that stand in a formula when it is shown with numbers: as the ledger prints them and,
 * where the printed result would not come out of those, with up to three digits more. So "3 × 20
 * min = 61 min" is shown as "3 × 20.4 min = 61 min".
 */
final class PutIn {

  private static final int MOST_MORE = 3;

  private final Map<String, String> numbers = new LinkedHashMap<>();

  /**
   * The numbers for one quantity.
   *
   * @param formula its formula; everything it names must be known
   */
  PutIn(Reckoning reckoning, Quantity quantity, Formula formula) {
    int more = 0;
    if (reckoning.of(quantity.key()) instanceof Outcome.Known result) {
      String wanted = quantity.number(result.si());
      while (more <= MOST_MORE && !comesOut(reckoning, quantity, formula, more, wanted)) {
        more++;
      }
    }
    for (String key : quantity.inputs()) {
      // If no digits help, more of them only distract.
      numbers.put(key, printed(reckoning, key, more > MOST_MORE ? 0 : more));
    }
  }

  /** The number of an input, without its unit. */
  String number(String key) {
    return numbers.get(key);
  }

  private static boolean comesOut(
      Reckoning reckoning, Quantity quantity, Formula formula, int more, String wanted) {
    try {
      double value = formula.value(key -> value(reckoning, key, more));
      return quantity.number(value).equals(wanted);
    } catch (RefusedException refused) {
      return false; // the rounded numbers lie where the formula does not hold
    }
  }

  private static double value(Reckoning reckoning, String key, int more) {
    Quantity input = reckoning.ledger().get(key);
    double si = ((Outcome.Known) reckoning.of(key)).si();
    return input.rounding().isPlain()
        ? readBack(input, printed(reckoning, key, more), si)
        : si; // the marks of a dial stand for exact values
  }

  private static double readBack(Quantity input, String text, double si) {
    OptionalDouble read = Decimal.parse(text);
    return read.isPresent() ? input.unit().toSi(read.getAsDouble()) : si;
  }

  /** With so many digits more, unless they are all zeros. */
  private static String printed(Reckoning reckoning, String key, int more) {
    Quantity input = reckoning.ledger().get(key);
    double si = ((Outcome.Known) reckoning.of(key)).si();
    String usual = input.number(si);
    if (more == 0 || !input.rounding().isPlain()) {
      return usual;
    }
    double exact = input.unit().fromSi(si);
    OptionalDouble read = Decimal.parse(usual);
    boolean whole =
        read.isEmpty()
            || Math.abs(read.getAsDouble() - exact) <= 1e-9 * Math.max(1, Math.abs(exact));
    return whole ? usual : input.rounding().finer(more).text(exact);
  }
}
