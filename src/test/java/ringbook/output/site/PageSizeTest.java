package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a reader has to fetch, packed as a server packs it (gzip, RFC 1952): the limits are those
 * that the project sets itself.
 */
final class PageSizeTest {

  private static final int CALCULATIONS = 150_000;
  private static final int LESSON = 300_000;

  /** The typefaces, as they are: a page shows the reader's own until they have come. */
  private static final int FONTS = 2_700_000;

  private static final Pattern FETCHED =
      Pattern.compile("<(?:script src|link rel=\"stylesheet\" href)=\"([^\"]*)\"");

  /** Files of the lessons, with those they fetch at once. */
  static List<String> lessons() throws IOException {
    try (Stream<Path> pages = Files.list(file(""))) {
      return pages
          .map(page -> page.getFileName().toString())
          .filter(name -> name.endsWith(".html"))
          .filter(name -> text(name).contains("<body class=\"lesson\">"))
          .sorted()
          .toList();
    }
  }

  private static Path file(String name) throws IOException {
    return DemoSite.shared().folder().resolve("site").resolve(name);
  }

  private static String text(String name) {
    try {
      return Files.readString(file(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int packed(String name) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (OutputStream out =
        new GZIPOutputStream(bytes) {
          {
            def.setLevel(Deflater.BEST_COMPRESSION);
          }
        }) {
      Files.copy(file(name), out);
    }
    return bytes.size();
  }

  @Test
  void the_calculations_stay_small() throws IOException {
    assertThat(packed("js/calc.js")).isBetween(10_000, CALCULATIONS);
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void a_lesson_with_the_calculations_stays_small(String lesson) throws IOException {
    int sum = packed(lesson) + packed("js/calc.js");
    List<String> fetched =
        FETCHED.matcher(text(lesson)).results().map(found -> found.group(1)).toList();
    assertThat(fetched).contains("js/live.js", "css/page.css").doesNotContain("js/calc.js");
    for (String file : fetched) {
      sum += packed(file);
    }
    assertThat(sum).isLessThanOrEqualTo(LESSON);
  }

  @Test
  void there_are_lessons_and_the_typefaces_stay_as_they_are() throws IOException {
    assertThat(lessons()).hasSizeGreaterThan(10);
    long fonts = 0;
    try (Stream<Path> files = Files.list(file("fonts"))) {
      for (Path file : files.toList()) {
        fonts += Files.size(file);
      }
    }
    assertThat(fonts).isBetween(100_000L, (long) FONTS);
  }
}
