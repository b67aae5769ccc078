package ringbook.units;

/**
 * A length of time, such as an exposure.
 *
 * @param seconds finite, at least 0
 */
public record Span(double seconds) implements Comparable<Span> {

  public Span {
    Require.notNegative("time", "s", seconds);
  }

  /** So many seconds; finite, at least 0. */
  public static Span ofSeconds(double seconds) {
    return new Span(seconds);
  }

  @Override
  public int compareTo(Span other) {
    return Double.compare(seconds, other.seconds);
  }
}
