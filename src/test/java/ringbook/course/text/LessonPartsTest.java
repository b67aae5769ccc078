package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.course.ComposedLesson.Markup;

/** Every lesson has the parts that a reader of the others looks for. */
final class LessonPartsTest {

  static List<String> lessons() {
    return CourseText.lessons();
  }

  private static List<Element> boxes(String lesson, String kind) {
    List<Element> found = new ArrayList<>();
    gather(CourseText.tree(lesson), kind, found);
    return found;
  }

  private static void gather(Element element, String kind, List<Element> found) {
    if (Set.of(element.getAttribute("class").split(" ", -1)).contains(kind)
        || element.getNodeName().equals(kind)) {
      found.add(element);
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner) {
        gather(inner, kind, found);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void it_opens_with_a_story_before_its_first_heading(String lesson) {
    Markup first = (Markup) CourseText.blocks(lesson).get(0);
    int heading = first.xhtml().indexOf("<h2");
    assertThat(heading).as("first heading").isPositive();
    int words =
        ReadingEase.words(first.xhtml().substring(0, heading).replaceAll("<[^>]*>", " ")).size();
    assertThat(words).isBetween(40, 150);
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void it_has_figures_a_working_a_try_slips_a_caution_and_exercises(String lesson) {
    assertThat(CourseText.figures(lesson)).hasSizeGreaterThanOrEqualTo(2);
    assertThat(boxes(lesson, "working")).isNotEmpty();
    assertThat(boxes(lesson, "try")).hasSize(1);
    assertThat(boxes(lesson, "slips")).hasSize(1);
    assertThat(boxes(lesson, "caution")).hasSize(1);
    List<Block> exercises =
        CourseText.blocks(lesson).stream().filter(ExerciseBlock.class::isInstance).toList();
    assertThat(exercises).hasSizeGreaterThanOrEqualTo(8);
  }

  /** Cautions defer to the keeper of the object, to local rules, or to licensed people. */
  @ParameterizedTest
  @MethodSource("lessons")
  void its_caution_says_who_has_the_last_word(String lesson) {
    assertThat(boxes(lesson, "caution").get(0).getTextContent())
        .containsPattern("[Kk]eeper|[Ll]ocal (rules|law)|rules of the house|licensed|its rules");
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void it_ends_with_a_summary_of_six_lines(String lesson) {
    Element summary = boxes(lesson, "summary").get(0);
    List<Element> lines = new ArrayList<>();
    gather(summary, "li", lines);
    assertThat(lines).hasSize(6);
    List<Block> blocks = CourseText.blocks(lesson);
    assertThat(((Markup) blocks.get(blocks.size() - 1)).xhtml()).contains("class=\"summary\"");
  }
}
