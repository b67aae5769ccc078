package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringbook.Scenes;
import ringbook.course.CourseFile;
import ringbook.course.ExerciseReader;
import ringbook.exercises.Exercise;
import ringbook.optics.Kit;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;

/**
 * The lessons of the course, composed for other groups: whatever camera, object and room they have,
 * no lesson may state a number that is not there.
 */
final class LessonsForAnyGroupTest {

  private static final CourseSources COURSE = read();

  private static CourseSources read() {
    try {
      return CourseSources.read(Path.of("lessons/course.yaml"), new Problems()).orElseThrow();
    } catch (IOException gone) {
      throw new UncheckedIOException(gone);
    }
  }

  static LongStream seeds() {
    Long one = Long.getLong("seed");
    return one != null ? LongStream.of(one) : LongStream.range(0, Long.getLong("seeds", 20));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "subject.outline = round",
        "subject.surface = glossy, subject.height = 12 cm, subject.width = 10 cm",
        "subject.surface = clear, subject.height = 20 cm, subject.width = 9 cm",
        "subject.surface = plain, subject.height = 3 mm, subject.width = 25 mm",
        "subject.outline = rectangular, subject.height = 84 cm, subject.width = 48 cm,"
            + " subject.depth = 44 cm, place.tableHeight = 0 cm, subject.thinnest = 22 mm",
        "subject.alike = 8, subject.sway = 3 mm, subject.thinnest = 0.1 mm",
        "place.illuminance = 40 lx, place.lampDistance = 30 cm, place.mains = 60 Hz",
        "place.illuminance = 60000 lx, place.flickerShare = 0 %",
        "aim.poses = 2, aim.step = 60°, aim.detail = 0.1 mm",
        "aim.step = 3°, aim.elevation = 60°, kit.stabiliser = 4 stops",
        "aim.hold = level, aim.step = 10°, aim.elevation = 20°, aim.detail = 0.5 mm"
      })
  void a_group_with_either_kit_reads_whole_lessons_and_can_do_their_exercises(String changes)
      throws IOException {
    for (Kit kit : kits()) {
      CourseFile file = COURSE.file();
      Scene with = new Scene(kit, file.scene().subject(), file.scene().place(), file.scene().aim());
      Scene scene = SceneChanges.apply(with, changes).scene().orElseThrow();
      CourseFile theirs = file.of(scene);
      assertThat(problems(theirs, exercises(theirs))).as(kit.name()).isEmpty();
    }
  }

  private static List<Kit> kits() {
    List<Kit> kits = new ArrayList<>(COURSE.file().otherKits().values());
    kits.add(COURSE.file().scene().kit());
    return kits;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void any_scene_gives_whole_lessons(long seed) {
    CourseFile file = COURSE.file();
    CourseFile theirs = file.of(Scenes.random(seed));
    assertThat(problems(theirs, COURSE.exercises())).isEmpty();
  }

  private static List<Exercise> exercises(CourseFile file) throws IOException {
    Problems problems = new Problems();
    ExerciseReader reader = new ExerciseReader(file, problems);
    try (Stream<Path> paths = Files.list(Path.of("exercises"))) {
      for (Path path : paths.sorted().toList()) {
        reader.read(path.toString(), Files.readString(path));
      }
    }
    assertThat(problems.sorted()).isEmpty();
    return reader.exercises();
  }

  private static List<String> problems(CourseFile file, List<Exercise> exercises) {
    Composer.Result result =
        Composer.compose(
            file,
            COURSE.lessons(),
            exercises,
            COURSE.withFaults(),
            new ShelfFigures(),
            COURSE.folder());
    return result.problems().stream().map(Object::toString).toList();
  }
}
