package ringbook.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.course.CourseFileReader;
import ringbook.optics.Kit;
import ringbook.problems.Position;
import ringbook.problems.Problems;

final class PhotoKitTest {

  private static final Position FILE = Position.ofFile("photo.jpg");

  @TempDir private Path folder;
  private PhotoFolder photos;

  @BeforeEach
  void open() {
    photos = new PhotoFolder(folder);
  }

  private PhotoKit kit(ExifBytes exif) {
    return PhotoKit.of(photos.facts(exif), FILE, new Problems()).orElseThrow();
  }

  private static Kit built(PhotoKit kit) {
    return kit.in(Scenes.pot(), FILE, new Problems()).orElseThrow().kit();
  }

  @Test
  void the_block_asks_for_what_no_photograph_tells() {
    assertThat(kit(ExifBytes.phone()).block())
        .isEqualTo(
            """
            kit:
              name: camera of the test photograph  # write what your group calls it
              pixels across: 400 px
              pixels down: 300 px
              focal length: 4.25 mm  # as set for this photograph
              equivalent: 26 mm  # in whole millimetres, so the sensor worked out from it may be 1.9 % off either way
              widest: f/1.8  # as set for this photograph; if it can be changed, write the smallest and add 'narrowest:'
              closest focus: 10 cm  # assumed, as no photograph tells it: measure from the lens to the nearest thing it can hold sharp
            """);
  }

  @Test
  void the_equivalent_and_the_focal_length_give_the_sensor() {
    Kit kit = built(kit(ExifBytes.phone()));
    assertThat(kit.basis()).isEqualTo(Kit.Basis.FROM_EQUIVALENT);
    // By hand: 43.2666 mm * 4.25 / 26 = 7.0724 mm diagonal, of which 4/5 across.
    assertThat(kit.sensor().width().millimetres()).isCloseTo(5.6579, within(1e-4));
  }

  @Test
  void the_equivalent_alone_leaves_the_sensor_assumed() {
    PhotoKit kit = kit(ExifBytes.phone().without(0x920A));
    assertThat(built(kit).basis()).isEqualTo(Kit.Basis.ASSUMED);
    assertThat(kit.equivalentError()).hasValue(0.5 / 26);
    assertThat(kit.block()).contains("a small phone sensor is assumed");
  }

  @Test
  void the_focal_plane_stands_in_for_a_missing_equivalent() {
    PhotoKit kit =
        kit(
            ExifBytes.phone()
                .without(0xA405)
                .rational(0xA20E, 40000, 57)
                .rational(0xA20F, 40000, 57)
                .whole(0xA210, 3));
    assertThat(kit.equivalentError()).isEmpty();
    assertThat(built(kit).basis()).isEqualTo(Kit.Basis.GIVEN);
    assertThat(built(kit).sensor().width().millimetres()).isCloseTo(5.7, within(1e-9));
  }

  @Test
  void a_lens_that_opens_wider_than_it_was_set_gets_a_range() {
    // APEX 2 is f/2.0 (Exif 2.32, from memory: N = 2^(Av/2)).
    Kit kit = built(kit(ExifBytes.phone().rational(0x829D, 8, 1).rational(0x9205, 2, 1)));
    assertThat(kit.lens().widest().value()).isEqualTo(2);
    assertThat(kit.lens().narrowest().value()).isEqualTo(8);
  }

  @Test
  void the_f_number_set_counts_where_the_widest_is_only_coarse() {
    // f/1.8 set, 16/10 APEX stated, which is f/1.74.
    Kit kit = built(kit(ExifBytes.phone().rational(0x9205, 16, 10)));
    assertThat(kit.lens().hasFixedAperture()).isTrue();
    assertThat(kit.lens().widest().value()).isEqualTo(1.8);
  }

  @Test
  void what_is_assumed_is_marked_so() {
    String block =
        kit(ExifBytes.phone().rational(0x920A, 35, 1).whole(0xA405, 53).without(0x829D)).block();
    assertThat(block).contains("widest: f/2  # assumed", "closest focus: 35 cm  # assumed");
  }

  @Test
  void a_photograph_that_hides_how_wide_it_sees_is_refused() {
    Problems problems = new Problems();
    PhotoFacts facts = photos.facts(ExifBytes.phone().without(0xA405));
    assertThat(PhotoKit.of(facts, FILE, problems)).isEmpty();
    assertThat(problems.sorted().get(0))
        .hasToString(
            """
            photo.jpg: error: the photograph does not state how wide the camera sees
              mend: write 'equivalent:' or 'sensor width:', 'sensor height:' and 'focal length:' in the course file, from the camera's manual""");
  }

  @Test
  void a_picture_of_few_pixels_gives_no_kit() {
    Problems problems = new Problems();
    PhotoKit kit = kit(ExifBytes.phone().size(90, 60));
    assertThat(kit.in(Scenes.pot(), FILE, problems)).isEmpty();
    assertThat(problems.sorted().get(0).message()).contains("pixels along the long side");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void the_block_pasted_into_a_course_file_gives_the_same_kit(long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    ExifBytes exif =
        ExifBytes.phone()
            .size(random.nextInt(100, 9000), random.nextInt(100, 9000))
            .rational(0x920A, random.nextInt(1100, 200_000), 1000)
            .rational(0x829D, random.nextInt(700, 64_000), 1000)
            .rational(0x9205, random.nextInt(1, 1000), 100)
            .whole(0xA405, random.nextInt(10, 301));
    if (random.nextBoolean()) {
      exif.without(0x920A);
    }
    PhotoKit kit = kit(exif);
    Problems found = new Problems();
    var scene = kit.in(Scenes.pot(), FILE, found);
    String course = Files.readString(Path.of("lessons/course.yaml"));
    int start = course.indexOf("\nkit:") + 1;
    String pasted =
        course.substring(0, start) + kit.block() + course.substring(course.indexOf("\n\n", start));
    Problems problems = new Problems();
    var read = CourseFileReader.read("course.yaml", pasted, problems);
    assertThat(read.map(file -> file.scene().kit())).isEqualTo(scene.map(s -> s.kit()));
    assertThat(problems.size()).isEqualTo(found.size());
  }
}
