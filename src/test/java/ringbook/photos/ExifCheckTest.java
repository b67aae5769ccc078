package ringbook.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.Scenes;
import ringbook.checks.CheckValues;
import ringbook.checks.CheckValues.Row;
import ringbook.optics.Kit;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/** The tag numbers and check values of exif.csv. */
final class ExifCheckTest {

  /** How the facts show the value 5/2 (or 2) of a tag; those that change nothing are not here. */
  private static final Map<String, Function<PhotoFacts, Object>> READ =
      new TreeMap<>(
          Map.of(
              "ExposureTime", facts -> facts.settings().exposureSeconds(),
              "FNumber", facts -> facts.settings().fNumber(),
              "PhotographicSensitivity", facts -> facts.settings().iso(),
              "MaxApertureValue", facts -> facts.settings().widest(),
              "FocalLength", facts -> facts.settings().focalLength(),
              "FocalPlaneXResolution", facts -> facts.settings().sensorWidth(),
              "FocalLengthIn35mmFilm", facts -> facts.settings().equivalent(),
              "Orientation", PhotoFacts::orientation));

  @TempDir private Path folder;

  static Stream<Row> tags() {
    return CheckValues.read("exif.csv").stream()
        .filter(row -> row.topic().equals("Exif tag number"));
  }

  @ParameterizedTest
  @MethodSource("tags")
  void a_tag_by_its_published_number_changes_the_fact_of_its_name_and_no_other(Row row) {
    PhotoFolder photos = new PhotoFolder(folder);
    int tag = Integer.decode(row.expected().get(0));
    PhotoFacts without = photos.facts(ExifBytes.phone());
    PhotoFacts with = photos.facts(set(ExifBytes.phone(), row.word("tag"), tag));
    READ.forEach(
        (name, fact) -> {
          if (name.equals(row.word("tag"))) {
            assertThat(fact.apply(with)).as(name).isNotEqualTo(fact.apply(without));
          } else {
            assertThat(fact.apply(with)).as(name).isEqualTo(fact.apply(without));
          }
        });
  }

  private static ExifBytes set(ExifBytes exif, String name, int tag) {
    return switch (name) {
      case "PhotographicSensitivity", "FocalLengthIn35mmFilm" -> exif.whole(tag, 50);
      case "Orientation" -> exif.whole(tag, 2);
      case "FocalPlaneXResolution" -> exif.rational(tag, 1800, 1);
      default -> exif.rational(tag, 5, 2);
    };
  }

  @Test
  void the_sensor_width_of_a_focal_plane_resolution() {
    Row row = row("EXF-13");
    ExifBytes exif =
        ExifBytes.phone()
            .size((int) row.number("pixels"), 3744)
            .without(0xA405)
            .rational(0xA20E, 5616000, 1459)
            .whole(0xA210, 2);
    assertThat(row.word("resolution")).isEqualTo("5616000/1459");
    assertThat(
            new PhotoFolder(folder)
                .facts(exif)
                .settings()
                .sensorWidth()
                .orElseThrow()
                .millimetres())
        .isCloseTo(Double.parseDouble(row.expected().get(0)), within(row.tolerance()));
  }

  @Test
  void the_bounds_of_a_crop_factor_from_a_rounded_equivalent() {
    Row row = row("EXF-14");
    PhotoFacts facts = new PhotoFolder(folder).facts(ExifBytes.phone());
    Position file = Position.ofFile("photo");
    PhotoKit kit = PhotoKit.of(facts, file, new Problems()).orElseThrow();
    double crop =
        kit.in(Scenes.pot(), file, new Problems()).orElseThrow().kit().sensor().cropFactor();
    double error = kit.equivalentError().orElseThrow();
    assertThat(crop * (1 - error))
        .isCloseTo(Double.parseDouble(row.expected().get(0)), within(row.tolerance()));
    assertThat(crop * (1 + error))
        .isCloseTo(Double.parseDouble(row.expected().get(1)), within(row.tolerance()));
    assertThat(kit.in(Scenes.pot(), file, new Problems()).orElseThrow().kit().basis())
        .isEqualTo(Kit.Basis.FROM_EQUIVALENT);
  }

  private static Row row(String id) {
    return CheckValues.read("exif.csv").stream()
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
