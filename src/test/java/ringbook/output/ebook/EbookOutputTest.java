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
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;
import ringbook.course.CourseInfo;
import ringbook.course.Evaluation;
import ringbook.output.MadeUpCourse;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/**
 * The e-book of the demo course against the standard EPUB 3.3 as EPUBCheck holds it, and its pages
 * against the rules of axe (WCAG 2.1 A, AA and good practice), which checkers of e-books apply too.
 */
class EbookOutputTest {

  private static final Set<Severity> SERIOUS =
      Set.of(Severity.WARNING, Severity.ERROR, Severity.FATAL);

  private static final List<String> TOO_LONG =
      List.of("quantities.xhtml", "index-of-quantities.xhtml");

  /**
   * They are named by aria-label, as DPUB-ARIA 1.1 asks of the role; the checker takes that role
   * for none and would forbid the name. {@code PageListTest} holds role and name.
   */
  private static final String PAGE_BREAKS = "[role=doc-pagebreak]";

  private static final Pattern HYPHEN = Pattern.compile("[\\s(\\u00a0]-[0-9][^\\s]*");

  /** WCAG 2.1, success criterion 1.4.12. */
  private static final String WIDE_SPACING =
      "const s = document.createElementNS('http://www.w3.org/1999/xhtml', 'style');"
          + " s.textContent = '* { line-height: 1.5 !important; letter-spacing: 0.12em !important;"
          + " word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }';"
          + " document.head.append(s)";

  @TempDir private static Path folder;
  private static ComposedCourse course;
  private static Path file;
  private static Browser browser;

