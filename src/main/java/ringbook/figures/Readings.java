package ringbook.figures;

import java.util.ArrayList;
import java.util.List;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.units.Lengths;

/** What a figure reads from the ledger, and the table that tells it in numbers. */
final class Readings {

  static final List<String> HEAD = List.of("Quantity", "Value");

  private final Reckoning reckoning;
  private final List<List<String>> rows = new ArrayList<>();

  Readings(Reckoning reckoning) {
    this.reckoning = reckoning;
  }

  /** The number in SI; a refusal goes on to whoever asked for the figure. */
  double si(String key) {
    return reckoning.si(key);
  }

  /** In which measures lengths are told. */
  Lengths lengths() {
    return reckoning.scene().aim().lengths();
  }

  boolean known(String key) {
    return reckoning.of(key) instanceof Outcome.Known;
  }

  boolean yes(String key) {
    return known(key) && reckoning.si(key) != 0;
  }

  /** As the ledger prints it, or the reason why not. */
  String text(String key) {
    return reckoning.text(key);
  }

  /** A number of things with a regular plural: {@code 1 run}, {@code 5 runs}. */
  String count(String key, String one) {
    return text(key) + " " + one + (known(key) && si(key) == 1 ? "" : "s");
  }

  /** Adds the ledger's names and texts to the table. */
  void tabulate(String... keys) {
    for (String key : keys) {
      row(Sentence.capital(reckoning.ledger().get(key).name()), text(key));
    }
  }

  /** Adds a row of its own to the table. */
  void row(String what, String value) {
    rows.add(List.of(what, value));
  }

  Figure figure(SvgWriter svg, String title, String description) {
    return new Figure(title, description, svg.svg(title, description), HEAD, rows);
  }
}
