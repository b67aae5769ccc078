package ringbook.units;

/**
 * A length or a position along a line.
 *
 * @param metres finite; may be negative where it is a position or a difference
 */
public record Length(double metres) implements Comparable<Length> {

  /** No length. */
  public static final Length ZERO = new Length(0);

  public Length {
    Require.finite("length in metres", metres);
  }

  /** So many metres; finite, also below 0. */
  public static Length ofMetres(double metres) {
    return new Length(metres);
  }

  /** So many centimetres; finite, also below 0. */
  public static Length ofCentimetres(double centimetres) {
    return new Length(Unit.CENTIMETRE.toSi(centimetres));
  }

  /** So many millimetres; finite, also below 0. */
  public static Length ofMillimetres(double millimetres) {
    return new Length(Unit.MILLIMETRE.toSi(millimetres));
  }

  /** So many micrometres; finite, also below 0. */
  public static Length ofMicrometres(double micrometres) {
    return new Length(Unit.MICROMETRE.toSi(micrometres));
  }

  /** In centimetres. */
  public double centimetres() {
    return Unit.CENTIMETRE.fromSi(metres);
  }

  /** In millimetres. */
  public double millimetres() {
    return Unit.MILLIMETRE.fromSi(metres);
  }

  /** In micrometres. */
  public double micrometres() {
    return Unit.MICROMETRE.fromSi(metres);
  }

  /** The sum. */
  public Length plus(Length other) {
    return new Length(metres + other.metres);
  }

  /** The difference; below 0 where the other one is longer. */
  public Length minus(Length other) {
    return new Length(metres - other.metres);
  }

  /** Scaled by a plain number. */
  public Length times(double factor) {
    return new Length(metres * factor);
  }

  /** How many times {@code other} goes into this; infinite or NaN where that is no length. */
  public double over(Length other) {
    return metres / other.metres;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }
}