  @BeforeAll
  static void make() throws IOException {
    course = DemoEbook.get().course();
    file = DemoEbook.get().folder().resolve(EbookOutput.FILE);
    DemoEbook.unpack(file, folder.resolve("x"));
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
    new EbookOutput().write(course, DemoEbook.get().pages(), again);
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
      Path solutions = folder.resolve("x/EPUB/solutions-" + lesson.id() + ".xhtml");
      for (var block : lesson.blocks()) {
        if (block instanceof ComposedLesson.ExerciseBlock asked) {
          String place = "solution-" + asked.exercise().id() + "\"";
          assertThat(text).contains(".xhtml#" + place);
          assertThat(solutions).content().contains("id=\"" + place);
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

  /** All pages; the lists of all quantities, which are too long for the checker, of a course. */
  private static List<Path> looked(boolean all) throws IOException {
    Path small = folder.resolve("small");
    Files.createDirectories(small);
    new EbookOutput().write(MadeUpCourse.small(), small);
    DemoEbook.unpack(small.resolve(EbookOutput.FILE), small);
    List<Path> looked = new ArrayList<>();
    for (String name : TOO_LONG) {
      looked.add(small.resolve("EPUB").resolve(name));
    }
    List<String> some = List.of("one-ring.xhtml", "solutions-one-ring.xhtml", "contents.xhtml");
    for (Path page : pages()) {
      String name = page.getFileName().toString();
      if (all ? !TOO_LONG.contains(name) : some.contains(name)) {
        looked.add(page);
      }
    }
    return looked;
  }

  @ParameterizedTest
  @CsvSource({"NARROW, false", "DESKTOP, true"})
  void pages_are_without_barriers_and_fit(Size size, boolean dark) throws IOException {
    if (browser == null) {
      browser = Browser.start();
    }
    browser.look(size, dark);
    List<String> faults = new ArrayList<>();
    for (Path page : looked(!dark)) {
      browser.open(page);
      // The checker takes a page without a colour of its own for white.
      browser.run("document.documentElement.style.backgroundColor = 'Canvas'");
      browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
      String name = page.getFileName().toString();
      browser.barriersBut(PAGE_BREAKS).forEach(found -> faults.add(name + ": " + found));
      if (browser.overhang() > 0) {
        faults.add(name + " is too wide");
      }
      browser.run(WIDE_SPACING);
      if (browser.overhang() > 0) {
        faults.add(name + " is too wide when spaced widely");
      }
    }
    assertThat(faults).isEmpty();
  }

  /** 9 px is the size of the smallest print of books, 7 points: common practice, no source. */
  @Test
  void labels_of_drawings_can_be_read_on_a_phone() throws IOException {
    if (browser == null) {
      browser = Browser.start();
    }
    browser.look(Size.NARROW, false);
    int drawings = 0;
    for (Path page : pages()) {
      browser.open(page);
      Object smallest =
          browser.run(
              "return Array.from(document.querySelectorAll('.drawing text'), t =>"
                  + " t.getAttribute('font-size') * t.ownerSVGElement.getScreenCTM().a)"
                  + ".reduce((a, b) => Math.min(a, b), 1000)");
      double pixels = ((Number) smallest).doubleValue();
      drawings += pixels < 1000 ? 1 : 0;
      assertThat(pixels).as(page.getFileName().toString()).isGreaterThanOrEqualTo(9);
    }
    assertThat(drawings).isGreaterThan(10);
  }

  /** EPUB Accessibility 1.1, sections 2.2, 3.5.1 and 4.1 (of memory). */
  @Test
  void the_package_states_what_a_reader_must_know_beforehand() {
    String meta = page("package.opf");
    for (String property : List.of("accessMode", "accessModeSufficient", "accessibilityHazard")) {
      assertThat(meta).contains("<meta property=\"schema:" + property + "\">");
    }
    assertThat(meta)
        .contains(
            "<meta property=\"schema:accessibilitySummary\">",
            "<meta property=\"schema:accessibilityFeature\">pageBreakMarkers<",
            "<dc:source>book.pdf of “Round the pot”, edition of ",
            "<meta property=\"pageBreakSource\">book.pdf of “Round the pot”, edition of ");
  }

  @Test
  void negative_numbers_have_a_minus_sign_but_not_where_they_are_typed() throws IOException {
    assertThat(EbookWords.set("<p title=\"a -5\">at -5° (-7) a -b<code>x -5</code> -5</p>"))
        .isEqualTo("<p title=\"a -5\">at −5° (−7) a -b<code>x -5</code> −5</p>");
    List<String> hyphens = new ArrayList<>();
    for (Path page : pages()) {
      String text =
          Files.readString(page).replaceAll("(?s)<(code|title|desc).*?</\\1>|<[^>]*>", "");
      HYPHEN.matcher(text).results().forEach(m -> hyphens.add(page.getFileName() + m.group()));
    }
    assertThat(hyphens).isEmpty();
  }

  /** EPUB Accessibility 1.1, sections 4.1 and 4.2 (of memory): who evaluates makes the claim. */
  @Test
  void conformance_is_claimed_only_where_the_course_names_who_evaluated_it(@TempDir Path other)
      throws IOException {
    assertThat(page("package.opf"))
        .contains("does not claim to conform")
        .doesNotContain("conformsTo", "certifiedBy");
    ComposedCourse plain = MadeUpCourse.small();
    CourseInfo info = plain.info();
    CourseInfo evaluated =
        new CourseInfo(
            info.title(),
            info.subtitle(),
            info.organiser(),
            info.date(),
            info.language(),
            info.group(),
            Optional.of(new Evaluation("Berg & Sons", "2026-11-09")));
    new EbookOutput()
        .write(new ComposedCourse(evaluated, plain.lessons(), plain.quantities()), other);
    Path epub = other.resolve(EbookOutput.FILE);
    DemoEbook.unpack(epub, other.resolve("x"));
    assertThat(Files.readString(other.resolve("x/EPUB/package.opf")))
        .contains(
            "<meta property=\"dcterms:conformsTo\" id=\"conforms\">"
                + "EPUB Accessibility 1.1 - WCAG 2.1 Level AA</meta>",
            "<meta property=\"a11y:certifiedBy\" refines=\"#conforms\" id=\"evaluator\">"
                + "Berg &amp; Sons</meta>",
            "<meta property=\"dcterms:date\" refines=\"#evaluator\">2026-11-09</meta>",
            "Evaluated by Berg &amp; Sons.")
        .doesNotContain("does not claim");
    assertThat(faults(epub)).isEmpty();
  }
}
