package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The sheet by which a trainer marks a learner's own set: its points add up to what it promises.
 */
final class MarkingSheetTest {

  private static final String LESSON = "your-own-object";
  private static final int OF = 3;
  private static final int POINTS = 4;

  /** The cells of the table whose columns are called so, row by row, without its head. */
  private static List<List<String>> rows() {
    NodeList tables = CourseText.tree(LESSON).getElementsByTagName("table");
    for (int i = 0; i < tables.getLength(); i++) {
      List<List<String>> rows = rows((Element) tables.item(i));
      if (rows.get(0).equals(List.of("Link", "Full points if", "Half if", "Of", "Points"))) {
        return rows.subList(1, rows.size());
      }
    }
    throw new AssertionError("no marking sheet");
  }

  private static List<List<String>> rows(Element table) {
    List<List<String>> rows = new ArrayList<>();
    NodeList lines = table.getElementsByTagName("tr");
    for (int i = 0; i < lines.getLength(); i++) {
      List<String> cells = new ArrayList<>();
      NodeList parts = lines.item(i).getChildNodes();
      for (int j = 0; j < parts.getLength(); j++) {
        if (parts.item(j) instanceof Element cell) {
          cells.add(cell.getTextContent().strip());
        }
      }
      rows.add(cells);
    }
    return rows;
  }

  /** The number that {@code pattern} finds in the lesson's text. */
  private static int stated(String pattern) {
    StringBuilder all = new StringBuilder();
    CourseText.passages(LESSON).forEach(passage -> all.append(passage.text()).append('\n'));
    Matcher matcher = Pattern.compile(pattern).matcher(all);
    assertThat(matcher.find()).as(pattern).isTrue();
    return Integer.parseInt(matcher.group(1));
  }

  @Test
  void its_points_add_up_to_what_the_lesson_states() {
    List<List<String>> rows = rows();
    List<String> last = rows.get(rows.size() - 1);
    assertThat(last.get(0)).isEqualTo("Sum");
    int sum = 0;
    for (List<String> row : rows.subList(0, rows.size() - 1)) {
      sum += Integer.parseInt(row.get(OF));
    }
    assertThat(sum).isEqualTo(50);
    assertThat(last.get(OF)).isEqualTo(String.valueOf(sum));
    assertThat(stated("(\\d+) points in all")).isEqualTo(sum);
    assertThat(stated("from (\\d+) on the set can go")).isBetween(sum / 2 + 1, sum - 1);
  }

  @Test
  void every_line_has_points_and_says_what_they_are_for() {
    List<List<String>> rows = rows();
    assertThat(rows).hasSizeGreaterThan(2);
    for (List<String> row : rows.subList(0, rows.size() - 1)) {
      assertThat(row).hasSize(POINTS + 1);
      assertThat(row.subList(0, OF))
          .as(row.get(0))
          .noneMatch(String::isEmpty)
          .doesNotHaveDuplicates();
      assertThat(Integer.parseInt(row.get(OF))).as(row.get(0)).isPositive();
      assertThat(row.get(POINTS)).as("room for the trainer's pen").isEmpty();
    }
    assertThat(rows.stream().map(row -> row.get(0))).doesNotHaveDuplicates();
  }

  /** A link that is marked is one that the lesson's order of work has, and the other way round. */
  @Test
  void the_links_are_those_of_the_lesson() {
    String headings =
        CourseText.passages(LESSON).stream()
            .filter(passage -> passage.element().equals("h2"))
            .map(passage -> passage.text().toLowerCase(Locale.ROOT))
            .reduce("", (all, one) -> all + "\n" + one);
    List<List<String>> rows = rows();
    int number = 0;
    for (List<String> row : rows.subList(0, rows.size() - 1)) {
      number++;
      assertThat(headings).contains(number + ". " + row.get(0).toLowerCase(Locale.ROOT));
    }
    assertThat(headings).doesNotContain(number + 1 + ". ");
  }
}
