package ringbook.problems;

import java.util.Collection;
import java.util.Optional;

/** Finds the name a person most likely meant. */
public final class Nearest {

  private Nearest() {}

  /**
   * The candidate with the smallest edit distance to {@code written}, if it is near enough to be a
   * likely slip of the pen: two letters wrong, or a third of a long word, but of a short one never
   * all. Ties go to the one that comes first.
   */
  public static Optional<String> to(String written, Collection<String> candidates) {
    int limit = Math.min(Math.max(2, written.length() / 3), Math.max(1, written.length() - 1));
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

  /** Letters to change, add, leave out, or swap with their neighbour. */
  private static int distance(String a, String b) {
    int[][] steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        steps[i][j] = i == 0 || j == 0 ? i + j : fewest(steps, a, b, i, j);
      }
    }
    return steps[a.length()][b.length()];
  }

  private static int fewest(int[][] steps, String a, String b, int i, int j) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int fewest =
        Math.min(
            steps[i - 1][j - 1] + (same ? 0 : 1), Math.min(steps[i - 1][j], steps[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(fewest, steps[i - 2][j - 2] + 1) : fewest;
  }
}
