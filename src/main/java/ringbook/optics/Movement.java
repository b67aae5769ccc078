package ringbook.optics;

import ringbook.units.Length;
import ringbook.units.Span;

/**
 * How far the picture moves on the sensor while the shutter is open. Speeds are metres a second
 * across the view, rates radians a second; all above 0. Source: motion at constant speed.
 */
public final class Movement {

  private Movement() {}

  /** Movement in pixels of something that passes at a speed, {@code V t / g}. */
  public static double passingPixels(double metresPerSecond, Span time, Length sampling) {
    return metresPerSecond * time.seconds() / sampling.metres();
  }

  /** Longest time for {@code pixels} of movement, {@code b g / V}. */
  public static Span passingTime(double pixels, Length sampling, double metresPerSecond) {
    return new Span(pixels * sampling.metres() / metresPerSecond);
  }

  /** Movement on the sensor when the camera turns, {@code v ω t}. */
  public static Length turning(Length imageDistance, double radiansPerSecond, Span time) {
    return imageDistance.times(radiansPerSecond * time.seconds());
  }

  /** Longest time for {@code movement} on the sensor when the camera turns, {@code n p / (v ω)}. */
  public static Span turningTime(Length movement, Length imageDistance, double radiansPerSecond) {
    return new Span(movement.over(imageDistance) / radiansPerSecond);
  }

  /** Speed in m/s of the rim of a turntable, {@code ω R}. */
  public static double rimMetresPerSecond(Length radius, double radiansPerSecond) {
    return radius.metres() * radiansPerSecond;
  }
}
