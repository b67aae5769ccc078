package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.problems.Problems;

/** The website of the demo, written anew for a test class. */
final class DemoSite {

  private DemoSite() {}

  /** Writes it into {@code dir} and gives what it was made from. */
  static CourseSources write(Path dir) throws IOException {
    Problems problems = new Problems();
    CourseSources sources =
        CourseSources.read(Path.of("lessons/course.yaml"), problems).orElseThrow();
    Optional<ComposedCourse> course = sources.compose(problems);
    assertThat(problems.sorted()).isEmpty();
    new SiteOutput().write(course.orElseThrow(), dir);
    return sources;
  }
}
