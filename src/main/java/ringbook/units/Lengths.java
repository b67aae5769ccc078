package ringbook.units;

/**
 * In which measures lengths of objects and rooms are told. Fine ones, such as what a pixel covers,
 * and those of a camera are told in millimetres and below everywhere, as is usual in the trade.
 */
public enum Lengths {
  /** In centimetres and metres. */
  METRIC,
  /** In inches; from three feet on in feet and inches. */
  IMPERIAL;

  private static final double QUARTER = 0.25;

  /** Below so many inches a quarter would be too much of a change. */
  private static final double SHORT = 2;

  private static final double HAIR = 1e-6;
  private static final String SPACE = "\u00a0";

  /** What goes with these measures. */
  public <T> T either(T metric, T imperial) {
    return this == IMPERIAL ? imperial : metric;
  }

  /** A length of a room or an object, to the centimetre or to the quarter of an inch. */
  public String roughly(double metres) {
    if (this == IMPERIAL) {
      return Inches.inSteps(Unit.INCH.fromSi(metres), QUARTER, false);
    }
    return Math.abs(metres) < 1
        ? Numbers.fixed(100 * metres, 0) + SPACE + Unit.CENTIMETRE.symbol()
        : Numbers.fixed(metres, 2) + SPACE + Unit.METRE.symbol();
  }

  /**
   * A length or speed of a made-up thing as people would state it who measure so: in inches to the
   * quarter, speeds to the inch a second; what is stated in eighths or tenths already, and what is
   * told in millimetres, stays.
   */
  public double stated(double si, Unit own) {
    double inches = Unit.INCH.fromSi(si);
    boolean stays = Math.abs(inches) < SHORT || isWhole(8 * inches) || isWhole(10 * inches);
    if (this == METRIC || !isTold(own) || stays) {
      return si;
    }
    double step = own == Unit.CENTIMETRE_PER_SECOND ? 1 : QUARTER;
    return Unit.INCH.toSi(Math.floor(inches / step + 0.5) * step);
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.floor(number + 0.5)) < HAIR;
  }

  /** Whether values in {@code own} are told in inches where people measure in them. */
  public static boolean isTold(Unit own) {
    return own == Unit.CENTIMETRE || own == Unit.METRE || own == Unit.CENTIMETRE_PER_SECOND;
  }

  /** The unit for a limit of what is otherwise told in {@code own}, which it suits by its size. */
  public Unit limit(double si, Unit own) {
    if (this == METRIC || !isTold(own)) {
      return own;
    }
    double inches = Math.abs(Unit.INCH.fromSi(si));
    return own == Unit.CENTIMETRE_PER_SECOND
        ? Unit.INCH_PER_SECOND
        : inches < QUARTER ? Unit.MILLIMETRE : inches < Inches.FEET_FROM ? Unit.INCH : Unit.FOOT;
  }

  /** In centimetres with so many digits after the point, or in inches about as finely. */
  public String closely(double metres, int decimals) {
    if (this == IMPERIAL) {
      double inches = Unit.INCH.fromSi(metres);
      return decimals == 0
          ? Inches.inSteps(inches, QUARTER, false)
          : Inches.inDecimals(inches, decimals, false);
    }
    return Numbers.fixed(100 * metres, decimals) + SPACE + Unit.CENTIMETRE.symbol();
  }

  /**
   * The unit for an axis: metres or feet where it reaches {@code far}, else centimetres or inches.
   */
  public Unit axis(boolean far) {
    if (this == IMPERIAL) {
      return far ? Unit.FOOT : Unit.INCH;
    }
    return far ? Unit.METRE : Unit.CENTIMETRE;
  }
}
