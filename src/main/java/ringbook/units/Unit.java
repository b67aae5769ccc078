package ringbook.units;

import java.util.List;
import java.util.Optional;

/**
 * A unit a person writes or reads, with its exact factor to the one used inside.
 *
 * <p>Factors: International System of Units (SI) brochure, 9th edition 2019, and the inch of
 * exactly 25.4 mm (ISO 31-1, NIST Special Publication 811 and the 1959 agreement); angles from the
 * definition of the radian.
 */
public enum Unit {
  METRE(Dimension.LENGTH, "m", 1, 1, "metre", "metres", "meter", "meters"),
  KILOMETRE(Dimension.LENGTH, "km", 1000, 1, "kilometre", "kilometres", "kilometer", "kilometers"),
  CENTIMETRE(
      Dimension.LENGTH, "cm", 1, 100, "centimetre", "centimetres", "centimeter", "centimeters"),
  MILLIMETRE(
      Dimension.LENGTH, "mm", 1, 1000, "millimetre", "millimetres", "millimeter", "millimeters"),
  MICROMETRE(
      Dimension.LENGTH, "µm", 1, 1e6, "um", "μm", "micrometre", "micrometres", "micron", "microns"),
  NANOMETRE(Dimension.LENGTH, "nm", 1, 1e9, "nanometre", "nanometres"),
  INCH(Dimension.LENGTH, "in", 127, 5000, "inch", "inches", "\"", "″", "”"),
  FOOT(Dimension.LENGTH, "ft", 381, 1250, "foot", "feet", "'", "′", "’"),
  YARD(Dimension.LENGTH, "yd", 1143, 1250, "yard", "yards"),
  RADIAN(Dimension.ANGLE, "rad", 1, 1, "radian", "radians"),
  DEGREE(Dimension.ANGLE, "°", Math.PI, 180, "deg", "degree", "degrees"),
  TURN(Dimension.ANGLE, "turn", 2 * Math.PI, 1, "turns", "circle", "circles"),
  SECOND(Dimension.TIME, "s", 1, 1, "sec", "secs", "second", "seconds"),
  MILLISECOND(Dimension.TIME, "ms", 1, 1000, "millisecond", "milliseconds"),
  MINUTE(Dimension.TIME, "min", 60, 1, "mins", "minute", "minutes"),
  HOUR(Dimension.TIME, "h", 3600, 1, "hr", "hrs", "hour", "hours"),
  METRE_PER_SECOND(Dimension.SPEED, "m/s", 1, 1, "metres per second"),
  CENTIMETRE_PER_SECOND(Dimension.SPEED, "cm/s", 1, 100, "centimetres per second"),
  MILLIMETRE_PER_SECOND(Dimension.SPEED, "mm/s", 1, 1000, "millimetres per second"),
  INCH_PER_SECOND(Dimension.SPEED, "in/s", 127, 5000, "inches per second"),
  RADIAN_PER_SECOND(Dimension.TURN_RATE, "rad/s", 1, 1, "radians per second"),
  DEGREE_PER_SECOND(Dimension.TURN_RATE, "°/s", Math.PI, 180, "deg/s", "degrees per second"),
  HERTZ(Dimension.FREQUENCY, "Hz", 1, 1, "hertz"),
  SQUARE_METRE(Dimension.AREA, "m²", 1, 1, "m2", "square metre", "square metres"),
  SQUARE_CENTIMETRE(
      Dimension.AREA, "cm²", 1, 1e4, "cm2", "square centimetre", "square centimetres"),
  SQUARE_MILLIMETRE(
      Dimension.AREA, "mm²", 1, 1e6, "mm2", "square millimetre", "square millimetres"),
  LUX(Dimension.ILLUMINANCE, "lx", 1, 1, "lux"),
  LUMEN(Dimension.LUMINOUS_FLUX, "lm", 1, 1, "lumen", "lumens"),
  CANDELA_PER_SQUARE_METRE(Dimension.LUMINANCE, "cd/m²", 1, 1, "cd/m2"),
  DIOPTRE(Dimension.LENS_POWER, "dpt", 1, 1, "D", "dioptre", "dioptres", "diopter", "diopters"),
  BYTE(Dimension.DATA, "B", 1, 1, "byte", "bytes"),
  MEGABYTE(Dimension.DATA, "MB", 1e6, 1, "megabyte", "megabytes"),
  GIGABYTE(Dimension.DATA, "GB", 1e9, 1, "gigabyte", "gigabytes"),
  /** Printed in front of the number: f/8. */
  F_STOP(Dimension.F_NUMBER, "f/", 1, 1),
  STOP(Dimension.STOPS, "stops", 1, 1, "stop", "EV"),
  PIXEL(Dimension.PIXELS, "px", 1, 1, "pixel", "pixels"),
  PIECE(
      Dimension.COUNT,
      "",
      1,
      1,
      "photo",
      "photos",
      "photograph",
      "photographs",
      "picture",
      "pictures",
      "shots",
      "shot"),
  PERCENT(Dimension.SHARE, "%", 1, 100, "percent", "per cent"),
  PART(Dimension.SHARE, "", 1, 1),
  ONE(Dimension.RATIO, "", 1, 1),
  /** Printed as the words yes and no. */
  ANSWER(Dimension.YES_NO, "", 1, 1);

  private final Dimension dimension;
  private final String symbol;
  private final double numerator;
  private final double denominator;
  private final List<String> spellings;

  Unit(
      Dimension dimension,
      String symbol,
      double numerator,
      double denominator,
      String... spellings) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.numerator = numerator;
    this.denominator = denominator;
    this.spellings = List.of(spellings);
  }

  /** What the unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /**
   * The symbol printed after the number (before it for {@link #F_STOP}); empty where none is
   * printed.
   */
  public String symbol() {
    return symbol;
  }

  /**
   * Other ways people write the symbol. Matching ignores case only where no two units would
   * collide.
   */
  public List<String> spellings() {
    return spellings;
  }

  /** From a number of this unit to the number used inside (SI). */
  public double toSi(double number) {
    return number * numerator / denominator;
  }

  /** From the number used inside (SI) to a number of this unit. */
  public double fromSi(double si) {
    return si * denominator / numerator;
  }

  /** The unit a number of this kind has when none is written; empty where one must be. */
  public static Optional<Unit> understood(Dimension dimension) {
    return switch (dimension) {
      case F_NUMBER -> Optional.of(F_STOP);
      case STOPS -> Optional.of(STOP);
      case PIXELS -> Optional.of(PIXEL);
      case COUNT -> Optional.of(PIECE);
      case SHARE -> Optional.of(PART);
      case RATIO -> Optional.of(ONE);
      case YES_NO -> Optional.of(ANSWER);
      case LENGTH, ANGLE, TIME, SPEED, TURN_RATE, FREQUENCY -> Optional.empty();
      case AREA, ILLUMINANCE, LUMINOUS_FLUX, LUMINANCE, LENS_POWER, DATA -> Optional.empty();
    };
  }
}
