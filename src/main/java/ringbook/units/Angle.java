package ringbook.units;

/**
 * An angle, or a turn.
 *
 * @param radians finite; not folded into one circle
 */
public record Angle(double radians) implements Comparable<Angle> {

  public static final Angle ZERO = new Angle(0);
  public static final Angle RIGHT = ofDegrees(90);
  public static final Angle FULL_TURN = ofDegrees(360);

  public Angle {
    Require.finite("angle in radians", radians);
  }

  public static Angle ofRadians(double radians) {
    return new Angle(radians);
  }

  public static Angle ofDegrees(double degrees) {
    return new Angle(Unit.DEGREE.toSi(degrees));
  }

  public double degrees() {
    return Unit.DEGREE.fromSi(radians);
  }

  public Angle plus(Angle other) {
    return new Angle(radians + other.radians);
  }

  public Angle minus(Angle other) {
    return new Angle(radians - other.radians);
  }

  public Angle times(double factor) {
    return new Angle(radians * factor);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(radians, other.radians);
  }
}
