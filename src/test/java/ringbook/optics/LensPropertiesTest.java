package ringbook.optics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.units.FNumber;
import ringbook.units.Length;

/** Laws that hold for every lens, whatever the numbers. */
final class LensPropertiesTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-6);

  private Length focal;
  private Length near;
  private Length far;
  private Length spot;

  private void draw(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    focal = Length.ofMillimetres(spread(random, 1, 300));
    near = focal.times(1 + spread(random, 0.5, 200));
    far = near.times(1 + spread(random, 1e-3, 1));
    spot = Length.ofMicrometres(spread(random, 1, 40));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void object_and_picture_satisfy_the_lens_equation(long seed) {
    draw(seed);
    Length image = ThinLens.imageDistance(focal, near);
    double powers = 1 / near.metres() + 1 / image.metres();
    assertThat(powers).isCloseTo(1 / focal.metres(), CLOSE);
    assertThat(ThinLens.magnification(focal, near)).isCloseTo(image.over(near), CLOSE);
    assertThat(ThinLens.distance(focal, image.over(near)).metres()).isCloseTo(near.metres(), CLOSE);
    assertThat(near.plus(ThinLens.imageDistance(focal, near)).over(focal)).isGreaterThan(4 - 1e-9);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_f_number_for_two_limits_gives_these_limits(long seed) {
    draw(seed);
    FNumber n = DepthOfField.fNumberFor(focal, near, far, spot);
    Length focus = DepthOfField.focusBetween(near, far);
    Length hyperfocal = DepthOfField.hyperfocal(focal, n, spot);
    double slack = 1e-9 * far.metres() * far.over(focal) / near.over(focal);
    assertThat(DepthOfField.nearLimit(focal, hyperfocal, focus).metres())
        .isCloseTo(near.metres(), within(slack));
    assertThat(DepthOfField.farLimit(focal, hyperfocal, focus).orElseThrow().metres())
        .isCloseTo(far.metres(), within(slack));
    assertThat(DepthOfField.blur(focal, n, focus, near).metres()).isCloseTo(spot.metres(), CLOSE);
    assertThat(DepthOfField.blur(focal, n, focus, far).metres()).isCloseTo(spot.metres(), CLOSE);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void one_slice_is_the_depth_of_one_photograph(long seed) {
    draw(seed);
    FNumber n = DepthOfField.fNumberFor(focal, near, far, spot);
    Length spread = spot.times(n.value());
    assertThat(DepthOfField.slices(focal, near, far, spread)).isCloseTo(1, CLOSE);
    assertThat(DepthOfField.depthFrom(focal, hyperfocal(n), near).orElseThrow().metres())
        .isCloseTo(far.minus(near).metres(), CLOSE);
    Length focus = DepthOfField.focusBetween(near, far);
    double m = ThinLens.magnification(focal, focus);
    assertThat(DepthOfField.depth(focal, m, n, spot).orElseThrow().metres())
        .isCloseTo(far.minus(near).metres(), CLOSE);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void slices_laid_end_to_end_reach_the_far_side(long seed) {
    draw(seed);
    FNumber n = DepthOfField.fNumberFor(focal, near, far, spot);
    FNumber third = new FNumber(n.value() / 3);
    int photographs =
        (int) Math.ceil(DepthOfField.slices(focal, near, far, spot.times(third.value())) - 1e-9);
    Length reached = near;
    for (int i = 0; i < photographs; i++) {
      assertThat(reached).as("not yet there").isLessThan(far);
      reached =
          reached.plus(DepthOfField.depthFrom(focal, hyperfocal(third), reached).orElseThrow());
    }
    assertThat(reached.metres()).isGreaterThanOrEqualTo(far.metres() * (1 - 1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_balancing_f_number_spreads_a_point_least(long seed) {
    draw(seed);
    Length focus = DepthOfField.focusBetween(near, far);
    double m = ThinLens.magnification(focal, focus);
    FNumber any = new FNumber(2);
    FNumber balance = Diffraction.balance(any, DepthOfField.blur(focal, any, focus, far), m);
    double least = total(balance.value(), focus, m);
    assertThat(total(balance.value() * 1.05, focus, m)).isGreaterThan(least);
    assertThat(total(balance.value() / 1.05, focus, m)).isGreaterThan(least);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_window_opens_where_it_says_and_not_nearer(long seed) {
    draw(seed);
    Lens lens = new Lens(focal, new FNumber(1.8), new FNumber(16), focal.times(1.2));
    SharpWindow window = new SharpWindow(lens, far.minus(near), spot, spot);
    window
        .nearestOpen(near, near.times(100))
        .ifPresent(
            open -> {
              assertThat(window.opensAt(open)).isTrue();
              assertThat(window.opensAt(open.times(2))).isTrue();
              assertThat(open.equals(near) || shut(window, open.times(1 - 1e-9))).isTrue();
            });
  }

  /** Shut to the last digit, which the window itself forgives. */
  private static boolean shut(SharpWindow window, Length near) {
    double from = Math.max(window.open(near).value(), window.lens().widest().value());
    return from > Math.min(window.closed(near).value(), window.lens().narrowest().value());
  }

  private double total(double n, Length focus, double magnification) {
    FNumber fNumber = new FNumber(n);
    Length disc =
        Diffraction.disc(Diffraction.GREEN, Diffraction.effective(fNumber, magnification));
    return Diffraction.together(DepthOfField.blur(focal, fNumber, focus, far), disc).metres();
  }

  private Length hyperfocal(FNumber fNumber) {
    return DepthOfField.hyperfocal(focal, fNumber, spot);
  }

  private static double spread(SplittableRandom random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }
}
