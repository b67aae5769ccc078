package ringbook.problems;

/**
 * One thing a person must mend before the work can go on.
 *
 * @param position where it is
 * @param message what is wrong, with the words that were found in quotation marks
 * @param help what to write or do instead; empty where the message says it all
 */
public record Problem(Position position, String message, String help)
    implements Comparable<Problem> {

  @Override
  public int compareTo(Problem other) {
    int byPlace = position.compareTo(other.position);
    return byPlace != 0 ? byPlace : message.compareTo(other.message);
  }

  /** The problem as it is printed: one line, and a second one that begins {@code mend:}. */
  @Override
  public String toString() {
    String first = position + ": error: " + message;
    return help.isEmpty() ? first : first + "\n  mend: " + help;
  }
}
