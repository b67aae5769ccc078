package ringbook.output.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.course.ComposedCourse;
import ringbook.course.ComposedLesson;

/** What a reader of the printed pages finds, read back from the file. */
class BookOutputTest {

  private static final int CONTENTS = 2;
  private static final ComposedCourse COURSE = SampleCourse.course();
  private static PressedBook book;

  @BeforeAll
  static void press(@TempDir Path folder) throws IOException {
    book = PressedBook.of(COURSE, folder);
  }

  @AfterAll
  static void close() throws IOException {
    book.pdf().close();
  }

  @Test
  void the_title_page_says_whose_numbers_these_are() {
    assertThat(book.page(1))
        .contains("Round the pot", "Photographing an object for a 3D model")
        .contains("All numbers are for a phone’s main camera")
        .contains("The Saturday workshop", "2 November 2026");
  }

  @Test
  void the_contents_name_the_page_each_chapter_opens_on() {
    List<String> titles = new ArrayList<>();
    COURSE.lessons().forEach(lesson -> titles.add(lesson.title()));
    titles.addAll(List.of("Solutions", "Quantities and formulas", "Index of quantities"));
    for (String title : titles) {
      Matcher entry =
          Pattern.compile("(?m)" + Pattern.quote(title) + " ?[. ]+(\\d+)$")
              .matcher(book.page(CONTENTS));
      assertThat(entry.find()).as(title).isTrue();
      int page = Integer.parseInt(entry.group(1));
      assertThat(book.page(page).lines().limit(3)).as("page %d", page).contains(title);
    }
  }

  @Test
  void every_page_after_the_title_carries_its_number() {
    for (int page = CONTENTS; page <= book.pages().size(); page++) {
      assertThat(book.page(page).strip()).as("page %d", page).endsWith("\n" + page);
    }
  }

  @Test
  void every_page_of_a_chapter_but_its_first_has_the_lesson_at_its_head() {
    for (ComposedLesson lesson : COURSE.lessons()) {
      int opens = book.pageOf("Lesson " + lesson.number() + " of 3", 3);
      String head = lesson.number() + " · " + lesson.title();
      assertThat(book.page(opens)).doesNotContain(head);
      int page = opens + 1;
      while (!book.page(page).contains("Lesson ") && !book.page(page).contains("Solutions\n")) {
        assertThat(book.page(page)).startsWith(head);
        page++;
      }
      assertThat(page).as("pages of '%s' seen", lesson.title()).isGreaterThan(opens + 1);
    }
  }

  @Test
  void every_exercise_leads_to_its_solution_and_back() {
    int solutions = book.pageOf("Try each exercise on paper first", 3);
    for (String exercise : List.of("1.1", "1.2", "2.1", "3.1", "3.2")) {
      int asked = book.pageOf("Exercise " + exercise + " ", 3);
      int solved = book.pageOf("\n" + exercise + " ", solutions);
      assertThat(after("Exercise " + exercise + " ", book.page(asked)))
          .containsPattern("^[\\s\\S]*?Solution on page " + solved + "\n");
      assertThat(after("\n" + exercise + " ", book.page(solved)))
          .containsPattern("^.*\nAnswer: .*Question on page " + asked + "\n");
    }
  }

  @Test
  void a_link_to_another_lesson_names_its_page() {
    int target = book.pageOf("How far to turn\n", 3);
    assertThat(book.text()).contains("how far to turn (page " + target + ")");
  }

  @Test
  void a_sentence_that_ends_with_a_full_stop_gets_no_second_one() {
    assertThat(book.text())
        .contains("Answer: a) The object no longer fits in the frame. Question on page")
        .doesNotContain("frame..");
  }

  @Test
  void the_index_names_the_pages_that_state_a_quantity() {
    int index = book.pageOf("Index of quantities\n", 3);
    int formula = book.pageOf("photos of a ring", book.pageOf("Every number the course", 3));
    String entry =
        book.page(index).lines().filter(l -> l.startsWith("photos of a ring")).findAny().get();
    List<Integer> pages =
        Pattern.compile("\\d+")
            .matcher(entry)
            .results()
            .map(m -> Integer.valueOf(m.group()))
            .toList();
    assertThat(pages).first().isEqualTo(formula);
    assertThat(pages.subList(1, pages.size()))
        .isNotEmpty()
        .allSatisfy(page -> assertThat(book.page(page)).containsPattern("\\d+ photos"));
  }

  @Test
  void the_appendix_gives_every_quantity_with_value_and_source() {
    String back = book.text().substring(book.text().indexOf("Every number the course states"));
    for (String[] row : SampleText.QUANTITIES) {
      assertThat(back).contains(row[1]);
    }
    assertThat(back).contains("9.5 m", "Source: thin lens in air");
  }

  @Test
  void bookmarks_lead_to_the_pages_of_the_parts() throws IOException {
    List<String> names = new ArrayList<>();
    for (PDOutlineItem item : book.pdf().getDocumentCatalog().getDocumentOutline().children()) {
      names.add(item.getTitle());
      int page = book.pdf().getPages().indexOf(item.findDestinationPage(book.pdf())) + 1;
      String title = item.getTitle().replaceFirst("^\\d ", "");
      assertThat(book.page(page)).as(item.getTitle()).contains(title);
    }
    assertThat(names)
        .containsExactly(
            "Round the pot",
            "Contents",
            "1 The right distance",
            "2 Sharp from front to back",
            "3 One ring of photographs",
            "Solutions",
            "Quantities and formulas",
            "Index of quantities");
  }

  @Test
  void no_letter_is_missing() {
    assertThat(book.text())
        .doesNotContain("#", "\ufffd")
        .contains("5.6 ≤ N ≤ 9, about ½ a stop → 2");
  }

  private static String after(String mark, String page) {
    return page.substring(page.indexOf(mark) + mark.length());
  }
}
