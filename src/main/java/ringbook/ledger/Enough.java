package ringbook.ledger;

import ringbook.units.Num;
import ringbook.units.Whole;

/** Numbers in an advice: rounded up, so that whoever follows it is on the safe side. */
final class Enough {

  private Enough() {}

  /** A number above 0 of the kind of {@code key}, up to the next two significant digits. */
  static String text(Reckoning r, String key, double si) {
    Quantity quantity = r.ledger().get(key);
    if (quantity.isInInches()) {
      return LengthText.of(quantity, si, true);
    }
    double number = quantity.unit().fromSi(si);
    double step = Num.pow(10, Math.floor(Num.log(number) / Num.log(10)) - 1);
    return quantity.text(quantity.unit().toSi(Whole.up(number / step) * step));
  }
}
