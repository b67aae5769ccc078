package ringbook.course.compose;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.CourseFile;
import ringbook.course.CourseFileReader;
import ringbook.course.ExerciseReader;
import ringbook.exercises.Exercise;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.VariedExercise;
import ringbook.problems.Position;
import ringbook.problems.Problems;

/**
 * The files of a course, read: the course file, the lessons beside it ({@code *.md}) and the
 * exercises in the folder {@code exercises} beside the folder of the lessons ({@code *.yaml}). With
 * {@code lessons from} the same of another folder, too.
 *
 * @param file the course file
 * @param lessons all lessons of the folder, in order of their file names
 * @param varied all exercises, with their variants
 * @param withFaults ids of exercises that have faults, which have been told
 * @param folder where the lessons and their pictures are
 */
public record CourseSources(
    CourseFile file,
    List<LessonSource> lessons,
    List<VariedExercise> varied,
    Set<String> withFaults,
    Path folder) {

  public CourseSources {
    lessons = List.copyOf(lessons);
    varied = List.copyOf(varied);
  }

  /** All exercises as the site and the book print them. */
  public List<Exercise> exercises() {
    return varied.stream().map(VariedExercise::own).toList();
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
    Path own = courseFile.getParent() == null ? Path.of("") : courseFile.getParent();
    Set<Path> folders = new LinkedHashSet<>(List.of(own.normalize()));
    Optional<Path> shared = shared(own, file.get(), problems);
    shared.ifPresent(folders::add);
    List<LessonSource> lessons = new ArrayList<>();
    ExerciseReader exercises = new ExerciseReader(file.get(), problems);
    for (Path folder : folders) {
      for (Path lesson : files(folder, "*.md")) {
        text(lesson, problems)
            .ifPresent(text -> lessons.add(new LessonSource(lesson.toString(), text)));
      }
      Path beside = folder.toAbsolutePath().normalize().resolveSibling("exercises");
      for (Path path : files(beside, "*.yaml")) {
        String shown = shown(path, folder);
        text(path, problems).ifPresent(text -> exercises.read(shown, text));
      }
    }
    Path pictures = shared.orElse(own).toAbsolutePath().normalize();
    return Optional.of(
        new CourseSources(
            file.get(), lessons, exercises.varied(), exercises.withFaults(), pictures));
  }

  /** The folder that {@code lessons from} names; empty, and told, where it is none. */
  private static Optional<Path> shared(Path own, CourseFile file, Problems problems) {
    if (file.shared().isEmpty()) {
      return Optional.empty();
    }
    CourseFile.FolderRef ref = file.shared().get();
    try {
      Path folder = own.resolve(ref.path()).normalize();
      if (Files.isDirectory(folder)) {
        return Optional.of(folder);
      }
    } catch (InvalidPathException noPath) {
      // told below, like a folder that is not there
    }
    problems.add(
        ref.position(),
        "there is no folder '" + ref.path() + "' beside the course file",
        "write the way from this course file to the folder of the lessons, such as '..'");
    return Optional.empty();
  }

  /** Composes the course; what keeps it from being composed is added to {@code problems}. */
  public Optional<ComposedCourse> compose(Problems problems) {
    Composer.Result result =
        Composer.compose(file, lessons, exercises(), withFaults, new ShelfFigures(), folder);
    problems.addAll(result.problems());
    return result.course().map(course -> course.with(PageData.of(this).script()));
  }

  /**
   * The exercises for marking: their options in plain text, the values put in. Faults of their
   * words are added to {@code problems}.
   */
  public List<Exercise> plainExercises(Problems problems) {
    return plainSources(problems).stream().map(ExerciseSource::own).toList();
  }

  /**
   * The same with the variants of the learners. Faults of the words of the book's own exercises are
   * added to {@code problems}.
   */
  public List<ExerciseSource> plainSources(Problems problems) {
    return PlainExercises.of(this, problems);
  }

  /** All exercises with the numbers of one learner, as the book would print them, by id. */
  public Map<String, ComposedExercise> composedFor(String learner) {
    return PlainExercises.composed(this, learner);
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
