package ringbook.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import ringbook.course.CourseFile;
import ringbook.course.CourseFileReader;
import ringbook.problems.Position;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneDraft.Fault;

/** What every command does first: read the course file, and tell what is wrong with it. */
final class CourseReading {

  /** The course file a command takes when none is named. */
  static final String STANDARD = "lessons/course.yaml";

  private CourseReading() {}

  /** The course, or empty with problems told. */
  static Optional<CourseFile> read(Path file, Problems problems) throws IOException {
    Optional<String> text = text(file, problems);
    return text.isEmpty()
        ? Optional.empty()
        : CourseFileReader.read(file.toString(), text.get(), problems);
  }

  /** The text of a UTF-8 file, or empty with a problem told. */
  static Optional<String> text(Path file, Problems problems) throws IOException {
    try {
      return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
    } catch (CharacterCodingException notUtf8) {
      problems.add(
          Position.ofFile(file.toString()),
          "the file is not UTF-8 text",
          "save it as UTF-8 in your editor");
      return Optional.empty();
    }
  }

  /**
   * {@code scene} with changes in the form of {@link SceneChanges}, or empty with problems told.
   */
  static Optional<Scene> changed(Scene scene, List<String> changes, Problems problems) {
    Scene changed = scene;
    for (String change : changes) {
      SceneChanges.Result result = SceneChanges.apply(changed, change);
      for (Fault fault : result.faults()) {
        problems.add(Position.ofFile("--with"), fault.message(), fault.help());
      }
      changed = result.scene().orElse(changed);
    }
    return problems.isEmpty() ? Optional.of(changed) : Optional.empty();
  }

  /** Prints all problems and gives the exit code. */
  static int tell(Problems problems, java.io.PrintWriter err) {
    for (Problem problem : problems.sorted()) {
      err.println(problem);
    }
    int count = problems.sorted().size();
    err.println(count == 1 ? "1 problem." : count + " problems.");
    err.flush();
    return Main.PROBLEMS;
  }
}
