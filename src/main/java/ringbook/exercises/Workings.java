package ringbook.exercises;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringbook.ledger.Formula;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.ledger.RefusedException;
import ringbook.ledger.Working;

/**
 * The whole way to an answer: the working of what is asked for, and before it the working of every
 * quantity it needs that neither the scene states nor the question tells. What counts no times, as
 * the photographs of a second pose where there is none, is not worked out.
 */
final class Workings {

  /** So far off no rounding and no limit hides that a number counts. */
  private static final double FAR = 1e6;

  private final Reckoning reckoning;
  private final String told;
  private final List<String> listed;
  private final Map<String, Working> found = new LinkedHashMap<>();

  private Workings(Exercise exercise) {
    this.reckoning = exercise.reckoning();
    this.told = exercise.ask().markdown();
    this.listed = exercise.task().listed();
  }

  /** The workings in the order a person would do them, each once; that of {@code key} is last. */
  static List<Working> of(Exercise exercise, String key) {
    Workings workings = new Workings(exercise);
    workings.add(key);
    return new ArrayList<>(workings.found.values());
  }

  private void add(String key) {
    for (String input : reckoning.ledger().get(key).inputs()) {
      boolean given =
          reckoning.ledger().get(input).definition() instanceof Quantity.Given
              || listed.contains(input)
              || isTold(input);
      if (!given
          && !found.containsKey(input)
          && reckoning.of(input) instanceof Outcome.Known
          && counts(input, key)) {
        add(input);
      }
    }
    found.put(key, Working.of(reckoning, key));
  }

  /** Whether any value of {@code input} would make another {@code key}. */
  private boolean counts(String input, String key) {
    Optional<Formula> formula = reckoning.ledger().get(key).formula();
    boolean known =
        formula.stream()
            .flatMap(f -> f.keys().stream())
            .allMatch(k -> reckoning.of(k) instanceof Outcome.Known);
    if (formula.isEmpty() || !known) {
      return true;
    }
    double si = reckoning.si(input);
    double usual = value(formula.get(), input, si);
    for (double other : new double[] {0, 1, FAR * si, -FAR * si}) {
      if (value(formula.get(), input, other) != usual) {
        return true;
      }
    }
    return false;
  }

  /** The formula with another value of one input; no number where it does not hold. */
  private double value(Formula formula, String input, double si) {
    try {
      return formula.value(key -> key.equals(input) ? si : reckoning.si(key));
    } catch (RefusedException refused) {
      return Double.NaN;
    }
  }

  /** Whether the question holds the value: <code>${key}</code>, with anything behind the key. */
  private boolean isTold(String key) {
    String opened = "${" + key;
    int at = told.indexOf(opened);
    while (at >= 0) {
      int end = at + opened.length();
      if (end == told.length() || !isLetterOrDigit(told.charAt(end))) {
        return true;
      }
      at = told.indexOf(opened, end);
    }
    return false;
  }

  private static boolean isLetterOrDigit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
  }
}
