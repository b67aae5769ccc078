package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedExercise;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.ExerciseBlock;
import ringbook.course.ComposedLesson.FigureBlock;
import ringbook.course.ComposedLesson.Markup;
import ringbook.course.ComposedQuantity;

/** Links lead somewhere: inside the course to a page and a place on it, outside by https. */
final class LinksTest {

  /** Pages that no lesson source stands for. */
  private static final Set<String> BUILT = Set.of("quantities", ComposedCourse.FIELD_VIEW);

  private static final Pattern LINK = Pattern.compile(" href=\"([^\"]*)\"");
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");

  static List<String> pages() {
    return CourseText.pages();
  }

  private static String xhtml(String page) {
    StringBuilder all = new StringBuilder();
    for (Block block : CourseText.blocks(page)) {
      if (block instanceof Markup markup) {
        all.append(markup.xhtml());
      } else if (block instanceof FigureBlock drawn) {
        all.append(drawn.figure().captionXhtml()).append(id(drawn.figure().id()));
      } else if (block instanceof ExerciseBlock asked) {
        ComposedExercise exercise = asked.exercise();
        all.append(exercise.questionXhtml()).append(exercise.solutionXhtml());
        exercise.options().forEach(option -> all.append(option.textXhtml()));
        all.append(id(exercise.id()));
      }
    }
    return all.toString();
  }

  private static String id(String id) {
    return "<a id=\"" + id + "\"></a>";
  }

  private static Set<String> ids(String page) {
    Set<String> ids = new LinkedHashSet<>();
    if (page.equals("quantities")) {
      CourseText.COURSE.quantities().stream().map(ComposedQuantity::key).forEach(ids::add);
    } else {
      ID.matcher(xhtml(page)).results().forEach(id -> ids.add(id.group(1)));
    }
    return ids;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void every_link_leads_somewhere(String page) throws URISyntaxException {
    for (MatchResult link : LINK.matcher(xhtml(page)).results().toList()) {
      String href = link.group(1).replace("&amp;", "&");
      if (href.startsWith("course:")) {
        String[] place = href.substring("course:".length()).split("#", 2);
        assertThat(place[0]).as(href).matches(p -> BUILT.contains(p) || pages().contains(p));
        if (place.length > 1) {
          assertThat(ids(place[0])).as(href).contains(place[1]);
        }
      } else {
        URI address = new URI(href);
        assertThat(address.getScheme()).as(href).isEqualTo("https");
        assertThat(address.getHost()).as(href).contains(".");
        assertThat(address.getUserInfo()).as(href).isNull();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void no_place_has_the_name_of_another(String page) {
    Set<String> seen = new LinkedHashSet<>();
    for (MatchResult id : ID.matcher(xhtml(page)).results().toList()) {
      assertThat(seen.add(id.group(1))).as(id.group(1)).isTrue();
    }
  }
}
