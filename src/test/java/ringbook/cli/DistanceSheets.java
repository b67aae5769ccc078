package ringbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import ringbook.course.ComposedCourse;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Reckoning;
import ringbook.output.pack.Inks;
import ringbook.output.pack.PackMatter;
import ringbook.output.pack.PackOutput;
import ringbook.output.pack.Paper;
import ringbook.problems.Problems;

/** The worksheet of the lesson on the right distance, in grey on A4: one lesson is made soon. */
final class DistanceSheets {

  /** Name of the file. */
  static final String NAME = "04-right-distance.pdf";

  private DistanceSheets() {}

  /** Writes the pack of that lesson below {@code folder}; gives where it stands. */
  static Path write(CourseSources sources, Path folder, String... learners) throws IOException {
    ComposedCourse whole = sources.compose(new Problems()).orElseThrow();
    ComposedCourse one =
        new ComposedCourse(
            whole.info(),
            whole.lessons().stream().filter(l -> l.number() == 4).toList(),
            List.of());
    PackMatter matter =
        new PackMatter(
            Reckoning.of(sources.file().scene()),
            Optional.empty(),
            sources::composedFor,
            List.of(learners));
    new PackOutput(matter, List.of(Paper.A4), List.of(Inks.GREY)).write(one, folder);
    return folder.resolve("pack/a4-grey");
  }
}
