package ringbook.figures;

import java.util.Map;
import java.util.TreeMap;
import ringbook.ledger.Formula;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;

/**
 * Entries of the ledger over a range: what they would come to if some entries had other values than
 * the scene gives them. Worked out by the ledger's own formulas.
 */
final class Curve {

  private final Reckoning reckoning;
  private final Map<String, Double> instead;

  private Curve(Reckoning reckoning, Map<String, Double> instead) {
    this.reckoning = reckoning;
    this.instead = instead;
  }

  /** The ledger with {@code key} at {@code si}. */
  static Curve with(Reckoning reckoning, String key, double si) {
    return new Curve(reckoning, Map.of(key, si));
  }

  /** The same with one more entry changed. */
  Curve and(String key, double si) {
    Map<String, Double> more = new TreeMap<>(instead);
    more.put(key, si);
    return new Curve(reckoning, more);
  }

  /**
   * The number in SI.
   *
   * @throws ringbook.ledger.RefusedException if an entry it needs is refused
   */
  double si(String key) {
    Double given = instead.get(key);
    if (given != null) {
      return given;
    }
    if (!hangsOnChange(key)) {
      return reckoning.si(key);
    }
    Quantity quantity = reckoning.ledger().get(key);
    Formula formula =
        quantity
            .formula()
            .orElseThrow(() -> new IllegalStateException(key + " has no formula to vary"));
    return formula.value(this::si);
  }

  /** As the ledger prints it. */
  String text(String key) {
    return reckoning.ledger().get(key).text(si(key));
  }

  private boolean hangsOnChange(String key) {
    if (instead.containsKey(key)) {
      return true;
    }
    for (String input : reckoning.ledger().get(key).inputs()) {
      if (hangsOnChange(input)) {
        return true;
      }
    }
    return false;
  }
}
