package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;

final class DiffractionTest {

  /**
   * Reference: Bessel function of a general library; the pattern is (2 J1(x) / x)², x = π d / 2.
   */
  @Test
  void the_first_dark_ring_is_dark() {
    double x = Math.PI * Diffraction.FIRST_DARK_RING / 2;
    assertThat(BesselJ.value(1, x)).isCloseTo(0, within(1e-6));
    assertThat(BesselJ.value(1, x * 0.999)).isGreaterThan(1e-3);
    assertThat(BesselJ.value(1, x * 1.001)).isLessThan(-1e-3);
  }
}
