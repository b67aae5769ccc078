package ringbook.exercises;

/**
 * From the lowest to the highest of some numbers, all in one unit.
 *
 * @param low no more than {@code high}
 * @param high the highest of them
 */
record Spread(double low, double high) {

  /** A single number. */
  static Spread of(double number) {
    return new Spread(number, number);
  }

  /** The same with {@code number} in it; whatever is no finite number changes nothing. */
  Spread with(double number) {
    return Math.abs(number) < Double.POSITIVE_INFINITY
        ? new Spread(Math.min(low, number), Math.max(high, number))
        : this;
  }

  /** The same with all of {@code other} in it. */
  Spread with(Spread other) {
    return with(other.low).with(other.high);
  }

  boolean isPoint() {
    return low == high;
  }
}
