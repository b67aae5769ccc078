package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import ringbook.units.FNumber;
import ringbook.units.Length;

/** Where the sharp range just reaches infinity; by hand, in numbers that binary holds exactly. */
final class DepthOfFieldEdgesTest {

  private static final Length FOCAL = new Length(1);

  @Test
  void focused_at_the_hyperfocal_distance_all_is_sharp_to_infinity() {
    assertThat(DepthOfField.farLimit(FOCAL, new Length(8), new Length(8))).isEmpty();
    assertThat(DepthOfField.farLimit(FOCAL, new Length(8), new Length(7.5))).isPresent();
  }

  /** m = 1/2 and N c / f = 2 · 1/4 / 1 = 1/2: nothing is left below the fraction. */
  @Test
  void depth_is_endless_from_the_magnification_on_that_blur_allows() {
    FNumber two = new FNumber(2);
    assertThat(DepthOfField.depth(FOCAL, 0.5, two, new Length(0.25))).isEmpty();
    assertThat(DepthOfField.depth(FOCAL, 0.25, two, new Length(0.25))).isEmpty();
    // 2 · 1/4 · 2 · 2 / (1 − 1/4)
    assertThat(DepthOfField.depth(FOCAL, 1, two, new Length(0.25)).orElseThrow().metres())
        .isCloseTo(8.0 / 3, within(1e-12));
  }

  @Test
  void depth_from_half_the_hyperfocal_distance_is_endless() {
    assertThat(DepthOfField.depthFrom(FOCAL, new Length(8), new Length(4))).isEmpty();
    // 3 (8 − 2) / (8 − 6) − 3
    assertThat(DepthOfField.depthFrom(FOCAL, new Length(8), new Length(3)).orElseThrow().metres())
        .isCloseTo(6, within(1e-12));
  }

  @Test
  void one_photograph_holds_everything_once_the_blur_is_as_wide_as_the_lens() {
    Length near = new Length(2);
    Length far = new Length(4);
    assertThat(DepthOfField.slices(FOCAL, near, far, FOCAL)).isZero();
    assertThat(DepthOfField.slices(FOCAL, near, far, FOCAL.times(2))).isZero();
  }
}
