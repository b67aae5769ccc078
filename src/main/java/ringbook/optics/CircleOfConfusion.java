package ringbook.optics;

import ringbook.units.Length;

/**
 * Widest blur spot by the rules made for looking at prints. For measuring they are far too soft;
 * the course uses a number of pixels instead and shows these for comparison.
 */
public final class CircleOfConfusion {

  private CircleOfConfusion() {}

  /** How many times the frame is enlarged for the print, by diagonals. */
  public static double enlargement(Length printDiagonal, Length frameDiagonal) {
    return printDiagonal.over(frameDiagonal);
  }

  /** Spot on the sensor that the print shows as {@code onPrint}. */
  public static Length fromPrint(Length onPrint, double enlargement) {
    return onPrint.times(1 / enlargement);
  }

  /** The rule of one part in 1500 of the diagonal. Common practice. */
  public static Length fromDiagonal(Length diagonal) {
    return diagonal.times(1.0 / 1500);
  }

  /**
   * Spot on a print that an eye can just tell from a point.
   *
   * @param viewing distance from eye to print
   * @param linesPerMillimetre line pairs a millimetre that the eye tells apart at 25 cm, about 5
   */
  public static Length onPrint(Length viewing, double linesPerMillimetre) {
    double nearPoints = viewing.centimetres() / 25;
    return Length.ofMillimetres(nearPoints / linesPerMillimetre);
  }
}
