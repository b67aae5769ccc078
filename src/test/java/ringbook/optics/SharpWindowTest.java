package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.units.FNumber;
import ringbook.units.Length;

/**
 * A lens that can just be closed far enough. By hand, in millimetres: f = 4, near 60, far 140 have
 * the focus at 84, so N = 16 · 80 / (c · 200 · 80) = 0.08 / c.
 */
final class SharpWindowTest {

  private static final Length NEAR = Length.ofMillimetres(60);
  private static final Length DEPTH = Length.ofMillimetres(80);
  private static final double[] SCALES = {1, 1.1, 1.3, 1.7, 0.7, 0.3, 3, 7};

  /** N and the blur spot in millimetres that asks for it. */
  private static final double[][] SPOTS = {
    {16, 0.005}, {10, 0.008}, {8, 0.01}, {5, 0.016}, {4, 0.02}, {3.2, 0.025}, {2, 0.04}
  };

  private static SharpWindow window(double narrowest, double spotMm, double scale) {
    Lens lens =
        new Lens(
            Length.ofMillimetres(4).times(scale),
            new FNumber(1),
            new FNumber(narrowest),
            Length.ofMillimetres(40).times(scale));
    Length spot = Length.ofMillimetres(spotMm).times(scale);
    return new SharpWindow(lens, DEPTH.times(scale), spot, Length.ofMillimetres(1).times(scale));
  }

  @Test
  void an_f_number_that_just_suffices_suffices() {
    int hairAbove = 0;
    for (double[] spot : SPOTS) {
      for (double scale : SCALES) {
        SharpWindow window = window(spot[0], spot[1], scale);
        Length near = NEAR.times(scale);
        assertThat(window.open(near).value()).isCloseTo(spot[0], within(1e-9));
        assertThat(window.opensAt(near)).as("f/%s, times %s", spot[0], scale).isTrue();
        assertThat(window.nearestOpen(near, near)).contains(near);
        hairAbove += window.open(near).value() > spot[0] ? 1 : 0;
      }
    }
    assertThat(hairAbove).as("a hair above in binary").isPositive();
  }

  @Test
  void one_that_falls_short_does_not() {
    for (double[] spot : SPOTS) {
      SharpWindow window = window(spot[0] * (1 - 1e-6), spot[1], 1);
      assertThat(window.opensAt(NEAR)).isFalse();
      assertThat(window.nearestOpen(NEAR, NEAR)).isEmpty();
    }
  }
}
