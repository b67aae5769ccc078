package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringbook.course.ComposedFigure;
import ringbook.course.ComposedLesson;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.FigureBlock;
import ringbook.course.ComposedLesson.Markup;

/**
 * One small lesson with something of everything, as it comes out. {@code -Dgolden=write} writes it
 * anew; read the difference like code.
 */
final class GoldenLessonTest {

  /** Outlines of letters are no text a person reads. */
  private static final Pattern OUTLINE = Pattern.compile(" d=\"[^\"]*\"");

  @Test
  void everything_a_lesson_can_hold() throws IOException {
    String composed = text(Lessons.lesson(Files.readString(Lessons.FOLDER.resolve("all.md"))));
    Path golden = Lessons.FOLDER.resolve("all.golden.txt");
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(golden, composed);
    }
    assertThat(composed).isEqualTo(Files.readString(golden));
  }

  private static String text(ComposedLesson lesson) {
    StringBuilder out = new StringBuilder();
    for (Block block : lesson.blocks()) {
      if (block instanceof Markup markup) {
        out.append(OUTLINE.matcher(markup.xhtml()).replaceAll(" d=\"…\""));
      } else if (block instanceof FigureBlock figure) {
        out.append(line(figure.figure()));
      }
    }
    return out.toString();
  }

  private static String line(ComposedFigure figure) {
    return "[Figure "
        + figure.number()
        + " "
        + figure.id()
        + ": "
        + figure.captionXhtml()
        + " "
        + figure.svg()
        + "]\n";
  }
}
