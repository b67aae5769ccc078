package ringbook.units;

/**
 * A number as a person meets it: with the unit it is written in.
 *
 * @param number how many of the unit; may be infinite only where the quantity says so
 * @param unit the unit written beside it
 */
public record Measure(double number, Unit unit) {

  public Measure {
    if (Double.isNaN(number)) {
      throw new IllegalArgumentException("a measure must be a number");
    }
  }

  /** The number used inside (SI). */
  public double si() {
    return unit.toSi(number);
  }
}
