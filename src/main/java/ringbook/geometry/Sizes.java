package ringbook.geometry;

import ringbook.units.Length;
import ringbook.units.Require;

/** Checks of the sizes solids are made with. */
final class Sizes {

  private Sizes() {}

  static void positive(String name, Length length) {
    Require.positive(name, "m", length.metres());
  }

  static void smaller(String small, Length less, String large, Length more) {
    if (!(less.metres() < more.metres())) {
      throw new IllegalArgumentException(small + " must be smaller than " + large);
    }
  }

  static Bounds round(double radius, double height) {
    return new Bounds(new Vec3(-radius, -radius, 0), new Vec3(radius, radius, height));
  }
}
