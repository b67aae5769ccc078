package ringbook.units;

/**
 * An angle, or a turn.
 *
 * @param radians finite; not folded into one circle
 */
public record Angle(double radians) implements Comparable<Angle> {

  /** No turn. */
  public static final Angle ZERO = new Angle(0);

  /** A quarter turn, 90°. */
  public static final Angle RIGHT = ofDegrees(90);

  /** Once round, 360°. */
  public static final Angle FULL_TURN = ofDegrees(360);

  public Angle {
    Require.finite("angle in radians", radians);
  }

  /** So many degrees; finite, also below 0. */
  public static Angle ofDegrees(double degrees) {
    return new Angle(Unit.DEGREE.toSi(degrees));
  }

  /** In degrees. */
  public double degrees() {
    return Unit.DEGREE.fromSi(radians);
  }

  /** The sum, not folded into one circle. */
  public Angle plus(Angle other) {
    return new Angle(radians + other.radians);
  }

  /** The difference, not folded into one circle. */
  public Angle minus(Angle other) {
    return new Angle(radians - other.radians);
  }

  /** Scaled by a plain number. */
  public Angle times(double factor) {
    return new Angle(radians * factor);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }
}
