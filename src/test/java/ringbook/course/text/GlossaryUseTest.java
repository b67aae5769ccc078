package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.course.ComposedLesson.Block;
import ringbook.course.ComposedLesson.Markup;

/** The glossary explains what the lessons bring, in a sentence or two. */
final class GlossaryUseTest {

  private static final String GLOSSARY = "glossary";

  private static final Pattern ENTRY =
      Pattern.compile(
          "<dt id=\"glossary--term-([^\"]*)\">([^<]*).*?</dt>\\s*<dd>(.*?)</dd>", Pattern.DOTALL);
  private static final Pattern TERM =
      Pattern.compile("<a class=\"term\" id=\"([^\"]*)\" href=\"course:glossary#([^\"]*)\">");

  /** Where a lesson explains a word: "that is called a <strong>match</strong>". */
  private static final Pattern INTRODUCED =
      Pattern.compile(
          "(?:called|calls it|call it|name is|This is|That is|makes) (?:an? |the"
              + " )?<strong>(.*?)</strong>",
          Pattern.DOTALL);

  static List<String> lessons() {
    return CourseText.lessons();
  }

  private static String markup(String page) {
    StringBuilder all = new StringBuilder();
    for (Block block : CourseText.blocks(page)) {
      if (block instanceof Markup markup) {
        all.append(markup.xhtml());
      }
    }
    return all.toString();
  }

  @Test
  void entries_are_short_plain_and_name_a_lesson() {
    List<MatchResult> entries = ENTRY.matcher(markup(GLOSSARY)).results().toList();
    assertThat(entries).hasSizeGreaterThan(60);
    for (MatchResult entry : entries) {
      String meaning =
          entry.group(3).replaceFirst("(?s)<p class=\"met\">.*", "").replaceAll("<[^>]*>", " ");
      List<String> sentences = ReadingEase.sentences(meaning);
      assertThat(sentences).as(entry.group(2)).hasSizeBetween(1, 3);
      assertThat(ReadingEase.words(meaning).size()).as(entry.group(2)).isBetween(4, 50);
      assertThat(entry.group(3)).as(entry.group(2)).containsPattern("course:[a-z-]+(#|\">)");
    }
  }

  @Test
  void entries_stand_in_the_order_of_the_alphabet() {
    List<String> names =
        ENTRY
            .matcher(markup(GLOSSARY))
            .results()
            .map(entry -> entry.group(2).toLowerCase(Locale.UK).replaceAll("[^a-z0-9]", ""))
            .toList();
    assertThat(names).isSorted();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void a_lesson_links_each_of_its_terms_once(String lesson) {
    List<String> terms = TERM.matcher(markup(lesson)).results().map(term -> term.group(2)).toList();
    assertThat(terms).hasSizeGreaterThan(4).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void a_word_that_a_lesson_explains_is_in_the_glossary(String lesson) {
    Set<String> known = new LinkedHashSet<>();
    ENTRY
        .matcher(markup(GLOSSARY))
        .results()
        .forEach(entry -> known.add(entry.group(2).strip().replaceFirst(" \\(.*", "")));
    List<String> unknown = new ArrayList<>();
    for (MatchResult match : INTRODUCED.matcher(markup(lesson)).results().toList()) {
      String word = match.group(1).replaceAll("<[^>]*>", "").strip();
      if (ReadingEase.words(word).size() <= 3
          && !known.contains(word)
          && !known.contains(word.replaceFirst("e?s$", ""))) {
        unknown.add(word);
      }
    }
    assertThat(unknown).isEmpty();
  }
}
