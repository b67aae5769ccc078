package ringbook.optics;

import ringbook.units.FNumber;
import ringbook.units.Length;

/**
 * How far the edge of the aperture spreads a point of light.
 *
 * <p>Source: Airy pattern of a round aperture without faults; its first dark ring has the diameter
 * {@code 2.43934 λ N'}, N' being the effective f-number (twice the first zero of the Bessel
 * function J1 over π).
 */
public final class Diffraction {

  /** Diameter of the first dark ring over wavelength and effective f-number. */
  public static final double FIRST_DARK_RING = 2.43934;

  /** Wavelength of green light, where eyes and sensors see best. */
  public static final Length GREEN = Length.ofMicrometres(0.55);

  private Diffraction() {}

  /** The f-number that counts at the sensor when focused close, {@code N (1 + m)}. */
  public static FNumber effective(FNumber marked, double magnification) {
    return new FNumber(marked.value() * (1 + magnification));
  }

  /**
   * The same for a lens whose pupils differ in size, {@code N (1 + m/P)}.
   *
   * @param pupilRatio P, exit pupil over entrance pupil
   */
  public static FNumber effective(FNumber marked, double magnification, double pupilRatio) {
    return effective(marked, magnification / pupilRatio);
  }

  /** Diameter of the disc up to the first dark ring. */
  public static Length disc(Length wavelength, FNumber effective) {
    return wavelength.times(FIRST_DARK_RING * effective.value());
  }

  /**
   * Length on the sensor of one light and one dark line that just lose all contrast, {@code λ N'}.
   * Source: cut-off of the incoherent transfer function; textbooks of optics.
   */
  public static Length finestPeriod(Length wavelength, FNumber effective) {
    return wavelength.times(effective.value());
  }

  /** Largest marked f-number whose disc in green light is no wider than {@code disc}. */
  public static FNumber fNumberFor(Length disc, double magnification) {
    return new FNumber(disc.over(GREEN) / (FIRST_DARK_RING * (1 + magnification)));
  }

  /**
   * The marked f-number at which a point out of focus is spread least by both, {@code √(k/q)}: blur
   * is {@code k/N}, the disc in green light {@code q N}, and the sum of their squares is smallest
   * where both are equal.
   *
   * @param fNumber any f-number
   * @param blur the blur at that f-number
   * @param magnification at the focus distance
   */
  public static FNumber balance(FNumber fNumber, Length blur, double magnification) {
    double k = blur.over(GREEN) * fNumber.value();
    return new FNumber(Math.sqrt(k / (FIRST_DARK_RING * (1 + magnification))));
  }

  /**
   * Width of several spots together, {@code √(b² + a² + …)}. Adding squares is a convention, not
   * physics.
   */
  public static Length together(Length... spots) {
    double squares = 0;
    for (Length spot : spots) {
      squares += spot.metres() * spot.metres();
    }
    return new Length(Math.sqrt(squares));
  }
}
