package ringbook.output.ebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.output.MadeUpCourse;

/**
 * The pages that the e-book lists against the printed book, whose text PDFBox reads page by page.
 */
class PageListTest {

  private static final Pattern ENTRY =
      Pattern.compile("<li><a href=\"([^\"]*)\">([0-9]+)</a></li>");
  private static final Pattern BREAK =
      Pattern.compile("<span epub:type=\"pagebreak\"[^>]* id=\"page-([0-9]+)\"[^>]*></span>");

  /** So many letters and digits behind a mark are looked for on the page. */
  private static final int LOOKED_FOR = 40;

  /** In tables the lines of one column are read between those of the next. */
  private static final int IN_A_COLUMN = 24;

  /** Fewer than so many, before a formula or drawing interrupts, say nothing. */
  private static final int TELLING = 4;

  @TempDir private static Path folder;
  private static List<String> printed;
  private static Map<Integer, String> list;

  @BeforeAll
  static void make() throws IOException {
    DemoEbook demo = DemoEbook.get();
    DemoEbook.unpack(demo.folder().resolve(EbookOutput.FILE), folder);
    printed = new ArrayList<>(List.of(""));
    try (PDDocument pdf = Loader.loadPDF(demo.folder().resolve("book.pdf").toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true); // words of links are painted behind the others
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        printed.add(stripper.getText(pdf));
      }
    }
    list = new LinkedHashMap<>();
    for (MatchResult entry : ENTRY.matcher(page("contents.xhtml")).results().toList()) {
      list.put(Integer.valueOf(entry.group(2)), entry.group(1));
    }
  }

  private static String page(String name) throws IOException {
    return Files.readString(folder.resolve("EPUB").resolve(name));
  }

  private static String letters(String text) {
    StringBuilder letters = new StringBuilder();
    text.toLowerCase(Locale.ROOT)
        .codePoints()
        .filter(Character::isLetterOrDigit)
        .forEach(letters::appendCodePoint);
    return letters.toString();
  }

  /** The printed pages that hold a line which is this alone. */
  private static List<Integer> opening(String title) {
    return IntStream.range(1, printed.size())
        .filter(page -> printed.get(page).lines().anyMatch(line -> line.strip().equals(title)))
        .boxed()
        .toList();
  }

  /** All pages of the book but those of the tables that stand with their figures here. */
  @Test
  void every_page_is_listed_once_and_in_order() {
    int from = opening("Long tables").get(0);
    int to = opening("Glossary").get(0);
    List<Integer> expected =
        IntStream.range(1, printed.size()).filter(p -> p < from || p >= to).boxed().toList();
    assertThat(list.keySet()).containsExactlyElementsOf(expected);
    assertThat(to - from).isBetween(1, 9);
  }

  /** The number at the foot of a page is the number of the page in the file. */
  @Test
  void the_numbers_listed_are_those_printed() {
    for (int page = 2; page < printed.size(); page++) {
      assertThat(printed.get(page).lines().map(String::strip)).contains(String.valueOf(page));
    }
  }

  @Test
  void what_follows_a_mark_stands_on_the_page_of_its_number() throws IOException {
    int told = 0;
    List<String> elsewhere = new ArrayList<>();
    for (Map.Entry<Integer, String> entry : list.entrySet()) {
      String href = entry.getValue();
      int hash = href.indexOf('#');
      String xhtml = page(href.substring(0, hash));
      String id = "id=\"" + href.substring(hash + 1) + "\"";
      assertThat(xhtml).contains(id);
      String words = asPrinted(after(xhtml, xhtml.indexOf(id)));
      if (words.length() >= TELLING) {
        String start = words.substring(0, Math.min(IN_A_COLUMN, words.length()));
        if (!letters(printed.get(entry.getKey())).contains(start)) {
          elsewhere.add(href + ": " + words);
        }
        told++;
      }
    }
    assertThat(elsewhere).isEmpty();
    assertThat(told).isGreaterThan(list.size() * 9 / 10);
  }

  /** The book words some heads in its own way. */
  private static String asPrinted(String words) {
    return words
        .replaceAll("^figure([0-9]+)inwordsandnumbers.*", "figure$1innumbers")
        .replaceAll("^exercise(?=[0-9])", "")
        .replaceAll("^attheback$", "")
        .replaceAll("^allquantities$", "quantitiesandformulas");
  }

  /** The letters behind the tag at {@code at}, up to the next formula, drawing, link or stress. */
  private static String after(String xhtml, int at) {
    String rest = xhtml.substring(xhtml.indexOf('>', at) + 1);
    Matcher end =
        Pattern.compile("<(math|svg|a|strong|em|sup|/p|/li|/td|/h[1-6])[ >]").matcher(rest);
    StringBuilder words = new StringBuilder();
    int from = 0;
    while (words.length() < TELLING && end.find()) {
      words.append(letters(rest.substring(from, end.start()).replaceAll("<[^>]*>|&#?\\w+;", "")));
      from = end.start();
      if (end.group(1).equals("math") || end.group(1).equals("svg")) {
        break;
      }
    }
    return words.substring(0, Math.min(LOOKED_FOR, words.length()));
  }

  /** Where the paragraph before a mark is long enough to be known again, it began earlier. */
  @Test
  void what_precedes_a_mark_began_on_a_page_before() throws IOException {
    int seen = 0;
    for (String file :
        new TreeSet<>(list.values().stream().map(h -> h.replaceAll("#.*", "")).toList())) {
      String xhtml = page(file);
      for (MatchResult mark : BREAK.matcher(xhtml).results().toList()) {
        int paragraph = xhtml.lastIndexOf("</p>", mark.start());
        int start = xhtml.lastIndexOf("<p>", paragraph);
        if (start < 0 || xhtml.indexOf("</p>", start) != paragraph) {
          continue;
        }
        String words = after(xhtml, start);
        int number = Integer.parseInt(mark.group(1));
        if (words.length() == LOOKED_FOR && number > 1) {
          assertThat(letters(printed.get(number)))
              .as("%s before page %d", file, number)
              .doesNotContain(words);
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(50);
  }

  @Test
  void marks_are_listed_and_leave_no_trace_of_how_they_were_found() throws IOException {
    int marks = 0;
    try (var files = Files.list(folder.resolve("EPUB"))) {
      for (Path file : files.toList()) {
        String text = Files.readString(file);
        assertThat(text).as("%s", file).doesNotContain("data-place");
        for (MatchResult mark : BREAK.matcher(text).results().toList()) {
          assertThat(list.get(Integer.valueOf(mark.group(1)))).startsWith(file.getFileName() + "#");
          assertThat(mark.group())
              .contains("role=\"doc-pagebreak\"", "aria-label=\"Page " + mark.group(1) + "\"");
          marks++;
        }
      }
    }
    assertThat(list.size() - marks)
        .as("pages of the contents, where no mark may stand")
        .isEqualTo(2);
  }

  @Test
  void without_a_book_there_is_no_list(@TempDir Path other) throws IOException {
    new EbookOutput().write(MadeUpCourse.small(), other);
    DemoEbook.unpack(other.resolve(EbookOutput.FILE), other);
    for (String file : List.of("contents.xhtml", "package.opf", "one-ring.xhtml")) {
      assertThat(Files.readString(other.resolve("EPUB").resolve(file)))
          .doesNotContainIgnoringCase("pagebreak")
          .doesNotContain("page-list", "data-place");
    }
  }
}
