package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.problems.Problems;

/**
 * The website of the demo, made once for all test classes that only read it.
 *
 * @param folder holds the folder {@code site}
 * @param sources what it was made from
 */
record DemoSite(Path folder, CourseSources sources) {

  private static DemoSite shared;

  /** Its pages; they go with the last test. */
  static DemoSite shared() throws IOException {
    if (shared == null) {
      Path folder = Files.createTempDirectory("demo-site");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
      shared = new DemoSite(folder, write(folder));
    }
    return shared;
  }

  private static void delete(Path folder) {
    try (Stream<Path> inside = Files.walk(folder)) {
      List<Path> innermostFirst = inside.sorted(Comparator.reverseOrder()).toList();
      for (Path one : innermostFirst) {
        Files.delete(one);
      }
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** The page that lies in a file of this name without its ending. */
  Path page(String name) {
    return folder.resolve("site/" + name + ".html");
  }

  /** Writes it into {@code dir} and gives what it was made from. */
  private static CourseSources write(Path dir) throws IOException {
    Problems problems = new Problems();
    CourseSources sources =
        CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow();
    Optional<ComposedCourse> course = sources.compose(problems);
    assertThat(problems.sorted()).isEmpty();
    new SiteOutput().write(course.orElseThrow(), dir);
    return sources;
  }
}
