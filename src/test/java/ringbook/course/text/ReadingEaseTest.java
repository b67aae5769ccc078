package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lessons read easily: level B1 to B2. The bounds are ours, set under what the lessons reach (80 to
 * 90, 9.5 to 13.1 words a sentence on 26 November 2026); Flesch calls 70 to 80 "fairly easy", 60 to
 * 70 "standard".
 */
final class ReadingEaseTest {

  private static final double EASIEST_ASKED = 75;
  private static final double WORDS_PER_SENTENCE = 15;
  private static final int LONGEST_SENTENCE = 36;
  private static final int FEWEST_WORDS = 800;
  private static final int MOST_WORDS = 1500;

  static List<String> lessons() {
    return CourseText.lessons();
  }

  static List<String> pages() {
    return CourseText.pages();
  }

  private static List<CourseText.Passage> prose(String page) {
    return CourseText.passages(page).stream().filter(CourseText.Passage::isProse).toList();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void lessons_read_easily(String lesson) {
    ReadingEase ease = ReadingEase.of(prose(lesson));
    assertThat(ease.score()).as("%s", ease).isGreaterThan(EASIEST_ASKED);
    assertThat(ease.wordsPerSentence()).as("%s", ease).isLessThan(WORDS_PER_SENTENCE);
  }

  /** A semicolon ends a thought as a point does. */
  @ParameterizedTest
  @MethodSource("pages")
  void no_sentence_is_too_long(String page) {
    List<String> long_ = new ArrayList<>();
    for (CourseText.Passage passage : prose(page)) {
      for (String sentence : ReadingEase.sentences(passage.text().replace(";", "."))) {
        if (ReadingEase.words(sentence).size() > LONGEST_SENTENCE) {
          long_.add(sentence);
        }
      }
    }
    assertThat(long_).isEmpty();
  }

  /** What a reader reads: without exercises and workings, which are done rather than read. */
  @ParameterizedTest
  @MethodSource("lessons")
  void lessons_take_a_quarter_of_an_hour_at_most(String lesson) {
    int words =
        CourseText.passages(lesson).stream()
            .filter(passage -> !List.of("exercise", "working", "chain").contains(passage.box()))
            .mapToInt(passage -> ReadingEase.words(passage.text()).size())
            .sum();
    assertThat(words).isBetween(FEWEST_WORDS, MOST_WORDS);
  }

  /**
   * An English sonnet has fourteen lines of ten syllables: W. Shakespeare, Sonnet 18 (1609). Three
   * words of it, which verse shortens ("ow'st"), are written out here, so their lines have eleven.
   */
  @Test
  void the_lines_of_a_sonnet_have_ten_syllables() {
    String sonnet =
        """
        Shall I compare thee to a summer's day?
        Thou art more lovely and more temperate.
        Rough winds do shake the darling buds of May,
        And summer's lease hath all too short a date.
        Sometime too hot the eye of heaven shines,
        And often is his gold complexion dimmed;
        And every fair from fair sometime declines,
        By chance or nature's changing course untrimmed;
        But thy eternal summer shall not fade,
        Nor lose possession of that fair thou owest,
        Nor shall death brag thou wanderest in his shade,
        When in eternal lines to time thou growest.
        So long as men can breathe or eyes can see,
        So long lives this, and this gives life to thee.
        """;
    for (String line : sonnet.split("\n", -1)) {
      int shortened = (int) ReadingEase.words(line).stream().filter(w -> w.endsWith("est")).count();
      int syllables = ReadingEase.words(line).stream().mapToInt(ReadingEase::syllables).sum();
      assertThat(syllables).as(line).isEqualTo(line.isEmpty() ? 0 : 10 + shortened);
    }
  }

  /** By hand. */
  @ParameterizedTest
  @CsvSource({
    "ring, 1", "station, 2", "photograph, 3", "diffraction, 3", "elevation, 4", "photogrammetry, 5",
    "f-number, 3", "surface, 2", "tripod, 2", "camera, 3", "edges, 2", "matched, 1"
  })
  void words_of_the_trade_have_their_syllables(String word, int syllables) {
    assertThat(ReadingEase.syllables(word)).isEqualTo(syllables);
  }

  /** Counted by hand: 2 sentences, 6 words, 7 syllables; measures are no words. */
  @Test
  void the_formula_is_that_of_1948() {
    CourseText.Passage two =
        new CourseText.Passage("a", "p", "", "Walk round the pot 12 cm away. Stop!");
    assertThat(ReadingEase.of(List.of(two))).isEqualTo(new ReadingEase(2, 6, 7));
    assertThat(ReadingEase.of(List.of(two)).score())
        .isCloseTo(206.835 - 1.015 * 3 - 84.6 * 7 / 6, within(1e-9));
  }
}
