package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.units.Angle;
import ringbook.units.FNumber;
import ringbook.units.Length;

/** What a lens cannot be, and what it cannot do. */
final class LensTest {

  private static final Length FOCAL = Length.ofMillimetres(50);

  private static Lens lens(double widest, double narrowest, Length closest) {
    return new Lens(FOCAL, new FNumber(widest), new FNumber(narrowest), closest);
  }

  @Test
  void refuses_to_focus_at_its_focal_length() {
    assertThatThrownBy(() -> lens(2, 16, FOCAL)).hasMessageContaining("beyond the focal length");
    assertThatThrownBy(() -> ThinLens.magnification(FOCAL, FOCAL))
        .hasMessageContaining("beyond the focal length");
  }

  @Test
  void refuses_a_range_of_f_numbers_in_the_wrong_order() {
    assertThatThrownBy(() -> lens(16, 2, FOCAL.times(9))).hasMessageContaining("widest");
  }

  @Test
  void an_aperture_of_one_f_number_is_fixed() {
    assertThat(lens(1.8, 1.8, FOCAL.times(9)).hasFixedAperture()).isTrue();
    assertThat(lens(1.8, 16, FOCAL.times(9)).hasFixedAperture()).isFalse();
  }

  /** 2 atan(18/18) is a right angle. */
  @Test
  void no_flat_picture_shows_a_half_turn() {
    Length side = Length.ofMillimetres(36);
    for (double radians : new double[] {0, Math.PI, -0.1, 4}) {
      assertThatThrownBy(() -> AngleOfView.focalLength(side, new Angle(radians)))
          .hasMessageContaining("less than 180°");
    }
    assertThat(AngleOfView.focalLength(side, Angle.RIGHT).millimetres())
        .isCloseTo(18, within(1e-9));
  }

  /** From six focal lengths pictures are a fifth as large: 60 mm is 12 mm, half of 24 mm. */
  @Test
  void tells_how_much_of_the_picture_is_filled() {
    Length extent = Length.ofMillimetres(60);
    Length side = Length.ofMillimetres(24);
    assertThat(Framing.filled(FOCAL, extent, side, FOCAL.times(6))).isCloseTo(0.5, within(1e-12));
  }
}
