package ringbook.course.compose;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringbook.Scenes;
import ringbook.course.ComposedLesson;
import ringbook.course.CourseFile;
import ringbook.course.CourseInfo;
import ringbook.exercises.Exercise;
import ringbook.figures.Figure;
import ringbook.ledger.Reckoning;
import ringbook.optics.Kit;
import ringbook.problems.Position;
import ringbook.problems.Problem;

/** Small lessons for tests, composed for the strawberry pot. */
final class Lessons {

  /** A figure that draws a square, so that tests hang on no real figure. */
  static final FigureSource SQUARE =
      new FigureSource() {
        @Override
        public List<String> names() {
          return List.of("square");
        }

        @Override
        public List<String> options(String name) {
          return List.of("side");
        }

        @Override
        public Figure draw(
            String name, Map<String, String> options, Reckoning reckoning, String idPrefix) {
          String svg = "<svg id=\"" + idPrefix + "box\"><title>A square</title></svg>";
          return new Figure("A square", "Four sides.", svg, List.of("side"), List.of(List.of("1")));
        }
      };

  static final Path FOLDER = Path.of("src/test/resources/ringbook/course/compose");

  private Lessons() {}

  /** The course that consists of {@code sources}, for the pot. */
  static Composer.Result compose(List<LessonSource> sources, String... ids) {
    return compose(sources, FOLDER, ids);
  }

  /** The same with pictures from {@code folder}. */
  static Composer.Result compose(List<LessonSource> sources, Path folder, String... ids) {
    return Composer.compose(course(ids), sources, List.of(), Set.of(), SQUARE, folder);
  }

  /** The same with exercises. */
  static Composer.Result compose(
      List<LessonSource> sources, List<Exercise> exercises, String... ids) {
    return Composer.compose(course(ids), sources, exercises, Set.of(), SQUARE, FOLDER);
  }

  /** A course file for the pot that names the lessons {@code ids}. */
  static CourseFile course(String... ids) {
    List<CourseFile.LessonRef> refs =
        List.of(ids).stream()
            .map(id -> new CourseFile.LessonRef(id, new Position("course.yaml", 1, 1)))
            .toList();
    CourseInfo info = new CourseInfo("Pots", "", "", "2026-11-02", "en", "For the pot.");
    Map<String, Kit> kits = Map.of("lens-camera", Scenes.potWithLensCamera().kit());
    return new CourseFile(info, Scenes.pot(), kits, refs);
  }

  /** A lesson called {@code small} with {@code body} below its front matter of five lines. */
  static LessonSource small(String body) {
    return new LessonSource(
        "small.md", "---\nid: small\ntitle: Small\naim: You can test.\n---\n" + body);
  }

  /** The only lesson of a course made of {@code body}. */
  static ComposedLesson lesson(String body) {
    Composer.Result result = compose(List.of(small(body)), "small");
    if (result.course().isEmpty()) {
      throw new AssertionError(result.problems().toString());
    }
    return result.course().get().lessons().get(0);
  }

  /** The markup of a lesson made of {@code body}, which places no figure. */
  static String markup(String body) {
    StringBuilder all = new StringBuilder();
    for (ComposedLesson.Block block : lesson(body).blocks()) {
      all.append(((ComposedLesson.Markup) block).xhtml());
    }
    return all.toString();
  }

  /** The problems of a lesson made of {@code body}. */
  static List<String> problems(String body) {
    return compose(List.of(small(body)), "small").problems().stream()
        .map(Problem::toString)
        .toList();
  }
}
