package ringbook.course.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import morfologik.speller.Speller;
import morfologik.stemming.Dictionary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringbook.course.ComposedFigure;

/**
 * The course is spelt the British way. Outside reference: the British English word list for
 * spelling in the library english-pos-dict. Words of the trade, names and the like stand in {@code
 * words.txt}, each line with its reason.
 */
final class SpellingTest {

  private static final Path OWN = Path.of("src/test/resources/ringbook/course/words.txt");
  private static final Pattern WORD =
      Pattern.compile("(?<![\\w/.-])\\p{L}+(?:[’'-]\\p{L}+)*(?![\\w/]|\\.\\w)");

  /** In exercises: values, formulas, ids, comments. */
  private static final Pattern NO_WORDS =
      Pattern.compile(
          "\\$\\{[^}]*+\\}|`[^`]*`|#.*|^\\s*(?:-"
              + " )?(?:id|quantity|value|like|where|way|of|scene|vary|kit|sensible|sample):.*");

  private static final Speller BRITISH = new Speller(dictionary("en_GB"));
  private static final Set<String> KEPT = own();

  static List<String> pages() {
    return CourseText.pages();
  }

  private static Dictionary dictionary(String name) {
    try {
      return Dictionary.read(
          Speller.class.getResource("/org/languagetool/resource/en/hunspell/" + name + ".dict"));
    } catch (IOException gone) {
      throw new AssertionError(gone);
    }
  }

  /** A word a line, behind '#' why it is right. */
  private static Set<String> own() {
    try {
      Set<String> words = new LinkedHashSet<>();
      for (String line : Files.readAllLines(OWN, StandardCharsets.UTF_8)) {
        String word = line.replaceFirst("#.*", "").strip();
        if (!word.isEmpty()) {
          words.add(word);
        }
      }
      return words;
    } catch (IOException gone) {
      throw new AssertionError(gone);
    }
  }

  /** Words the dictionary does not know; those with hyphens part by part. */
  private static Set<String> misspelt(String text) {
    Set<String> wrong = new LinkedHashSet<>();
    for (MatchResult match : WORD.matcher(text).results().toList()) {
      String word = match.group().replace('’', '\'');
      if (!isRight(word)) {
        for (String part : word.split("-", -1)) {
          if (!isRight(part)) {
            wrong.add(part);
          }
        }
      }
    }
    return wrong;
  }

  private static boolean isRight(String word) {
    String bare = word.replaceFirst("'s?$", "");
    return word.length() == 1
        || KEPT.contains(bare)
        || knows(bare)
        || (Character.isUpperCase(bare.charAt(0)) && knowsSmall(bare));
  }

  private static boolean knowsSmall(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    return KEPT.contains(small) || knows(small);
  }

  private static boolean knows(String word) {
    return !BRITISH.isMisspelled(word);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void every_word_is_spelt_right(String page) {
    List<String> faults = new ArrayList<>();
    for (CourseText.Passage passage : CourseText.passages(page)) {
      misspelt(passage.text()).forEach(word -> faults.add(word + "  in  " + passage));
    }
    for (ComposedFigure figure : CourseText.figures(page)) {
      List<String> texts = new ArrayList<>(List.of(figure.title(), figure.description()));
      texts.addAll(figure.tableHead());
      figure.tableRows().forEach(texts::addAll);
      for (String text : texts) {
        misspelt(text).forEach(word -> faults.add(word + "  in a figure of " + page + ": " + text));
      }
    }
    assertThat(faults).isEmpty();
  }

  /** Titles, aims, and the list of quantities. */
  private static List<String> around() {
    List<String> texts = new ArrayList<>();
    CourseText.COURSE.lessons().forEach(l -> texts.addAll(List.of(l.title(), l.aim())));
    CourseText.COURSE.back().forEach(b -> texts.addAll(List.of(b.title(), b.aim())));
    CourseText.COURSE
        .quantities()
        .forEach(q -> texts.addAll(List.of(q.name(), q.meaning(), q.source())));
    return texts;
  }

  @Test
  void titles_aims_and_the_list_of_quantities_are_spelt_right() {
    List<String> faults = new ArrayList<>();
    for (String text : around()) {
      misspelt(text).forEach(word -> faults.add(word + "  in  " + text));
    }
    assertThat(faults).isEmpty();
  }

  /** What learners are told of their answers stands in the exercises' files alone. */
  @Test
  void what_exercises_say_is_spelt_right() throws IOException {
    List<String> faults = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("exercises"))) {
      for (Path file : files.sorted().toList()) {
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        for (int i = 0; i < lines.size(); i++) {
          int line = i + 1;
          misspelt(NO_WORDS.matcher(lines.get(i)).replaceAll(" "))
              .forEach(word -> faults.add(file + ":" + line + ": " + word));
        }
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void the_dictionary_is_british_and_finds_slips() {
    assertThat(misspelt("The colour of the centre was grey. Don’t, it’s the lens’s edge."))
        .isEmpty();
    assertThat(misspelt("color center recieve phtograph teh analyze"))
        .contains("color", "recieve", "phtograph", "teh");
  }

  @Test
  void every_kept_word_is_needed() {
    Set<String> unused = new TreeSet<>(KEPT);
    StringBuilder all = new StringBuilder(String.join("\n", around()));
    for (String page : CourseText.pages()) {
      CourseText.passages(page).forEach(passage -> all.append(passage.text()).append('\n'));
      for (ComposedFigure figure : CourseText.figures(page)) {
        all.append(figure.title()).append('\n').append(figure.description()).append('\n');
        figure.tableHead().forEach(head -> all.append(head).append('\n'));
        figure.tableRows().forEach(row -> all.append(String.join("\n", row)).append('\n'));
      }
    }
    WORD.matcher(all)
        .results()
        .map(MatchResult::group)
        .flatMap(word -> List.of(word.split("-", -1)).stream())
        .map(word -> word.replace('’', '\'').replaceFirst("'s?$", ""))
        .forEach(
            word -> {
              unused.remove(word);
              unused.remove(word.toLowerCase(Locale.ROOT));
            });
    assertThat(unused).isEmpty();
    assertThat(KEPT).noneMatch(SpellingTest::knows);
  }
}
