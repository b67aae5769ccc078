package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.output.MadeUpCourse;
import ringbook.site.ValidPage;

final class SiteOutputTest {

  @TempDir static Path dir;
  private static Path site;

  @BeforeAll
  static void write() throws IOException {
    new SiteOutput().write(MadeUpCourse.small(), dir);
    site = dir.resolve("site");
  }

  @ParameterizedTest
  @ValueSource(strings = {"index", "right-distance", "all-sharp", "one-ring", "quantities"})
  void every_page_is_valid_html(String page) throws IOException {
    assertThat(ValidPage.faults(site.resolve(page + ".html"))).isEmpty();
  }

  @Test
  void the_validator_sees_a_fault() throws IOException {
    Path bad = dir.resolve("bad.html");
    Files.writeString(bad, "<!DOCTYPE html><html lang=en><title>x</title><p><div></div></p>");
    assertThat(ValidPage.faults(bad)).isNotEmpty();
  }

  @Test
  void all_links_lead_somewhere() throws IOException {
    assertThat(SiteLinks.broken(site)).isEmpty();
    assertThat(SiteLinks.count(site)).isGreaterThan(50);
  }

  @Test
  void a_broken_link_is_found(@TempDir Path other) throws IOException {
    Files.writeString(other.resolve("a.html"), "<a id=\"x\" href=\"#x\"></a> <a href=\"#y\"></a>");
    Files.writeString(other.resolve("b.html"), "<a href=\"a.html#x\"></a> <a href=\"c.html\"></a>");
    assertThat(SiteLinks.broken(other)).containsExactly("a.html: #y", "b.html: c.html");
  }

  @Test
  void same_course_gives_same_bytes(@TempDir Path again) throws IOException {
    new SiteOutput().write(MadeUpCourse.small(), again);
    assertThat(digests(again)).isEqualTo(digests(dir.resolve("site").getParent()));
  }

  private static Map<String, Integer> digests(Path root) throws IOException {
    Map<String, Integer> digests = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root.resolve("site"))) {
      all.filter(Files::isRegularFile).forEach(p -> digests.put(name(root, p), digest(p)));
    }
    return digests;
  }

  private static String name(Path root, Path file) {
    return root.relativize(file).toString();
  }

  private static int digest(Path file) {
    try {
      return Arrays.hashCode(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void pages_hold_no_inline_style_script_or_handler() throws IOException {
    for (Path page : SiteLinks.pages(site)) {
      assertThat(Files.readString(page))
          .doesNotContainPattern("<style|<script(?! src=)| style=| on[a-z]+=")
          .contains("default-src 'none'");
    }
  }

  @Test
  void values_say_what_they_are() throws IOException {
    assertThat(Files.readString(site.resolve("one-ring.html")))
        .contains("<data title=\"standoff &amp; more\" class=\"quantity\"");
  }

  @Test
  void neighbours_are_linked_both_ways() throws IOException {
    assertThat(Files.readString(site.resolve("all-sharp.html")))
        .contains("rel=\"prev\" class=\"back\" href=\"right-distance.html\"")
        .contains("rel=\"next\" class=\"on\" href=\"one-ring.html\"");
    assertThat(Files.readString(site.resolve("one-ring.html")))
        .contains("rel=\"next\" class=\"on\" href=\"quantities.html\"");
  }
}
