package ringbook.course;

import java.util.Optional;
import ringbook.ledger.Formula;
import ringbook.ledger.Ledger;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** Reads a formula over the ledger that an author wrote into an exercise. */
final class FormulaField {

  private FormulaField() {}

  /**
   * The formula; empty, with the faults told, where it cannot be read or names what there is not.
   *
   * @param what what a message calls it, such as {@code the way}
   */
  static Optional<Formula> read(
      String what, String text, Position position, Ledger ledger, Problems problems) {
    Formula formula;
    try {
      formula = Formula.of(text);
    } catch (IllegalArgumentException unreadable) {
      problems.add(
          position,
          what + " cannot be read: " + unreadable.getMessage(),
          "write a formula over quantities, such as kit.focalLength * 2");
      return Optional.empty();
    }
    int before = problems.size();
    for (String key : formula.keys()) {
      if (ledger.find(key).isEmpty()) {
        problems.add(position, "no quantity is called '" + key + "'", nearest(key, ledger));
      }
    }
    return problems.size() > before ? Optional.empty() : Optional.of(formula);
  }

  /** How to mend a key that does not exist. */
  static String nearest(String key, Ledger ledger) {
    return Nearest.to(key, ledger.keys())
        .map(near -> "did you mean '" + near + "'?")
        .orElse("the command 'quantities' lists them all");
  }
}
