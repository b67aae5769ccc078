package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.problems.Problems;

/** Words of a course in inches: no metric length is left, and no number of things reads as one. */
final class InchWordsTest {

  private static final Pattern WORDS = Pattern.compile(".{0,40}\\b(?:centi)?metres?\\b.{0,20}");

  /** Inputs of workings are in centimetres, with the inches in brackets behind them. */
  private static final Pattern METRIC =
      Pattern.compile(".{0,40}\\d[ \\u00a0](?:cm|m|cm/s|m/s)\\b(?! \\().{0,20}");

  /** "204 in all" is no length. */
  private static final Pattern COUNTED =
      Pattern.compile(".{0,40}\\d in (?:all|use|any|each)\\b.{0,20}");

  private static List<String> found(Pattern pattern, String text) {
    List<String> all = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      all.add(matcher.group());
    }
    return all;
  }

  @Test
  void lessons_and_exercises_speak_of_inches() {
    Problems problems = new Problems();
    ComposedCourse course = InchCourse.sources().compose(problems).orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    List<ComposedLesson.Block> blocks = new ArrayList<>();
    course.lessons().forEach(lesson -> blocks.addAll(lesson.blocks()));
    course.back().forEach(page -> blocks.addAll(page.blocks()));
    StringBuilder text = new StringBuilder();
    for (ComposedLesson.Block block : blocks) {
      if (block instanceof ComposedLesson.Markup markup) {
        text.append(words(markup.xhtml())).append('\n');
      } else if (block instanceof ComposedLesson.ExerciseBlock asked) {
        text.append(words(asked.exercise().questionXhtml())).append('\n');
      }
    }
    assertThat(text).contains("\u00a0in ", "\u00a0ft\u00a0");
    assertThat(found(WORDS, text.toString())).isEmpty();
    assertThat(found(METRIC, text.toString())).isEmpty();
    assertThat(found(COUNTED, text.toString())).isEmpty();
  }

  /** Without formulas, which stay metric, and tags; letters stand for what they show. */
  private static String words(String xhtml) {
    return xhtml
        .replaceAll("(?s)<(svg|math|code)\\b.*?</\\1>", "")
        .replaceAll("</(?:p|li|td|th|div)>", "\n")
        .replaceAll("<[^>]+>", "");
  }
}
