package ringbook.course.compose;

import static org.assertj.core.api.Assertions.assertThat;

import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import ringbook.Scenes;
import ringbook.course.markdown.Markdown;
import ringbook.ledger.Reckoning;
import ringbook.problems.Problems;
import ringbook.values.Expressions;

/** A value goes into the page as text, whatever it holds and wherever it stands. */
final class TextsUnharmedTest {

  private static final String SIGNS = "ab|*_<>&\"'`$#[](){}\\!~-=.:;^/%é漢°𝛼 ";

  private static final String LESSON =
      """
      ## Head ${subject.name}

      In *a line ${subject.name}* and **${subject.name}**, "${subject.name}" too.

      | one | two |
      |---|---|
      | ${subject.name} | ${subject.name} |
      [${subject.name}]

      - ${subject.name}
      """;

  @Test
  void signs_of_markdown_and_html_stay_what_they_are() throws Exception {
    check("a<b & *c* | d_e_f");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("ringbook.Scenes#seeds")
  void any_name_comes_out_as_it_went_in(long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    int[] signs = SIGNS.codePoints().toArray();
    StringBuilder name = new StringBuilder("x");
    for (int i = random.nextInt(1, 30); i > 0; i--) {
      name.appendCodePoint(signs[random.nextInt(signs.length)]);
    }
    check(name.append('x').toString());
  }

  private static void check(String name) throws Exception {
    NodeList words = page(markup(name)).getElementsByTagName("span");
    assertThat(words.getLength()).isEqualTo(8);
    for (int i = 0; i < words.getLength(); i++) {
      assertThat(words.item(i).getTextContent()).isEqualTo(name);
    }
  }

  /** The lesson alone: without the appendix, which is the greater part of the work. */
  private static String markup(String name) {
    Problems problems = new Problems();
    CourseParts parts =
        CourseParts.of(Lessons.SQUARE, List.of(), java.util.Set.of(), Lessons.FOLDER);
    Page page = new Page("small", new CourseScope(parts, Set.of("small"), problems));
    Reckoning reckoning = Reckoning.of(Scenes.with(Scenes.pot(), "subject.name", name));
    Scope scope =
        new Scope(page, new Lines("small.md", LESSON), new Expressions(reckoning, Map.of()), false);
    String markup = new BlockWriter(scope).inside(Markdown.parse(BasedSequence.of(LESSON)));
    assertThat(problems.sorted()).isEmpty();
    return markup;
  }

  private static Document page(String markup) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader("<body>" + markup + "</body>")));
  }
}
