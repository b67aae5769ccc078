package ringbook.exercises;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringbook.ledger.Outcome;
import ringbook.ledger.Quantity;
import ringbook.ledger.Reckoning;
import ringbook.ledger.Working;

/**
 * The whole way to an answer: the working of what is asked for, and before it the working of every
 * quantity it needs that neither the scene states nor the question tells.
 */
final class Workings {

  private final Reckoning reckoning;
  private final String told;
  private final Map<String, Working> found = new LinkedHashMap<>();

  private Workings(Reckoning reckoning, String told) {
    this.reckoning = reckoning;
    this.told = told;
  }

  /** The workings in the order a person would do them, each once; that of {@code key} is last. */
  static List<Working> of(Exercise exercise, String key) {
    Workings workings = new Workings(exercise.reckoning(), exercise.ask().markdown());
    workings.add(key);
    return new ArrayList<>(workings.found.values());
  }

  private void add(String key) {
    for (String input : reckoning.ledger().get(key).inputs()) {
      boolean given =
          reckoning.ledger().get(input).definition() instanceof Quantity.Given || isTold(input);
      if (!given && !found.containsKey(input) && reckoning.of(input) instanceof Outcome.Known) {
        add(input);
      }
    }
    found.put(key, Working.of(reckoning, key));
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
