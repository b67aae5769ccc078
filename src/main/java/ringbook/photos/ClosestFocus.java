package ringbook.photos;

import java.util.Optional;
import ringbook.units.Length;
import ringbook.units.Numbers;

/**
 * The closest focus, which no photograph tells: an assumption to begin with. Common practice, no
 * source.
 */
final class ClosestFocus {

  /** Lenses of phones and other small cameras. */
  private static final Length SHORT = Length.ofCentimetres(10);

  /** Below it a lens is taken for one of a small camera. */
  private static final Length SMALL_LENS = Length.ofMillimetres(10);

  /** Other lenses focus down to about so many focal lengths. */
  private static final double FOCAL_LENGTHS = 10;

  private ClosestFocus() {}

  static PhotoKit.Line assumed(Optional<Length> focalLength) {
    Length distance =
        focalLength
            .filter(f -> f.compareTo(SMALL_LENS) >= 0)
            .map(f -> f.times(FOCAL_LENGTHS))
            .orElse(SHORT);
    return new PhotoKit.Line(
        "kit.closestFocus",
        Numbers.fixed(distance.centimetres(), 0) + " cm",
        "assumed, as no photograph tells it: measure from the lens to the nearest thing it can hold sharp");
  }
}
