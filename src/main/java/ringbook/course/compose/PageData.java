package ringbook.course.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import ringbook.browser.CourseData;
import ringbook.course.CourseFile;
import ringbook.exercises.Exercise;
import ringbook.exercises.VariedExercise;
import ringbook.exercises.Wording;
import ringbook.figures.SvgWriter;
import ringbook.ledger.Reckoning;
import ringbook.problems.Problems;
import ringbook.values.Expressions;
import ringbook.values.Template;

/** Writes what the script of the pages needs of a course: its scene, its kits, its exercises. */
final class PageData {

  /** Private characters stand for the values while the Markdown becomes XHTML. */
  private static final char MARK = '\ue000';

  private static final int FIRST = 0xe001;

  private final Scope scope;

  private PageData(CourseSources sources) {
    Set<String> lessons = new LinkedHashSet<>();
    for (CourseFile.LessonRef ref : sources.file().lessons()) {
      lessons.add(ref.id());
    }
    CourseParts parts =
        CourseParts.of(
            new ShelfFigures(), sources.exercises(), sources.withFaults(), sources.folder());
    // Faults of the words have been told where the lessons were composed.
    CourseScope course = new CourseScope(parts, lessons, new Problems());
    course.leaveOutOthers();
    Page page = new Page("exercise", course);
    Expressions values =
        new Expressions(Reckoning.of(sources.file().scene()), sources.file().otherKits());
    this.scope = new Scope(page, offset -> null, values, true);
  }

  static CourseData of(CourseSources sources) {
    PageData data = new PageData(sources);
    CourseFile file = sources.file();
    CourseData course = new CourseData(file.info().title(), file.scene(), file.otherKits());
    for (VariedExercise exercise : sources.varied()) {
      data.add(exercise, course);
    }
    return course;
  }

  private void add(VariedExercise varied, CourseData course) {
    Exercise stated = varied.stated();
    WordingWriter words = new WordingWriter(scope, stated.asked());
    Map<String, String> shown = new LinkedHashMap<>();
    UnaryOperator<Wording> plain =
        wording -> {
          String xhtml = template(wording, words::line);
          String text = template(wording, w -> PlainText.of(words.line(w)).replace('\n', ' '));
          if (!xhtml.equals(SvgWriter.escaped(text))) {
            shown.put(text, xhtml);
          }
          return wording.with(text);
        };
    Exercise templates =
        new Exercise(
            stated.id(),
            stated.title(),
            blocks(stated.ask(), words),
            stated.hint().map(hint -> blocks(hint, words)),
            stated.reckoning(),
            stated.task().worded(plain));
    course.add(templates, varied.variety(), shown);
  }

  private static Wording blocks(Wording wording, WordingWriter words) {
    return wording.with(template(wording, words::blocks));
  }

  /** What {@code written} makes of the wording, its values left in place. */
  private static String template(Wording wording, Function<Wording, String> written) {
    List<String> expressions = new ArrayList<>();
    String marked =
        Template.fill(
            wording.markdown(),
            expression -> {
              expressions.add(expression);
              return "" + MARK + (char) (FIRST + expressions.size() - 1);
            });
    String out = written.apply(wording.with(marked));
    StringBuilder restored = new StringBuilder();
    for (int i = 0; i < out.length(); i++) {
      if (out.charAt(i) == MARK) {
        restored.append("${").append(expressions.get(out.charAt(++i) - FIRST)).append('}');
      } else {
        restored.append(out.charAt(i));
      }
    }
    return restored.toString();
  }
}
