package ringbook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import ringbook.Scenes;
import ringbook.ledger.Reckoning;

/**
 * What people read on each figure, against a text that was read by a person; {@code -Dgolden=write}
 * writes it anew.
 */
final class FigureTextTest {

  private static final Path FOLDER = Path.of("src/test/resources/ringbook/figures");

  static List<String> names() {
    return FigureShelf.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void words_on_the_figure_of_the_pot_are_as_read(String name) throws Exception {
    Figure figure = FigureShelf.draw(name, Map.of(), Reckoning.of(Scenes.potWithHole()), "f");
    assertThat(words(figure)).isEqualTo(expected(name, words(figure)));
  }

  private static String expected(String name, String words) throws IOException {
    Path file = FOLDER.resolve(name + "-pot.txt");
    if ("write".equals(System.getProperty("golden"))) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, words, StandardCharsets.UTF_8);
    }
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  private static String words(Figure figure) throws Exception {
    StringBuilder words = new StringBuilder();
    words.append(figure.title()).append("\n\n").append(figure.description()).append("\n\n");
    for (Element text : SvgReading.all(SvgReading.root(figure.svg()), "text")) {
      if (!text.getAttribute("aria-hidden").equals("true")) {
        words.append("- ").append(text.getTextContent()).append('\n');
      }
    }
    words.append('\n').append(String.join(" | ", figure.tableHead())).append('\n');
    for (List<String> row : figure.tableRows()) {
      words.append(String.join(" | ", row)).append('\n');
    }
    return words.toString().replace('\u00a0', '~');
  }
}
