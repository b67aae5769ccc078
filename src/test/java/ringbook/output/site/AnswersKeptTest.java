package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;
import static ringbook.output.site.AnsweringReader.box;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/** What a reader wrote stays in the browser, comes back from a file, and goes when told to. */
final class AnswersKeptTest {

  private static final String PAGE = "all-the-way-round";

  @TempDir static Path dir;
  private static AnsweringReader reader;
  private static Browser browser;
  private static Map<String, String> kinds;

  @BeforeAll
  static void open() throws IOException {
    reader = new AnsweringReader();
    browser = reader.browser();
  }

  @BeforeEach
  void begin() {
    reader.begin(PAGE, Size.DESKTOP, false);
    kinds = reader.kinds();
  }

  @Test
  void what_was_answered_is_kept_until_it_is_cleared() throws IOException {
    Map<String, String> answers = new LinkedHashMap<>();
    kinds.forEach(
        (kind, id) -> {
          answers.put(id, reader.right(id, ""));
          reader.give(kind, id, answers.get(id), true);
        });
    reader.check(kinds.get("choice"), true);
    Path sheet = Files.writeString(dir.resolve("nobody.csv"), reader.sheet("csv"));
    browser.open(reader.site().page(PAGE));
    answers.forEach((id, answer) -> assertThat(written(id)).isEqualTo(answer));
    assertThat(browser.one(box(kinds.get("choice")) + ".before").getText())
        .isEqualTo("1 of 1 point, 1 try");
    browser.open(reader.site().page("index"));
    assertThat(browser.one(".round .tally:not([hidden])").getText()).startsWith("1 of ");
    reader.click(reader.button("Clear all answers"));
    reader.click(reader.button("Keep them"));
    assertThat(reader.credits()).hasSize(kinds.size());
    reader.click(reader.button("Clear all answers"));
    reader.click(reader.button("Clear them"));
    assertThat(reader.credits()).isEmpty();
    assertThat(browser.all(".round .tally:not([hidden])")).isEmpty();
    browser.open(reader.site().page(PAGE));
    browser.one(".answers input[type=file]").sendKeys(sheet.toString());
    browser.until("document.querySelector('.told-of').textContent");
    assertThat(browser.one(".told-of").getText()).startsWith(kinds.size() + " answers taken");
    answers.forEach((id, answer) -> assertThat(written(id)).isEqualTo(answer));
    browser
        .one(".answers input[type=file]")
        .sendKeys(Path.of("pom.xml").toAbsolutePath().toString());
    browser.until("document.querySelector('.told-of').textContent.startsWith('Nothing')");
  }

  /** What the controls of an exercise show. */
  private static String written(String id) {
    Object shown =
        browser.run(
            "const b = document.querySelector(arguments[0]);"
                + " return [...b.querySelectorAll('input:checked')].map(i => i.value).join(', ')"
                + " + ([...b.querySelectorAll('select')].map((s, i) => (i + 1) + s.value)"
                + ".join(' '))"
                + " + [...b.querySelectorAll('.rank li')].map(l => l.dataset.letter).join(' ')"
                + " + [...b.querySelectorAll('input[type=text]')]"
                + ".map(i => (b.querySelector('[type=radio]') ? ' ' : '') + i.value).join('')",
            box(id));
    return (String) shown;
  }

  @Test
  void a_browser_that_keeps_nothing_says_so_and_works_on() {
    Object script =
        browser
            .driver()
            .executeCdpCommand(
                "Page.addScriptToEvaluateOnNewDocument",
                Map.of(
                    "source",
                    "Storage.prototype.setItem = () => { throw new Error('denied'); };"
                        + " Storage.prototype.getItem = () => { throw new Error('denied'); };"))
            .get("identifier");
    try {
      browser.open(reader.site().page(PAGE));
      assertThat(browser.all(".unkept")).hasSize(1);
      String id = kinds.get("choice");
      reader.give("choice", id, reader.right(id, ""), true);
      assertThat(reader.check(id, true)).startsWith("1 of 1 point");
      assertThat(browser.one(".tally").getText()).startsWith("1 of ");
      assertThat(browser.console()).isEmpty();
    } finally {
      browser
          .driver()
          .executeCdpCommand(
              "Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", script));
    }
  }
}
