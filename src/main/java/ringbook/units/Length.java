package ringbook.units;

/**
 * A length or a position along a line.
 *
 * @param metres finite; may be negative where it is a position or a difference
 */
public record Length(double metres) implements Comparable<Length> {

  public static final Length ZERO = new Length(0);

  public Length {
    Require.finite("length in metres", metres);
  }

  public static Length ofMetres(double metres) {
    return new Length(metres);
  }

  public static Length ofCentimetres(double centimetres) {
    return new Length(Unit.CENTIMETRE.toSi(centimetres));
  }

  public static Length ofMillimetres(double millimetres) {
    return new Length(Unit.MILLIMETRE.toSi(millimetres));
  }

  public static Length ofMicrometres(double micrometres) {
    return new Length(Unit.MICROMETRE.toSi(micrometres));
  }

  public double centimetres() {
    return Unit.CENTIMETRE.fromSi(metres);
  }

  public double millimetres() {
    return Unit.MILLIMETRE.fromSi(metres);
  }

  public double micrometres() {
    return Unit.MICROMETRE.fromSi(metres);
  }

  public Length plus(Length other) {
    return new Length(metres + other.metres);
  }

  public Length minus(Length other) {
    return new Length(metres - other.metres);
  }

  public Length times(double factor) {
    return new Length(metres * factor);
  }

  /** How many times {@code other} goes into this. */
  public double over(Length other) {
    return metres / other.metres;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(metres, other.metres);
  }
}
