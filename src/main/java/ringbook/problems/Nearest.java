package ringbook.problems;

import java.util.Collection;
import java.util.Optional;

/** Finds the name a person most likely meant. */
public final class Nearest {

  private Nearest() {}

  /**
   * The candidate with the smallest edit distance to {@code written}, if it is near enough to be a
   * likely slip of the pen (a third of the letters at most, and never fewer than two). Ties go to
   * the one that comes first.
   */
  public static Optional<String> to(String written, Collection<String> candidates) {
    int limit = Math.max(2, written.length() / 3);
    String best = null;
    int bestDistance = limit + 1;
    for (String candidate : candidates) {
      int distance = distance(written, candidate);
      if (distance < bestDistance) {
        best = candidate;
        bestDistance = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * A sentence for the help of a problem: {@code did you mean 'x'?}, or the whole list where
   * nothing is near.
   */
  public static String help(String written, Collection<String> candidates) {
    return to(written, candidates)
        .map(name -> "did you mean '" + name + "'?")
        .orElseGet(
            () -> candidates.isEmpty() ? "" : "known here: " + String.join(", ", candidates));
  }

  private static int distance(String a, String b) {
    int[] previous = new int[b.length() + 1];
    int[] current = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      current[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int substitute = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        current[j] = Math.min(substitute, Math.min(previous[j], current[j - 1]) + 1);
      }
      int[] swap = previous;
      previous = current;
      current = swap;
    }
    return previous[b.length()];
  }
}
