package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ringbook.exercises.ExerciseSource;
import ringbook.exercises.FaultTask;
import ringbook.exercises.PlanTask;
import ringbook.exercises.Task;

/** How much practice the course offers at least. Faded workings are not counted. */
final class CourseSizeTest {

  private static final Path LESSONS = Path.of("lessons");
  private static final List<ExerciseSource> EXERCISES = VariantsTest.exercises();

  @Test
  void there_are_130_exercises_of_which_70_differ_from_learner_to_learner() {
    assertThat(EXERCISES).hasSizeGreaterThanOrEqualTo(130);
    assertThat(EXERCISES.stream().filter(ExerciseSource::varies).count())
        .isGreaterThanOrEqualTo(70);
  }

  @Test
  void twelve_ask_for_a_fault_and_eight_for_a_plan() {
    assertThat(ofKind(FaultTask.class)).isGreaterThanOrEqualTo(12);
    assertThat(ofKind(PlanTask.class)).isGreaterThanOrEqualTo(8);
  }

  private static long ofKind(Class<? extends Task> kind) {
    return EXERCISES.stream().filter(source -> kind.isInstance(source.own().task())).count();
  }

  @Test
  void every_exercise_stands_in_one_lesson() throws IOException {
    List<String> placed = placed();
    Set<String> ids = new TreeSet<>();
    EXERCISES.forEach(source -> ids.add(source.id()));
    assertThat(placed).doesNotHaveDuplicates();
    assertThat(new TreeSet<>(placed)).isEqualTo(ids);
  }

  @Test
  void every_lesson_has_eight_or_more_of_several_kinds() throws IOException {
    for (Path lesson : lessons()) {
      List<String> ids = placed(lesson);
      Set<String> kinds = new TreeSet<>();
      for (ExerciseSource source : EXERCISES) {
        if (ids.contains(source.id())) {
          kinds.add(source.own().task().getClass().getSimpleName());
        }
      }
      assertThat(ids).as(lesson.toString()).hasSizeGreaterThanOrEqualTo(8);
      assertThat(kinds).as(lesson.toString()).hasSizeGreaterThanOrEqualTo(4);
    }
  }

  private static List<Path> lessons() throws IOException {
    try (Stream<Path> files = Files.list(LESSONS)) {
      return files
          .filter(file -> file.getFileName().toString().matches("\\d\\d-.*\\.md"))
          .sorted()
          .toList();
    }
  }

  private static List<String> placed() throws IOException {
    List<String> all = new ArrayList<>();
    for (Path lesson : lessons()) {
      all.addAll(placed(lesson));
    }
    return all;
  }

  private static List<String> placed(Path lesson) throws IOException {
    Matcher fences =
        Pattern.compile("^`{3,}exercise (\\S+)$", Pattern.MULTILINE)
            .matcher(Files.readString(lesson));
    return fences.results().map(found -> found.group(1)).toList();
  }
}
