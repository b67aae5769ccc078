package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.site.Contrast;

/** The palette's colours as they lie on each other; limits of WCAG 2.2, level AA. */
final class PaletteTest {

  private static final Path CSS = Path.of("site/css");
  private static final Pattern BLOCK = Pattern.compile("\\{([^{}]*--paper:[^{}]*)\\}");
  private static final Pattern COLOUR = Pattern.compile("--([a-z-]+): (#[0-9a-f]{6});");

  /** Success criterion 1.4.3, text of normal size. */
  private static final double TEXT = 4.5;

  /** Success criterion 1.4.6 (level AAA), for the page that is read in the sun. */
  private static final double OUTDOORS = 7;

  /** Success criterion 1.4.11, edges of controls and lines of drawings. */
  private static final double LINES = 3;

  static List<Map<String, String>> versions() throws IOException {
    List<Map<String, String>> versions = new ArrayList<>();
    for (String file : List.of("palette.css", "print.css")) {
      Matcher block = BLOCK.matcher(Files.readString(CSS.resolve(file)));
      while (block.find()) {
        Map<String, String> colours = new LinkedHashMap<>();
        COLOUR.matcher(block.group(1)).results().forEach(m -> colours.put(m.group(1), m.group(2)));
        versions.add(colours);
      }
    }
    return versions;
  }

  @Test
  void both_dark_lists_are_the_same_and_all_name_the_same_colours() throws IOException {
    List<Map<String, String>> versions = versions();
    assertThat(versions).hasSize(4);
    assertThat(versions.get(1)).isEqualTo(versions.get(2)).isNotEqualTo(versions.get(0));
    for (Map<String, String> version : versions) {
      assertThat(version.keySet()).isEqualTo(versions.get(0).keySet());
    }
  }

  @ParameterizedTest
  @MethodSource("versions")
  void texts_can_be_read_on_every_ground(Map<String, String> colours) {
    for (String text : List.of("ink", "soft", "accent")) {
      for (String ground : List.of("paper", "card", "sunk", "tint")) {
        assertContrast(colours, text, ground, TEXT);
      }
    }
    assertContrast(colours, "on-accent", "accent", TEXT);
    assertContrast(colours, "field-ink", "field", OUTDOORS);
    assertContrast(colours, "field-accent", "field", OUTDOORS);
    assertContrast(colours, "field-on", "field-accent", OUTDOORS);
  }

  @ParameterizedTest
  @MethodSource("versions")
  void lines_can_be_seen(Map<String, String> colours) {
    for (String line : List.of("ink", "edge", "accent", "second", "third")) {
      assertContrast(colours, line, "paper", LINES);
      assertContrast(colours, line, "card", LINES);
    }
  }

  private static void assertContrast(
      Map<String, String> colours, String one, String other, double limit) {
    assertThat(Contrast.ratio(colours.get(one), colours.get(other)))
        .as("%s on %s of %s", one, other, colours)
        .isGreaterThanOrEqualTo(limit);
  }

  @Test
  void no_colour_is_written_outside_the_palette() throws IOException {
    try (Stream<Path> files = Files.list(CSS)) {
      for (Path file : files.toList()) {
        if (!List.of("palette.css", "print.css").contains(file.getFileName().toString())) {
          assertThat(Files.readString(file))
              .as("%s", file)
              .doesNotContainPattern("#[0-9a-fA-F]{3}|rgba?\\(|hsla?\\(|: (white|black)");
        }
      }
    }
  }
}
