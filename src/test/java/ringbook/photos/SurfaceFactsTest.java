package ringbook.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.shots.Subject.Surface;

/** Surfaces of rendered pictures, of which is known what they show. */
final class SurfaceFactsTest {

  @TempDir private Path folder;

  /** Grey level of a place, both coordinates from 0 to 1 along the width. */
  private interface Shade {
    double at(double x, double y);
  }

  private SurfaceFacts facts(String format, int width, Shade shade) {
    return SurfaceFacts.of(picture(format, width, shade)).orElseThrow();
  }

  private Path picture(String format, int width, Shade shade) {
    BufferedImage picture = new BufferedImage(width, width * 3 / 4, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < picture.getHeight(); row++) {
      for (int column = 0; column < width; column++) {
        double level = shade.at((column + 0.5) / width, (row + 0.5) / width);
        int grey = (int) Math.max(0, Math.min(255, Math.round(level)));
        picture.setRGB(column, row, grey << 16 | grey << 8 | grey);
      }
    }
    byte[] bytes = ExifBytes.encoded(picture, format);
    return new PhotoFolder(folder).write("picture." + format, bytes);
  }

  private static double checker(double x, double y) {
    return (Math.floor(x * 80) + Math.floor(y * 80)) % 2 == 0 ? 60 : 190;
  }

  /** A ball lit from above left, with a highlight of the given strength (0 for a matt ball). */
  private static double ball(double x, double y, double gloss) {
    double u = (x - 0.5) / 0.32;
    double v = (y - 0.375) / 0.32;
    double w = Math.sqrt(Math.max(0, 1 - u * u - v * v));
    if (w == 0) {
      return 30;
    }
    double facing = Math.max(0, (-u - v + 2 * w) / Math.sqrt(6));
    return 30 + 150 * facing + gloss * Math.pow(facing, 200);
  }

  @ParameterizedTest
  @CsvSource({"jpg, 600", "jpg, 2000", "jpg, 3300", "png, 1000"})
  void a_checker_is_textured_in_every_tile(String format, int width) {
    SurfaceFacts facts = facts(format, width, SurfaceFactsTest::checker);
    assertThat(facts.texturedShare()).isEqualTo(1);
    assertThat(facts.likely()).isEqualTo(Surface.TEXTURED);
  }

  @Test
  void strong_noise_of_large_grains_is_a_texture() {
    double[] grains = new SplittableRandom(1).doubles(300 * 300, 60, 190).toArray();
    SurfaceFacts facts =
        facts("jpg", 1000, (x, y) -> grains[((int) (y * 200)) * 300 + ((int) (x * 200))]);
    assertThat(facts.likely()).isEqualTo(Surface.TEXTURED);
  }

  @Test
  void an_even_wall_is_plain_even_with_the_noise_of_a_camera() {
    SplittableRandom random = new SplittableRandom(2);
    SurfaceFacts facts = facts("jpg", 2000, (x, y) -> 128 + random.nextDouble(-8, 8));
    assertThat(facts.texturedShare()).isZero();
    assertThat(facts.likely()).isEqualTo(Surface.PLAIN);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 3, 6})
  void the_slope_of_noise_is_its_size_over_the_root_of_2(double size) {
    // Central differences of independent pixels: variance 2 s^2 / 4.
    SplittableRandom random = new SplittableRandom(3);
    double spread = size * Math.sqrt(3); // of even noise of that standard deviation
    double[] levels = random.doubles(250_000, 128 - spread, 128 + spread).toArray();
    Luma luma = new Luma(500, 500, levels);
    double sum = 0;
    for (int tile = 0; tile < 400; tile++) {
      sum += Texture.slope(luma, 1 + tile % 20 * 24, 1 + tile / 20 * 24);
    }
    // The smaller eigenvalue lies a little below the mean of both.
    assertThat(sum / 400).isBetween(0.9 * size / Math.sqrt(2), size / Math.sqrt(2));
    assertThat(Texture.share(luma)).isEqualTo(size > 5 ? 1 : 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpg", "png"})
  void decoding_in_strips_gives_the_same_brightness(String format) {
    Path picture = picture(format, 2300, (x, y) -> 255 * x * y);
    Luma whole = LumaReader.read(picture).orElseThrow();
    Luma strips = LumaReader.read(picture, 100_000).orElseThrow();
    assertThat(whole.columns()).isEqualTo(1150);
    assertThat(whole.rows()).isEqualTo(862);
    for (int row = 0; row < whole.rows(); row += 7) {
      for (int column = 0; column < whole.columns(); column += 11) {
        assertThat(strips.at(column, row)).isEqualTo(whole.at(column, row));
        double known = 255 * (column + 0.5) * 2 / 2300 * (row + 0.5) * 2 / 2300;
        assertThat(whole.at(column, row)).isCloseTo(known, within(3.0));
      }
    }
  }

  @Test
  void stripes_are_plain_as_they_hold_in_one_direction_only() {
    SurfaceFacts facts = facts("jpg", 1000, (x, y) -> Math.floor(x * 80) % 2 == 0 ? 60 : 190);
    assertThat(facts.likely()).isEqualTo(Surface.PLAIN);
  }

  @Test
  void a_matt_ball_is_plain_and_the_same_ball_with_a_highlight_glossy() {
    SurfaceFacts matt = facts("jpg", 1000, (x, y) -> ball(x, y, 0));
    SurfaceFacts glossy = facts("jpg", 1000, (x, y) -> ball(x, y, 400));
    assertThat(matt.likely()).isEqualTo(Surface.PLAIN);
    assertThat(matt.clippedShare()).isZero();
    assertThat(glossy.likely()).isEqualTo(Surface.GLOSSY);
    assertThat(glossy.spots()).isEqualTo(1);
    assertThat(glossy.reasoned()).contains("glossy, it seems", "1 spot looks", "white spot");
  }

  @Test
  void a_bright_background_is_no_highlight() {
    SurfaceFacts facts = facts("jpg", 1000, (x, y) -> x < 0.4 ? 255 : 100);
    assertThat(facts.clippedShare()).isGreaterThan(0.2);
    assertThat(facts.likely()).isEqualTo(Surface.PLAIN);
  }

  @Test
  void a_white_pattern_is_no_highlight() {
    SurfaceFacts facts =
        facts(
            "jpg", 1000, (x, y) -> Math.hypot(x * 40 % 1 - 0.5, y * 40 % 1 - 0.5) < 0.3 ? 255 : 60);
    assertThat(facts.clippedShare()).isGreaterThan(0.05);
    assertThat(facts.likely()).isEqualTo(Surface.TEXTURED);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 7, 30})
  void a_tiny_picture_is_measured_without_a_fault(int width) {
    assertThat(facts("png", Math.max(2, width), (x, y) -> 128).likely()).isEqualTo(Surface.PLAIN);
  }

  @Test
  void a_file_that_is_no_picture_has_no_surface() {
    Path text = new PhotoFolder(folder).write("a.jpg", new byte[] {1, 2, 3});
    assertThat(SurfaceFacts.of(text)).isEmpty();
  }
}
