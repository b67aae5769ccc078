package ringbook.optics;

import ringbook.units.FNumber;
import ringbook.units.Num;
import ringbook.units.Span;

/**
 * Exposure in steps of two (additive photographic exposure values, as Exif stores them) and in
 * seconds.
 *
 * <p>{@code EV} without more is the exposure value of a setting, {@code log₂(N²/t)}; {@code EV100}
 * is the one that suits the light at ISO 100. Close up, N is the effective f-number wherever light
 * is measured beside the camera. Sources: Exif 2.3 annex on APEX; ISO 2720 for the meter constants
 * K = 12.5 (reflected light) and C = 250 (flat receptor).
 */
public final class Exposure {

  /** Meter constant for reflected light, cd s/(m² ISO). */
  public static final double K = 12.5;

  /** Meter constant for incident light on a flat receptor, lx s/ISO. */
  public static final double C = 250;

  /** One foot-lambert in cd/m². */
  private static final double FOOT_LAMBERT = 3.42626;

  private static final double ISO_OF_SPEED_0 = 3.125;

  private Exposure() {}

  /** Aperture value {@code Av = 2 log₂ N}. */
  public static double apertureValue(FNumber fNumber) {
    return 2 * Num.log2(fNumber.value());
  }

  /** The f-number of an aperture value. */
  public static FNumber fNumber(double apertureValue) {
    return new FNumber(Num.pow(2, apertureValue / 2));
  }

  /** Time value {@code Tv = −log₂ t}. */
  public static double timeValue(Span time) {
    return -Num.log2(time.seconds());
  }

  /** The time of a time value. */
  public static Span timeOf(double timeValue) {
    return new Span(Num.pow(2, -timeValue));
  }

  /** Speed value {@code Sv = log₂(ISO/3.125)}: 5 at ISO 100. */
  public static double speedValue(double iso) {
    return Num.log2(iso / ISO_OF_SPEED_0);
  }

  /** The ISO setting of a speed value. */
  public static double iso(double speedValue) {
    return ISO_OF_SPEED_0 * Num.pow(2, speedValue);
  }

  /** Brightness value {@code Bv = log₂(L / 1 fL)}. */
  public static double brightnessValue(double candelaPerSquareMetre) {
    return Num.log2(candelaPerSquareMetre / FOOT_LAMBERT);
  }

  /** Exposure value of a setting, {@code log₂(N²/t)}. */
  public static double value(FNumber fNumber, Span time) {
    return apertureValue(fNumber) + timeValue(time);
  }

  /** The same for ISO 100: {@code EV − log₂(ISO/100)}. */
  public static double valueAt100(double value, double iso) {
    return value - Num.log2(iso / 100);
  }

  /** Exposure time {@code N² / 2^EV}. */
  public static Span time(FNumber fNumber, double value) {
    return new Span(fNumber.value() * fNumber.value() / Num.pow(2, value));
  }

  /** Time at {@code to} that exposes like {@code time} at {@code from}. */
  public static Span sameExposure(Span time, FNumber from, FNumber to) {
    double ratio = to.value() / from.value();
    return new Span(time.seconds() * ratio * ratio);
  }

  /**
   * Luminance in cd/m² that {@code EV100} suits.
   *
   * @param meterConstant K, 10.6 to 13.4; {@link #K} is usual
   */
  public static double luminance(double valueAt100, double meterConstant) {
    return meterConstant / 100 * Num.pow(2, valueAt100);
  }

  /** Illuminance in lux that {@code EV100} suits, with {@link #C}. */
  public static double illuminanceLux(double valueAt100) {
    return C / 100 * Num.pow(2, valueAt100);
  }

  /** {@code EV100} for an illuminance in lux, {@code log₂(E / 2.5 lx)}. */
  public static double valueFor(double illuminanceLux) {
    return Num.log2(illuminanceLux / (C / 100));
  }

  /** ISO setting that exposes rightly: {@code 100 N² / (t 2^EV100)}. */
  public static double isoFor(FNumber fNumber, Span time, double valueAt100) {
    return 100 * Num.pow(2, value(fNumber, time) - valueAt100);
  }
}
