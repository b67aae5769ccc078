package ringbook.course.text;

import eu.crydee.syllablecounter.SyllableCounter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * How easily a text reads: R. Flesch, "A new readability yardstick", Journal of Applied Psychology
 * 32 (1948), 221–233. Words are runs of letters (numbers and units are left out); sentences end
 * with a point, an exclamation or question mark, or with their passage.
 *
 * @param sentences how many
 * @param words how many
 * @param syllables in all words
 */
record ReadingEase(int sentences, int words, int syllables) {

  private static final SyllableCounter COUNTER = new SyllableCounter();
  private static final Pattern END = Pattern.compile("[.!?]+[\"”’)]*(?:\\s+|$)");
  private static final Pattern WORD = Pattern.compile("\\p{L}+(?:[’'-]\\p{L}+)*");
  private static final Pattern MEASURE =
      Pattern.compile("(?:f/)?\\d[\\d.,/]*[\\s\\u00a0]?(?:°/s|°|%|[a-zµ]{1,2}(?:/s|²)?\\b)?");

  static ReadingEase of(List<CourseText.Passage> passages) {
    int sentences = 0;
    int words = 0;
    int syllables = 0;
    for (CourseText.Passage passage : passages) {
      for (String sentence : sentences(passage.text())) {
        List<String> found = words(sentence);
        sentences += found.isEmpty() ? 0 : 1;
        words += found.size();
        syllables += found.stream().mapToInt(ReadingEase::syllables).sum();
      }
    }
    return new ReadingEase(sentences, words, syllables);
  }

  static List<String> sentences(String text) {
    List<String> sentences = new ArrayList<>();
    for (String sentence : END.split(text, -1)) {
      if (!sentence.isBlank()) {
        sentences.add(sentence.strip());
      }
    }
    return sentences;
  }

  static List<String> words(String text) {
    return WORD.matcher(MEASURE.matcher(text).replaceAll(" "))
        .results()
        .map(MatchResult::group)
        .toList();
  }

  /** The parts of a word joined by hyphens are counted one by one. */
  static int syllables(String word) {
    int sum = 0;
    for (String part : word.toLowerCase(Locale.ROOT).replace('’', '\'').split("-", -1)) {
      sum += Math.max(1, plainSyllables(part));
    }
    return sum;
  }

  /** The library takes the e of "lines", "dimmed" and "sometimes" for a syllable. */
  private static int plainSyllables(String word) {
    for (String start : List.of("some", "every")) {
      if (word.startsWith(start)) {
        String rest = word.substring(start.length());
        return (start.equals("some") ? 1 : 2) + (rest.isEmpty() ? 0 : plainSyllables(rest));
      }
    }
    String bare = word.replaceFirst("'s?$", "");
    String spoken =
        bare.replaceFirst("([^aeiousxzcgh])es$", "$1e")
            .replaceFirst("([^aeioudtl]|[aeiour]l|ll)ed$", "$1");
    return COUNTER.count(spoken);
  }

  double wordsPerSentence() {
    return (double) words / sentences;
  }

  /** From 0, hardly to be read, to 100, which everybody reads. */
  double score() {
    return 206.835 - 1.015 * wordsPerSentence() - 84.6 * syllables / words;
  }
}
