package ringbook.units;

import java.util.List;

/**
 * A unit a person writes or reads, with its exact factor to the one used inside.
 *
 * <p>Factors: International System of Units (SI) brochure, 9th edition 2019, and the inch of
 * exactly 25.4 mm (ISO 31-1 and the 1959 agreement); angles from the definition of the radian.
 */
public enum Unit {
  METRE(Dimension.LENGTH, "m", 1, "metre", "metres", "meter", "meters"),
  KILOMETRE(Dimension.LENGTH, "km", 1000, "kilometre", "kilometres", "kilometer", "kilometers"),
  CENTIMETRE(
      Dimension.LENGTH, "cm", 0.01, "centimetre", "centimetres", "centimeter", "centimeters"),
  MILLIMETRE(
      Dimension.LENGTH, "mm", 0.001, "millimetre", "millimetres", "millimeter", "millimeters"),
  MICROMETRE(
      Dimension.LENGTH, "µm", 1e-6, "um", "μm", "micrometre", "micrometres", "micron", "microns"),
  NANOMETRE(Dimension.LENGTH, "nm", 1e-9, "nanometre", "nanometres"),
  INCH(Dimension.LENGTH, "in", 0.0254, "inch", "inches", "\"", "″", "”"),
  FOOT(Dimension.LENGTH, "ft", 0.3048, "foot", "feet", "'", "′", "’"),
  YARD(Dimension.LENGTH, "yd", 0.9144, "yard", "yards"),
  RADIAN(Dimension.ANGLE, "rad", 1, "radian", "radians"),
  DEGREE(Dimension.ANGLE, "°", Math.PI / 180, "deg", "degree", "degrees"),
  TURN(Dimension.ANGLE, "turn", 2 * Math.PI, "turns", "circle", "circles"),
  SECOND(Dimension.TIME, "s", 1, "sec", "secs", "second", "seconds"),
  MILLISECOND(Dimension.TIME, "ms", 0.001, "millisecond", "milliseconds"),
  MINUTE(Dimension.TIME, "min", 60, "mins", "minute", "minutes"),
  HOUR(Dimension.TIME, "h", 3600, "hr", "hrs", "hour", "hours"),
  METRE_PER_SECOND(Dimension.SPEED, "m/s", 1, "metres per second"),
  CENTIMETRE_PER_SECOND(Dimension.SPEED, "cm/s", 0.01, "centimetres per second"),
  MILLIMETRE_PER_SECOND(Dimension.SPEED, "mm/s", 0.001, "millimetres per second"),
  RADIAN_PER_SECOND(Dimension.TURN_RATE, "rad/s", 1, "radians per second"),
  DEGREE_PER_SECOND(Dimension.TURN_RATE, "°/s", Math.PI / 180, "deg/s", "degrees per second"),
  HERTZ(Dimension.FREQUENCY, "Hz", 1, "hertz"),
  SQUARE_METRE(Dimension.AREA, "m²", 1, "m2", "square metre", "square metres"),
  SQUARE_CENTIMETRE(Dimension.AREA, "cm²", 1e-4, "cm2", "square centimetre", "square centimetres"),
  SQUARE_MILLIMETRE(Dimension.AREA, "mm²", 1e-6, "mm2", "square millimetre", "square millimetres"),
  LUX(Dimension.ILLUMINANCE, "lx", 1, "lux"),
  CANDELA_PER_SQUARE_METRE(Dimension.LUMINANCE, "cd/m²", 1, "cd/m2"),
  DIOPTRE(Dimension.LENS_POWER, "dpt", 1, "D", "dioptre", "dioptres", "diopter", "diopters"),
  BYTE(Dimension.DATA, "B", 1, "byte", "bytes"),
  MEGABYTE(Dimension.DATA, "MB", 1e6, "megabyte", "megabytes"),
  GIGABYTE(Dimension.DATA, "GB", 1e9, "gigabyte", "gigabytes"),
  /** Printed in front of the number: f/8. */
  F_STOP(Dimension.F_NUMBER, "f/", 1),
  STOP(Dimension.STOPS, "stops", 1, "stop", "EV"),
  PIXEL(Dimension.PIXELS, "px", 1, "pixel", "pixels"),
  PIECE(
      Dimension.COUNT,
      "",
      1,
      "photo",
      "photos",
      "photograph",
      "photographs",
      "picture",
      "pictures",
      "shots",
      "shot"),
  PERCENT(Dimension.SHARE, "%", 0.01, "percent", "per cent"),
  PART(Dimension.SHARE, "", 1),
  ONE(Dimension.RATIO, "", 1),
  /** Printed as the words yes and no. */
  ANSWER(Dimension.YES_NO, "", 1);

  private final Dimension dimension;
  private final String symbol;
  private final double factor;
  private final List<String> spellings;

  Unit(Dimension dimension, String symbol, double factor, String... spellings) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = factor;
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
    return number * factor;
  }

  /** From the number used inside (SI) to a number of this unit. */
  public double fromSi(double si) {
    return si / factor;
  }
}
