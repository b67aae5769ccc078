package ringbook.course.compose;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringbook.course.BackPage;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedQuantity;
import ringbook.course.CourseFile;
import ringbook.exercises.Exercise;
import ringbook.ledger.Reckoning;
import ringbook.plans.FieldSheet;
import ringbook.problems.Nearest;
import ringbook.problems.Position;
import ringbook.problems.Problem;
import ringbook.problems.Problems;
import ringbook.values.Expressions;

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
    boolean allRead = lessons.size() == sources.size();
    CourseScope course = new CourseScope(parts, lessons.keySet(), problems);
    course.leaveOut(leftOut());
    List<Lesson> back = named(file.back(), "page", allRead);
    GlossaryReader glossary = new GlossaryReader(course);
    back.forEach(page -> glossary.read(page, values));
    glossary.check(lessons.values());
    List<ComposedLesson> composed = new ArrayList<>();
    for (Lesson lesson : named(file.lessons(), "lesson", allRead)) {
      int number = course.nextLesson(lesson.id());
      List<Block> live = live(lesson, new Page(lesson.id(), course));
      composed.add(
          new ComposedLesson(
              lesson.id(), number, lesson.title(), lesson.aim(), Branches.shown(live), live));
    }
    List<BackPage> atBack = new ArrayList<>();
    for (Lesson page : back) {
      List<Block> live = live(page, Page.back(page.id(), course));
      atBack.add(new BackPage(page.id(), page.title(), page.aim(), Branches.shown(live), live));
    }
    checkLinks(course);
    if (!problems.isEmpty()) {
      return new Result(Optional.empty(), problems.sorted());
    }
    List<ComposedQuantity> appendix = Appendix.of(values.reckoning());
    Optional<FieldSheet> field = Optional.of(FieldSheet.of(values.reckoning()));
    return new Result(
        Optional.of(new ComposedCourse(file.info(), composed, atBack, appendix, "", field)),
        List.of());
  }

  /** Of a course that picks its lessons from another folder, those it does not take. */
  private Set<String> leftOut() {
    if (file.shared().isEmpty()) {
      return Set.of();
    }
    Set<String> left = new LinkedHashSet<>(lessons.keySet());
    file.lessons().forEach(ref -> left.remove(ref.id()));
    file.back().forEach(ref -> left.remove(ref.id()));
    return left;
  }

  private List<Lesson> named(List<CourseFile.LessonRef> refs, String kind, boolean allRead) {
    List<Lesson> named = new ArrayList<>();
    for (CourseFile.LessonRef ref : refs) {
      Lesson lesson = lessons.get(ref.id());
      if (lesson != null) {
        named.add(lesson);
      } else if (allRead) {
        problems.add(
            ref.position(),
            "there is no " + kind + " '" + ref.id() + "'",
            Nearest.help(ref.id(), lessons.keySet()));
      }
    }
    return named;
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

  /** What the page says, for other scenes too. */
  private List<Block> live(Lesson lesson, Page page) {
    pages.put(lesson.id(), page);
    Scope scope = new Scope(page, lesson.lines(), values, false);
    Sink sink = Sink.ofLesson();
    new BlockWriter(scope).write(lesson.body(), sink);
    new FootnoteWriter(page).write(sink);
    CourseScope course = page.course();
    if (course.glossary().isOn(page.lesson())) {
      return sink.blocks();
    }
    TermUses uses = page.isBack() ? new TermUses() : course.uses();
    return new TermLinker(course.glossary(), page.lesson(), lesson.everydayWords(), uses)
        .link(sink.blocks());
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
      if (!use.anchor().isEmpty() && !names.contains(use.anchor())) {
        problems.add(
            use.position(),
            "lesson '" + use.lesson() + "' has no place '#" + use.anchor() + "'",
            Nearest.help(use.anchor(), names));
      }
    }
  }
}
