package ringbook.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.units.Length;

/** By laying the frames along the face and counting. */
final class StripTest {

  private static Strip strip(double footprint, double overlap, double length) {
    return new Strip(new Length(footprint), overlap, new Length(length));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_frames_cover_the_face(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double overlap = random.nextDouble(0.1, 0.9);
    double length = random.nextDouble(0.1, 20);
    Strip strip = strip(1, overlap, length);
    double base = strip.base().metres();
    int frames = 1;
    for (double end = 1; end < length - 1e-9; end += base) {
      frames++;
    }
    assertThat(strip.fewest()).isEqualTo(frames);
    // With an end in the middle of the first and of the last picture.
    assertThat((Strip.centred(strip.length(), strip.base()) - 1) * base)
        .isGreaterThanOrEqualTo(length - 1e-9);
    assertThat((Strip.centred(strip.length(), strip.base()) - 2) * base).isLessThan(length);
    assertThat(Strip.centred(strip.length(), strip.base())).isGreaterThanOrEqualTo(strip.fewest());
    assertThat(strip.twice().isPresent()).isEqualTo(overlap >= 0.5);
    strip
        .twice()
        .ifPresent(
            twice -> {
              assertThat(twice).isGreaterThan(strip.fewest());
              assertThat(fewestOnASpot(strip, twice)).isGreaterThanOrEqualTo(2);
            });
    assertThat(Strip.overlapOf(strip.base(), strip.footprint())).isCloseTo(overlap, within(1e-12));
  }

  /** Fewest frames on any spot when the row starts one base before the face. */
  private static int fewestOnASpot(Strip strip, double row) {
    int fewest = Integer.MAX_VALUE;
    double base = strip.base().metres();
    double length = strip.length().metres();
    for (int i = 0; i <= 500; i++) {
      double spot = length * i / 500;
      int frames = 0;
      for (int k = 0; k < row; k++) {
        double from = k * base - base;
        frames += from <= spot + 1e-9 && spot <= from + 1 + 1e-9 ? 1 : 0;
      }
      fewest = Math.min(fewest, frames);
    }
    return fewest;
  }

  @Test
  void thirds_put_every_spot_into_three_frames() {
    assertThat(strip(1, 2.0 / 3, 5).imagesPerPoint()).isEqualTo(3);
  }

  @Test
  void refuses_a_row_that_never_moves_on() {
    assertThatThrownBy(() -> strip(1, 1, 5)).hasMessageContaining("overlap must be");
    assertThatThrownBy(() -> strip(1, -0.01, 5)).hasMessageContaining("overlap must be");
    assertThat(strip(1, 0, 5).fewest()).isEqualTo(5); // edge to edge
  }
}
