package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Numbers with a unit come from the ledger. Those that an author typed are faults, unless {@code
 * typed-numbers.txt} says of each why no group changes it.
 */
final class TypedNumbersTest {

  private static final Path ALLOWED =
      Path.of("src/test/resources/ringbook/course/typed-numbers.txt");

  private static final Pattern MEASURE =
      Pattern.compile(
          "(?:f/\\d[\\d.]*|(?:1/)?\\d[\\d.,]*[\\s\\u00a0]?(?:°/s|°|%|mm|cm|µm|m|km|px|s|h|Hz|lx|lux|lm|MB|GB"
              + "|bits?|stops?|pixels?|photographs?|pictures?|rings?|stations?|frames?|minutes?|seconds?|hours?|degrees?|metres?|millimetres?|centimetres?|per"
              + " cent)(?![\\p{L}\\d]))");

  /** {@code page: number: reason} a line. */
  private static Map<String, String> allowed() throws IOException {
    Map<String, String> allowed = new LinkedHashMap<>();
    for (String line : Files.readAllLines(ALLOWED)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] parts = line.split(": ", 3);
        assertThat(parts).as(line).hasSize(3);
        assertThat(allowed.put(parts[0] + ": " + parts[1], parts[2])).as(line).isNull();
      }
    }
    return allowed;
  }

  private static List<String> typed() {
    List<String> typed = new ArrayList<>();
    for (String page : CourseText.pages()) {
      String text = words(CourseText.tree(page)).replaceAll("\\s+", " ");
      for (MatchResult match : MEASURE.matcher(text).results().toList()) {
        typed.add(page + ": " + match.group().replace('\u00a0', ' ').strip());
      }
    }
    return typed;
  }

  /** The words without values, workings and tables worked out from the ledger. */
  private static String words(Node node) {
    StringBuilder out = new StringBuilder();
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child.getNodeType() == Node.TEXT_NODE) {
        out.append(child.getNodeValue());
      } else if (child instanceof Element inner && !isWorkedOut(inner)) {
        out.append(words(inner))
            .append(CourseText.BLOCKS.contains(inner.getNodeName()) ? " | " : "");
      }
    }
    return out.toString();
  }

  private static boolean isWorkedOut(Element element) {
    return List.of("data", "svg", "code").contains(element.getNodeName())
        || List.of("word", "working", "value")
            .contains(element.getAttribute("class").split(" ", -1)[0])
        || element.hasAttribute("data-runs");
  }

  @Test
  void every_typed_number_has_its_reason() throws IOException {
    Map<String, String> allowed = allowed();
    assertThat(typed()).filteredOn(number -> !allowed.containsKey(number)).isEmpty();
  }

  @Test
  void every_reason_is_needed() throws IOException {
    assertThat(typed()).containsAll(allowed().keySet());
  }

  @Test
  void a_typed_number_is_found() {
    assertThat(MEASURE.matcher("Stand 40 cm away, at f/8; 12° on.").results()).hasSize(3);
    assertThat(MEASURE.matcher("Station 7, 2002, 3D, in lesson 4.").results()).isEmpty();
  }
}
