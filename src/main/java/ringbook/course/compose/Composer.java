package ringbook.course.compose;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.course.CourseFile;
import ringbook.course.values.Expressions;
import ringbook.exercises.Exercise;
import ringbook.ledger.Reckoning;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problem;
import ringbook.problems.Problems;

/** Composes the page model of a course from its file, its lessons and its exercises. */
public final class Composer {

  /**
   * The composed course, or what keeps it from being made.
   *
   * @param course present exactly when there is no problem
   * @param problems all of them, in order of the files
   */
  public record Result(Optional<ComposedCourse> course, List<Problem> problems) {
    public Result {
      problems = List.copyOf(problems);
    }
  }

  private final CourseFile file;
  private final Problems problems = new Problems();
  private final CourseParts parts;
  private final Expressions values;
  private final Map<String, Lesson> lessons = new LinkedHashMap<>();
  private final Map<String, Page> pages = new LinkedHashMap<>();

  private Composer(CourseFile file, CourseParts parts) {
    this.file = file;
    this.parts = parts;
    this.values = new Expressions(Reckoning.of(file.scene()), file.otherKits());
  }

  /**
   * Composes a course.
   *
   * @param file the course file
   * @param sources the lessons, in any order
   * @param exercises all exercises that lessons may place
   * @param withFaults ids of exercises that could not be read, which has been told already
   * @param figures where figures are taken from
   * @param folder where pictures named in lessons are looked up
   */
  public static Result compose(
      CourseFile file,
      List<LessonSource> sources,
      List<Exercise> exercises,
      Set<String> withFaults,
      FigureSource figures,
      Path folder) {
    return new Composer(file, CourseParts.of(figures, exercises, withFaults, folder))
        .compose(sources);
  }

  private Result compose(List<LessonSource> sources) {
    sources.forEach(this::read);
    CourseScope course = new CourseScope(parts, lessons.keySet(), problems);
    List<ComposedLesson> composed = new ArrayList<>();
    for (CourseFile.LessonRef ref : file.lessons()) {
      Lesson lesson = lessons.get(ref.id());
      if (lesson == null && lessons.size() == sources.size()) {
        problems.add(
            ref.position(),
            "there is no lesson '" + ref.id() + "'",
            Nearest.help(ref.id(), lessons.keySet()));
      } else if (lesson != null) {
        composed.add(lesson(lesson, composed.size() + 1, course));
      }
    }
    checkLinks(course);
    if (!problems.isEmpty()) {
      return new Result(Optional.empty(), problems.sorted());
    }
    return new Result(
        Optional.of(new ComposedCourse(file.info(), composed, Appendix.of(values.reckoning()))),
        List.of());
  }

  private void read(LessonSource source) {
    Optional<Lesson> lesson = LessonReader.read(source, problems);
    if (lesson.isPresent() && lessons.putIfAbsent(lesson.get().id(), lesson.get()) != null) {
      problems.add(
          Position.ofFile(source.file()),
          "another lesson has the id '" + lesson.get().id() + "' already",
          "give each lesson an id of its own");
    }
  }

  private ComposedLesson lesson(Lesson lesson, int number, CourseScope course) {
    Page page = new Page(lesson.id(), course);
    pages.put(lesson.id(), page);
    Scope scope = new Scope(page, lesson.lines(), values, false);
    Sink sink = Sink.ofLesson();
    new BlockWriter(scope).write(lesson.body(), sink);
    new FootnoteWriter(page).write(sink);
    return new ComposedLesson(lesson.id(), number, lesson.title(), lesson.aim(), sink.blocks());
  }

  private void checkLinks(CourseScope course) {
    for (LinkUse use : course.links()) {
      Page page = pages.get(use.lesson());
      if (page == null) {
        problems.add(
            use.position(),
            "lesson '" + use.lesson() + "' is not part of this course",
            "name it in the course file, or take the link out");
        continue;
      }
      Set<String> names = page.ids().names();
      if (!names.contains(use.anchor())) {
        problems.add(
            use.position(),
            "lesson '" + use.lesson() + "' has no place '#" + use.anchor() + "'",
            Nearest.help(use.anchor(), names));
      }
    }
  }
}
