package ringbook.output.ebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.adobe.epubcheck.api.EPUBLocation;
import com.adobe.epubcheck.api.EpubCheck;
import com.adobe.epubcheck.messages.Message;
import com.adobe.epubcheck.messages.Severity;
import com.adobe.epubcheck.util.DefaultReportImpl;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.course.compose.CourseSources;
import ringbook.output.MadeUpCourse;
import ringbook.problems.Problems;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/**
 * The e-book of the demo course against the standard EPUB 3.3 as EPUBCheck holds it, and its pages
 * against the rules of axe (WCAG 2.1 A, AA and good practice), which checkers of e-books apply too.
 */
class EbookOutputTest {

  private static final Set<Severity> SERIOUS =
      Set.of(Severity.WARNING, Severity.ERROR, Severity.FATAL);

  @TempDir private static Path folder;
  private static ComposedCourse course;
  private static Path file;
  private static Browser browser;

  @BeforeAll
  static void make() throws IOException {
    Problems problems = new Problems();
    course =
        CourseSources.read(Path.of("lessons/course.yaml"), problems)
            .flatMap(read -> read.compose(problems))
            .orElseThrow();
    new EbookOutput().write(course, folder);
    file = folder.resolve(EbookOutput.FILE);
    unpack(file, folder.resolve("x"));
  }

  private static void unpack(Path epub, Path to) throws IOException {
    try (ZipFile zip = new ZipFile(epub.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        Path target = to.resolve(entry.getName());
        Files.createDirectories(target.getParent());
        Files.write(target, zip.getInputStream(entry).readAllBytes());
      }
    }
  }

  private static String page(String name) {
    try {
      return Files.readString(folder.resolve("x/EPUB").resolve(name));
    } catch (IOException lost) {
      throw new UncheckedIOException(lost);
    }
  }

  private static List<Path> pages() throws IOException {
    try (var all = Files.list(folder.resolve("x/EPUB"))) {
      return all.filter(p -> p.toString().endsWith(".xhtml")).sorted().toList();
    }
  }

  @Test
  void the_standards_checker_finds_nothing() {
    assertThat(faults(file)).isEmpty();
  }

  @Test
  void a_course_of_made_up_blocks_passes_too(@TempDir Path other) throws IOException {
    new EbookOutput().write(MadeUpCourse.small(), other);
    assertThat(faults(other.resolve(EbookOutput.FILE))).isEmpty();
  }

  private static List<String> faults(Path epub) {
    List<String> found = new ArrayList<>();
    var report =
        new DefaultReportImpl(epub.toString()) {
          @Override
          public void message(Message message, EPUBLocation place, Object... values) {
            if (SERIOUS.contains(message.getSeverity())) {
              found.add(message.getID() + " " + place + " " + message.getMessage(values));
            }
          }
        };
    new EpubCheck(epub.toFile(), report).check();
    return found;
  }

  @Test
  void the_checker_would_find_a_broken_file(@TempDir Path other) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    Path broken = other.resolve("broken.epub");
    Files.write(broken, Arrays.copyOf(bytes, bytes.length - 200));
    assertThat(faults(broken)).isNotEmpty();
  }

  /** OCF 3.3, section 4.2.5: the type stands first, is stored, and has no extra field. */
  @Test
  void the_type_can_be_read_at_the_head_of_the_file() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    String head = new String(bytes, 0, 58, StandardCharsets.US_ASCII);
    assertThat(head).startsWith("PK").endsWith("mimetypeapplication/epub+zip");
    assertThat(bytes[8]).isZero();
    assertThat(bytes[28]).isZero();
  }

  @Test
  void the_same_course_gives_the_same_bytes(@TempDir Path again) throws IOException {
    new EbookOutput().write(course, again);
    assertThat(again.resolve(EbookOutput.FILE)).hasSameBinaryContentAs(file);
    assertThat(Files.size(file)).isLessThan(1_000_000);
  }

  @Test
  void every_formula_is_mathml_with_its_words() throws IOException {
    long formulas = 0;
    for (Path page : pages()) {
      String text = Files.readString(page);
      assertThat(text)
          .as("%s", page)
          .doesNotContain("<svg class=\"math\"", "data-tex", "alttext=\"\"");
      formulas += Pattern.compile("<math ").matcher(text).results().count();
    }
    assertThat(formulas).isGreaterThan(1000);
  }

  @Test
  void exercises_and_figures_stand_with_their_solutions_and_words() throws IOException {
    for (var lesson : course.lessons()) {
      String text = page(lesson.id() + ".xhtml");
      for (var block : lesson.blocks()) {
        if (block instanceof ComposedLesson.ExerciseBlock asked) {
          assertThat(text).contains("id=\"solution-" + asked.exercise().id() + "\"");
        } else if (block instanceof ComposedLesson.FigureBlock drawn) {
          assertThat(text).contains(drawn.figure().number() + " in words and numbers");
        }
      }
    }
  }

  @Test
  void index_and_lessons_lead_to_each_other() {
    String index = page("index-of-quantities.xhtml");
    String entries = page("quantities.xhtml");
    List<String> uses =
        Pattern.compile("href=\"([^\"#]*)#([^\"]*)\">lesson")
            .matcher(index)
            .results()
            .map(MatchResult::group)
            .toList();
    assertThat(uses).hasSizeGreaterThan(200);
    assertThat(entries).contains(uses.get(0), uses.get(uses.size() - 1));
    for (var quantity : course.quantities()) {
      assertThat(index).contains("quantities.xhtml#" + quantity.key() + "\"");
      assertThat(entries).contains("id=\"" + quantity.key() + "\"");
    }
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  /** Pages of every kind; the lists of all quantities are too long for the checker as they are. */
  private static List<Path> looked(boolean dark) throws IOException {
    Path small = folder.resolve("small");
    Files.createDirectories(small);
    new EbookOutput().write(MadeUpCourse.small(), small);
    unpack(small.resolve(EbookOutput.FILE), small);
    List<Path> looked = new ArrayList<>();
    for (String name : List.of("quantities", "index-of-quantities", "title-page", "contents")) {
      looked.add(small.resolve("EPUB").resolve(name + ".xhtml"));
    }
    for (String name : dark ? List.of("one-ring") : List.of("one-ring", "glossary", "tables")) {
      looked.add(folder.resolve("x/EPUB").resolve(name + ".xhtml"));
    }
    return looked;
  }

  @ParameterizedTest
  @CsvSource({"PHONE, false", "DESKTOP, true"})
  void pages_are_without_barriers_and_fit(Size size, boolean dark) throws IOException {
    if (browser == null) {
      browser = Browser.start();
    }
    browser.look(size, dark);
    for (Path page : looked(dark)) {
      browser.open(page);
      // The checker takes a page without a colour of its own for white.
      browser.run("document.documentElement.style.backgroundColor = 'Canvas'");
      browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
      assertThat(browser.overhang()).as("%s", page).isZero();
      assertThat(browser.barriers()).as("%s", page).isEmpty();
    }
  }
}
