package ringbook.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.problems.Position;
import ringbook.problems.Problems;

final class PhotoReaderTest {

  @TempDir private Path folder;
  private PhotoFolder photos;

  @BeforeEach
  void open() {
    photos = new PhotoFolder(folder);
  }

  @Test
  void reads_every_setting_in_both_orders_of_bytes() {
    for (ByteOrder order : List.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)) {
      PhotoFacts facts =
          photos.facts(
              new ExifBytes(order)
                  .rational(0x829A, 1, 60)
                  .rational(0x829D, 18, 10)
                  .whole(0x8827, 200)
                  .rational(0x920A, 425, 100)
                  .whole(0xA405, 26)
                  .rational(0xA404, 0, 1)
                  .size(400, 300));
      Settings settings = facts.settings();
      assertThat(facts.doubts()).isEmpty();
      assertThat(facts.file()).contains(new Frame(400, 300));
      assertThat(settings.exposureSeconds()).hasValue(1.0 / 60);
      assertThat(settings.fNumber().orElseThrow().value()).isEqualTo(1.8);
      assertThat(settings.iso()).hasValue(200);
      assertThat(settings.focalLength().orElseThrow().millimetres()).isCloseTo(4.25, within(1e-9));
      assertThat(settings.equivalent().orElseThrow().millimetres()).isCloseTo(26, within(1e-9));
      assertThat(settings.digitalZoom()).isEqualTo(1);
    }
  }

  @Test
  void orientation_6_turns_what_is_seen_but_not_the_sensor() {
    PhotoFacts facts = photos.facts(ExifBytes.phone().whole(0x0112, 6));
    assertThat(facts.orientation()).isEqualTo(6);
    assertThat(facts.camera()).isEqualTo(new Frame(400, 300));
    assertThat(facts.shown()).isEqualTo(new Frame(300, 400));
    String kit = PhotoKit.of(facts, Position.ofFile("photo"), new Problems()).orElseThrow().block();
    assertThat(kit).contains("pixels across: 400 px", "pixels down: 300 px");
  }

  @Test
  void pixels_that_a_program_turned_are_no_resizing() {
    assertThat(photos.facts(ExifBytes.phone().size(300, 400)).doubts()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0x829A, exposure time",
    "0x829D, f-number",
    "0x920A, focal length",
  })
  void a_denominator_of_0_means_unknown(String tag, String name) {
    for (long numerator : new long[] {0, 1, 0xFFFFFFFFL}) {
      PhotoFacts facts =
          photos.facts(ExifBytes.phone().rational(Integer.decode(tag), numerator, 0));
      assertThat(facts.doubts())
          .singleElement()
          .asString()
          .contains("states the " + name + " as a fraction over 0");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0xA20E, 0xA20F})
  void a_focal_plane_resolution_over_0_is_left_out(int tag) {
    PhotoFacts facts = photos.facts(ExifBytes.phone().rational(tag, 4000, 0));
    assertThat(facts.settings().sensorWidth()).isEmpty();
    assertThat(facts.doubts()).singleElement().asString().contains("fraction over 0");
  }

  @Test
  void an_f_number_of_0_means_a_lens_without_contacts() {
    PhotoFacts facts = photos.facts(ExifBytes.phone().rational(0x829D, 0, 1));
    assertThat(facts.settings().fNumber()).isEmpty();
    assertThat(facts.doubts()).singleElement().asString().contains("f-number as 0");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 301, 65535})
  void an_equivalent_of_0_or_far_off_is_unknown(int equivalent) {
    PhotoFacts facts = photos.facts(ExifBytes.phone().whole(0xA405, equivalent));
    assertThat(facts.settings().equivalent()).isEmpty();
    assertThat(facts.doubts()).singleElement().asString().contains("35 mm equivalent");
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 300})
  void the_ends_of_the_range_are_taken(int equivalent) {
    PhotoFacts facts = photos.facts(ExifBytes.phone().whole(0xA405, equivalent));
    assertThat(facts.settings().equivalent()).isPresent();
  }

  @Test
  void a_focal_length_of_exactly_1_mm_is_a_stopgap() {
    PhotoFacts facts = photos.facts(ExifBytes.phone().rational(0x920A, 100, 100));
    assertThat(facts.settings().focalLength()).isEmpty();
    assertThat(facts.doubts()).singleElement().asString().contains("exactly 1 mm");
  }

  @Test
  void a_focal_plane_that_contradicts_the_equivalent_is_told() {
    // 4.25 mm at 26 mm equivalent: 43.27 mm * 4.25 / 26 * 0.8 = 5.66 mm along the long side.
    ExifBytes agreeing =
        ExifBytes.phone().rational(0xA20E, 40000, 57).rational(0xA20F, 40000, 57).whole(0xA210, 3);
    ExifBytes contradicting =
        ExifBytes.phone().rational(0xA20E, 30000, 57).rational(0xA20F, 30000, 57).whole(0xA210, 3);
    assertThat(photos.facts(agreeing).doubts()).isEmpty();
    assertThat(photos.facts(contradicting).doubts())
        .singleElement()
        .asString()
        .contains("sensor 7.6 mm wide", "5.66 mm");
  }

  @Test
  void the_focal_plane_of_a_picture_stored_upright_is_turned() {
    ExifBytes upright =
        ExifBytes.phone().size(300, 400).rational(0xA20F, 40000, 57).whole(0xA210, 3);
    Settings settings = photos.facts(upright).settings();
    assertThat(settings.sensorWidth().orElseThrow().millimetres()).isCloseTo(5.7, within(1e-9));
    assertThat(settings.sensorHeight()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"425, 1, 26, 707", "11, 10, 300, 0.159"})
  void a_focal_length_that_the_equivalent_rules_out_is_unknown(
      int numerator, int denominator, int equivalent, String diagonal) {
    // By hand: 43.27 mm * focal length / equivalent.
    PhotoFacts facts =
        photos.facts(
            ExifBytes.phone().rational(0x920A, numerator, denominator).whole(0xA405, equivalent));
    assertThat(facts.settings().focalLength()).isEmpty();
    assertThat(facts.settings().equivalent()).isPresent();
    assertThat(facts.doubts()).singleElement().asString().contains(diagonal + " mm diagonal");
  }

  @Test
  void digital_zoom_is_told() {
    PhotoFacts facts = photos.facts(ExifBytes.phone().rational(0xA404, 22, 10));
    assertThat(facts.settings().digitalZoom()).isEqualTo(2.2);
    assertThat(facts.doubts()).singleElement().asString().contains("Digital zoom of 2.2 times");
    assertThat(photos.facts(ExifBytes.phone().rational(0xA404, 0, 0)).doubts()).isEmpty();
  }

  @Test
  void a_resized_picture_is_told_and_the_pixels_of_the_camera_are_used() {
    PhotoFacts facts = photos.facts(ExifBytes.phone().size(4000, 3000));
    assertThat(facts.camera()).isEqualTo(new Frame(4000, 3000));
    assertThat(facts.doubts())
        .singleElement()
        .asString()
        .contains("400 by 300", "4000 by 3000", "resized or cropped");
  }

  @Test
  void each_setting_that_is_missing_is_told() {
    for (int tag : new int[] {0x829A, 0x829D, 0x8827, 0x920A, 0xA405}) {
      assertThat(photos.facts(ExifBytes.phone().without(tag)).doubts())
          .singleElement()
          .asString()
          .startsWith("The photograph does not state the ");
    }
  }

  @Test
  void a_picture_without_settings_says_so() {
    byte[] plain = ExifBytes.encoded(ExifBytes.grey(400, 300), "jpg");
    PhotoFacts facts = photos.read("plain.jpg", plain).facts().orElseThrow();
    assertThat(facts.doubts()).singleElement().asString().contains("no settings at all");
    assertThat(facts.camera()).isEqualTo(new Frame(400, 300));
  }

  @Test
  void content_counts_and_not_the_name() {
    byte[] png = ExifBytes.encoded(ExifBytes.grey(400, 300), "png");
    assertThat(photos.read("photo.jpg", png).facts().orElseThrow().format())
        .isEqualTo(PhotoFacts.Format.PNG);
    assertThat(photos.read("photo.txt", ExifBytes.phone().jpeg()).facts().orElseThrow().format())
        .isEqualTo(PhotoFacts.Format.JPEG);
  }

  @Test
  void of_a_heic_photograph_the_settings_are_read_and_the_pixels_are_not() {
    byte[] heic = HeicBytes.of(ExifBytes.phone().size(4000, 3000));
    PhotoFacts facts = photos.read("photo.heic", heic).facts().orElseThrow();
    assertThat(facts.format()).isEqualTo(PhotoFacts.Format.HEIC);
    assertThat(facts.file()).isEmpty();
    assertThat(facts.camera()).isEqualTo(new Frame(4000, 3000));
    assertThat(facts.settings()).isEqualTo(photos.facts(ExifBytes.phone()).settings());
    assertThat(facts.doubts()).singleElement().asString().contains("HEIC", "but not the pixels");
    byte[] noSize = HeicBytes.of(ExifBytes.phone().without(0xA002));
    assertThat(photos.read("photo.heic", noSize).problem())
        .isEqualTo("the photograph does not state how many pixels it has");
  }

  @Test
  void names_of_make_model_owner_and_serial_number_go_nowhere() {
    PhotoFacts facts =
        photos.facts(
            ExifBytes.phone()
                .text(0x010F, "Secretmake")
                .text(0x0110, "Secretmodel")
                .text(0x013B, "Secretartist")
                .text(0xA430, "Secretowner")
                .text(0xA431, "Secretserial")
                .text(0xA434, "Secretlens"));
    PhotoKit kit = PhotoKit.of(facts, Position.ofFile("photo"), new Problems()).orElseThrow();
    assertThat(facts.doubts()).isEmpty();
    assertThat(facts.toString()).doesNotContain("Secret");
    assertThat(PhotoReport.of("photo", facts, kit, java.util.Optional.empty()))
        .doesNotContain("Secret");
  }
}
