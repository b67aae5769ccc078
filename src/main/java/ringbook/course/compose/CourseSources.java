package ringbook.course.compose;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringbook.course.ComposedCourse;
import ringbook.course.CourseFile;
import ringbook.course.CourseFileReader;
import ringbook.course.ExerciseReader;
import ringbook.exercises.Exercise;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * The files of a course, read: the course file, the lessons beside it ({@code *.md}) and the
 * exercises in the folder {@code exercises} beside the folder of the lessons ({@code *.yaml}).
 *
 * @param file the course file
 * @param lessons all lessons of the folder, in order of their file names
 * @param exercises all exercises
 * @param withFaults ids of exercises that have faults, which have been told
 * @param folder where the course file and the lessons are
 */
public record CourseSources(
    CourseFile file,
    List<LessonSource> lessons,
    List<Exercise> exercises,
    Set<String> withFaults,
    Path folder) {

  public CourseSources {
    lessons = List.copyOf(lessons);
    exercises = List.copyOf(exercises);
  }

  /**
   * Reads the course whose course file is {@code courseFile}; empty, with problems told, where a
   * file has faults.
   *
   * @throws IOException if a file cannot be read
   */
  public static Optional<CourseSources> read(Path courseFile, Problems problems)
      throws IOException {
    Optional<CourseFile> file = courseFile(courseFile, problems);
    if (file.isEmpty()) {
      return Optional.empty();
    }
    Path folder = courseFile.toAbsolutePath().normalize().getParent();
    Path shownFolder = courseFile.getParent() == null ? Path.of("") : courseFile.getParent();
    List<LessonSource> lessons = new ArrayList<>();
    for (Path lesson : files(shownFolder, "*.md")) {
      text(lesson, problems)
          .ifPresent(text -> lessons.add(new LessonSource(lesson.toString(), text)));
    }
    ExerciseReader exercises = new ExerciseReader(file.get(), problems);
    for (Path path : files(folder.resolveSibling("exercises"), "*.yaml")) {
      String shown = shown(path, shownFolder);
      text(path, problems).ifPresent(text -> exercises.read(shown, text));
    }
    return Optional.of(
        new CourseSources(
            file.get(), lessons, exercises.exercises(), exercises.withFaults(), folder));
  }

  /** Composes the course; what keeps it from being composed is added to {@code problems}. */
  public Optional<ComposedCourse> compose(Problems problems) {
    Composer.Result result =
        Composer.compose(file, lessons, exercises, withFaults, new ShelfFigures(), folder);
    problems.addAll(result.problems());
    return result.course();
  }

  /**
   * The exercises for marking: their options in plain text, the values put in. Faults of their
   * words are added to {@code problems}.
   */
  public List<Exercise> plainExercises(Problems problems) {
    return PlainExercises.of(this, problems);
  }

  /** Reads the course file alone. */
  public static Optional<CourseFile> courseFile(Path courseFile, Problems problems)
      throws IOException {
    Optional<String> text = text(courseFile, problems);
    return text.isEmpty()
        ? Optional.empty()
        : CourseFileReader.read(courseFile.toString(), text.get(), problems);
  }

  /** The exercises' folder as the person would name it, not as the machine does. */
  private static String shown(Path file, Path lessonsFolder) {
    Path beside = lessonsFolder.resolveSibling("exercises");
    return beside.resolve(file.getFileName()).toString();
  }

  private static Optional<String> text(Path file, Problems problems) throws IOException {
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

  private static List<Path> files(Path folder, String pattern) throws IOException {
    List<Path> files = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, pattern)) {
        stream.forEach(files::add);
      }
    }
    files.sort(null);
    return files;
  }
}
