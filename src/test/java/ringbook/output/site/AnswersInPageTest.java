package ringbook.output.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static ringbook.output.site.AnsweringReader.box;
import static ringbook.output.site.AnsweringReader.wrong;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import ringbook.site.Browser.Size;
import ringbook.site.ValidPage;

/** A reader answers exercises of every kind but plans, by hand, and has them marked. */
final class AnswersInPageTest {

  private static final String PAGE = "all-the-way-round";

  @TempDir static Path dir;
  private static AnsweringReader reader;

  /** One exercise of every kind; all stand in one lesson. */
  private static Map<String, String> kinds;

  @BeforeAll
  static void open() throws IOException {
    reader = new AnsweringReader();
    reader.begin(PAGE, Size.DESKTOP, false);
    kinds = reader.kinds();
    assertThat(kinds.keySet())
        .contains("number", "choice", "several", "order", "pairs")
        .containsAnyOf("fault", "mend");
  }

  @Test
  void every_kind_is_answered_with_the_mouse_on_a_narrow_dark_page() {
    reader.begin(PAGE, Size.NARROW, true);
    reader.assertSound("fresh, narrow, dark");
    answerAll(true);
    reader.assertSound("right, narrow, dark");
  }

  @Test
  void every_kind_is_answered_with_the_keyboard_on_a_wide_light_page() throws IOException {
    reader.begin(PAGE, Size.DESKTOP, false);
    answerAll(false);
    kinds.forEach((kind, id) -> reader.give(kind, id, wrong(kind, reader.right(id, "")), false));
    kinds.values().forEach(id -> reader.check(id, false));
    reader.assertSound("wrong, wide, light");
    reader.rename("Ida");
    reader.assertSound("own numbers, wide, light");
    Path file = dir.resolve("state.html");
    Files.writeString(
        file,
        "<!DOCTYPE html>\n" + reader.browser().run("return document.documentElement.outerHTML"));
    assertThat(ValidPage.faults(file)).isEmpty();
  }

  /** Every kind first wrong, then right. */
  private static void answerAll(boolean mouse) {
    kinds.forEach(
        (kind, id) -> {
          String right = reader.right(id, "");
          String wrong = wrong(kind, right);
          reader.give(kind, id, wrong, mouse);
          assertThat(reader.check(id, mouse)).as("%s %s", id, wrong).doesNotStartWith("1 of 1");
          reader.give(kind, id, right, mouse);
          assertThat(reader.check(id, mouse)).as("%s %s", id, right).startsWith("1 of 1 point");
          reader
              .browser()
              .until("document.querySelector('.heard').textContent.includes('1 of 1 point')");
        });
    assertThat(reader.browser().one(".tally").getText()).startsWith(kinds.size() + " of ");
  }

  @Test
  void a_step_is_dragged_to_its_place() {
    reader.begin(PAGE, Size.DESKTOP, false);
    String id = kinds.get("order");
    WebElement handle = reader.browser().one(box(id) + "li:first-child .handle");
    reader.show(handle);
    new Actions(reader.browser().driver())
        .clickAndHold(handle)
        .moveToElement(reader.browser().one(box(id) + "li:nth-child(2)"))
        .moveToElement(reader.browser().one(box(id) + "li:nth-child(3) .handle"))
        .release()
        .perform();
    assertThat(reader.order(id).indexOf("a")).isGreaterThan(0);
    assertThat(reader.browser().run("return RingbookAnswers.of(arguments[0]).answer", id))
        .isEqualTo(String.join(" ", reader.order(id)));
  }

  @Test
  void a_name_brings_numbers_of_ones_own_that_mark_alike_on_the_command_line() throws IOException {
    reader.begin(PAGE, Size.DESKTOP, false);
    String posed = "#exercise-" + kinds.get("number") + " .posed";
    String before = reader.browser().one(posed).getText();
    reader.rename("  Zoë   Müller ");
    assertThat(reader.browser().one(posed).getText()).isNotEqualTo(before);
    boolean right = true;
    for (Map.Entry<String, String> one : kinds.entrySet()) {
      String answer = reader.right(one.getValue(), "Zoë Müller");
      reader.give(one.getKey(), one.getValue(), right ? answer : wrong(one.getKey(), answer), true);
      reader.check(one.getValue(), true);
      right = !right;
    }
    assertThat(reader.browser().run("return RingbookAnswers.name()")).isEqualTo("Zoë Müller");
    Map<?, ?> credits = reader.credits();
    assertThat(credits).hasSize(kinds.size());
    for (String form : List.of("csv", "json")) {
      Path sheet = Files.writeString(dir.resolve("zoe." + form), reader.sheet(form), UTF_8);
      assertThat(AnsweringReader.marked(sheet)).as(form).isEqualTo(credits);
    }
    // The same person, written otherwise, has the same answers; others have none.
    reader.rename("zoe muller");
    assertThat(reader.credits()).isEqualTo(credits);
    reader.rename("");
    assertThat(reader.credits()).isEmpty();
    assertThat(reader.browser().one(posed).getText()).isEqualTo(before);
  }
}
