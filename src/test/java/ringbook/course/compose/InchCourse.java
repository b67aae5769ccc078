package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import ringbook.exercises.ExerciseSource;
import ringbook.problems.Problems;

/** The course of the repository as a group has it that measures in inches. */
public final class InchCourse {

  private static CourseSources sources;

  private InchCourse() {}

  /** A course file like {@code lessons/course.yaml} but for its measures, in {@code folder}. */
  public static Path write(Path folder) throws IOException {
    String metric = Files.readString(Path.of("lessons/course.yaml"));
    String inches =
        metric
            .replace("\naim:\n", "\naim:\n  units: imperial\n")
            .replace(
                "\nlessons:\n",
                "\nlessons from: \""
                    + Path.of("lessons").toAbsolutePath().toString().replace('\\', '/')
                    + "\"\nlessons:\n");
    assertThat(inches).contains("units: imperial", "lessons from:");
    return Files.writeString(folder.resolve("course.yaml"), inches);
  }

  static synchronized CourseSources sources() {
    try {
      if (sources == null) {
        Path folder = Files.createDirectories(Path.of("target", "inch-course"));
        sources = CourseSources.read(write(folder), new Problems()).orElseThrow();
      }
      return sources;
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  static List<ExerciseSource> exercises() {
    Problems problems = new Problems();
    List<ExerciseSource> exercises = sources().plainSources(problems);
    assertThat(problems.sorted()).isEmpty();
    return exercises;
  }
}
