package ringbook.output.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Reckoning;
import ringbook.problems.Problems;
import ringbook.units.Lengths;

/** The numbers of a group as the sheets ask for them. */
final class PackNumbersTest {

  private static PackNumbers of(String course) throws IOException {
    CourseSources sources = CourseSources.read(Path.of(course), new Problems()).orElseThrow();
    return new PackNumbers(Reckoning.of(sources.file().scene()));
  }

  /** A room with a workbench in the way, and one in which nothing is. */
  @Test
  void nothing_is_said_to_be_missing_where_there_is_room() throws IOException {
    PackNumbers demo = of("lessons/course.yaml");
    PackNumbers roomy = of("lessons/short-course/course.yaml");
    assertThat(demo.some("room.missing")).isTrue();
    assertThat(roomy.known("room.missing")).isTrue();
    assertThat(roomy.some("room.missing")).isFalse();
  }

  /** "32 in all" would be a length. */
  @Test
  void a_number_of_things_is_told_from_inches() throws IOException {
    CourseSources sources =
        CourseSources.read(Path.of("lessons/course.yaml"), new Problems()).orElseThrow();
    Reckoning metric = Reckoning.of(sources.file().scene());
    assertThat(new PackNumbers(metric).inAll()).isEqualTo("in all");
    assertThat(new PackNumbers(metric.told(Lengths.IMPERIAL)).inAll()).isEqualTo("altogether");
  }
}
