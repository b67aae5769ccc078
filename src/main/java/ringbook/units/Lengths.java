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
  private static final String SPACE = "\u00a0";

  /** A length of a room or an object, to the centimetre or to the quarter of an inch. */
  public String roughly(double metres) {
    if (this == IMPERIAL) {
      return Inches.inSteps(Unit.INCH.fromSi(metres), QUARTER, false);
    }
    return Math.abs(metres) < 1
        ? Numbers.fixed(100 * metres, 0) + SPACE + Unit.CENTIMETRE.symbol()
        : Numbers.fixed(metres, 2) + SPACE + Unit.METRE.symbol();
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
