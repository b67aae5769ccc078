package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.course.ComposedFigure;

/**
 * Every figure can be had without the drawing. W3C, Web Content Accessibility Guidelines 2.2,
 * 1.1.1: a text alternative that serves the same purpose. The lengths are ours.
 */
final class FigureTextsTest {

  private static final int LONGEST_TITLE = 65;
  private static final int SHORTEST_ALTERNATIVE = 80;
  private static final int LONGEST_ALTERNATIVE = 520;
  private static final int LONGEST_CAPTION = 45;

  static List<String> pages() {
    return CourseText.pages();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void every_figure_has_title_alternative_caption_and_numbers(String page) {
    for (ComposedFigure figure : CourseText.figures(page)) {
      assertThat(figure.title()).as(figure.id()).isNotBlank().doesNotEndWith(".");
      assertThat(figure.title().length()).as(figure.id()).isLessThanOrEqualTo(LONGEST_TITLE);
      assertThat(figure.description()).as(figure.id()).isNotEqualTo(figure.title()).endsWith(".");
      assertThat(figure.description().length())
          .as(figure.id())
          .isBetween(SHORTEST_ALTERNATIVE, LONGEST_ALTERNATIVE);
      assertThat(figure.tableHead()).as(figure.id()).hasSizeGreaterThan(1);
      assertThat(figure.tableRows()).as(figure.id()).isNotEmpty();
      assertThat(figure.tableRows())
          .as(figure.id())
          .allSatisfy(row -> assertThat(row).hasSameSizeAs(figure.tableHead()));
      int words = ReadingEase.words(figure.captionXhtml().replaceAll("<[^>]*>", " ")).size();
      assertThat(words).as("caption of %s", figure.id()).isBetween(4, LONGEST_CAPTION);
    }
  }

  /** What the drawing tells a screen reader is what stands below it for everybody. */
  @ParameterizedTest
  @MethodSource("pages")
  void the_drawing_carries_its_words(String page) {
    for (ComposedFigure figure : CourseText.figures(page)) {
      String svg = figure.svg().replace("&#39;", "'").replace("&amp;", "&");
      assertThat(svg).as(figure.id()).contains("role=\"img\"").contains("<title");
      assertThat(svg).as(figure.id()).contains(figure.title()).contains(figure.description());
    }
  }

  @Test
  void no_two_figures_of_the_course_say_the_same() {
    Set<String> titles = new LinkedHashSet<>();
    Set<String> descriptions = new LinkedHashSet<>();
    for (String page : CourseText.pages()) {
      for (ComposedFigure figure : CourseText.figures(page)) {
        assertThat(titles.add(figure.title())).as("title of %s", figure.id()).isTrue();
        assertThat(descriptions.add(figure.description())).as("%s", figure.id()).isTrue();
      }
    }
  }

  /** A course that shows a picture twice with other numbers has run out of ideas. */
  @Test
  void no_kind_of_figure_comes_twice() {
    Set<String> names = new LinkedHashSet<>();
    for (String page : CourseText.pages()) {
      for (ComposedFigure figure : CourseText.figures(page)) {
        assertThat(names.add(figure.name())).as(figure.id()).isTrue();
      }
    }
    assertThat(names).hasSizeGreaterThan(40);
  }
}
