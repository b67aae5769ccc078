package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/** A reader checks answers in the page; the demo's lesson on one ring, opened from disk. */
final class CheckInPageTest {

  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void open() throws IOException {
    page = DemoSite.shared().page("one-ring");
    browser = Browser.start();
    browser.look(Size.PHONE, false);
    browser.open(page);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static WebElement exercise(String id) {
    return browser.driver().findElement(By.id("exercise-" + id));
  }

  /** What the page says of the answer. */
  private static String said(String id, String answer) {
    WebElement field = exercise(id).findElement(By.tagName("input"));
    WebElement said = exercise(id).findElement(By.className("said"));
    browser.run("arguments[0].textContent = ''", said);
    field.clear();
    field.sendKeys(answer, Keys.ENTER);
    new WebDriverWait(browser.driver(), Duration.ofSeconds(60))
        .until(driver -> !said.getText().isEmpty());
    return said.getText();
  }

  @Test
  void the_calculations_wait_until_they_are_needed() {
    browser.open(page);
    assertThat(browser.requests()).noneMatch(address -> address.endsWith("calc.js"));
    said("ring-height", "83 cm");
    assertThat(browser.requests())
        .anyMatch(address -> address.endsWith("calc.js"))
        .allMatch(address -> address.startsWith("file:"));
  }

  private static String label(String id) {
    return exercise(id).findElement(By.cssSelector("label[for='answer-" + id + "']")).getText();
  }

  @Test
  void a_field_says_what_is_wanted() {
    assertThat(label("ring-height")).isEqualTo("Your answer: a length, with its unit");
    assertThat(label("ring-count")).isEqualTo("Your answer: a whole number");
  }

  @Test
  void a_right_answer_in_any_unit_earns_the_point() {
    assertThat(said("ring-height", "83 cm")).startsWith("1 of 1 point");
    assertThat(said("ring-height", "0,83 m")).startsWith("1 of 1 point");
  }

  @Test
  void a_slip_is_explained() {
    assertThat(said("ring-height", "41 cm"))
        .doesNotStartWith("1 of 1")
        .contains("Add the height of that middle above the floor.");
  }

  @Test
  void symbols_of_the_working_are_set_as_in_the_lesson_and_counts_have_keys_for_numbers() {
    said("ring-owl-step", "41 cm");
    WebElement working = exercise("ring-owl-step").findElement(By.cssSelector(".said details"));
    assertThat(working.getDomProperty("textContent")).contains("αn = 360°").doesNotContain("_");
    assertThat(working.findElements(By.tagName("sub"))).isNotEmpty();
    String keys = "return document.getElementById('answer-' + arguments[0]).inputMode";
    assertThat(browser.run(keys, "ring-count")).isEqualTo("decimal");
    assertThat(browser.run(keys, "ring-height")).isEqualTo("");
  }

  @Test
  void a_choice_gets_its_reason() {
    WebElement said = exercise("ring-five").findElement(By.className("said"));
    exercise("ring-five")
        .findElement(By.cssSelector("input[value=b]"))
        .sendKeys(Keys.SPACE, Keys.ENTER);
    new WebDriverWait(browser.driver(), Duration.ofSeconds(60))
        .until(driver -> !said.getText().isEmpty());
    assertThat(said.getText()).startsWith("0 of 1 point").contains("Sharpness cannot bring back");
  }

  @Test
  void what_was_written_is_kept_and_nothing_else_breaks() {
    said("ring-height", "83 cm");
    assertThat(browser.barriers()).isEmpty();
    assertThat(browser.overhang()).isZero();
    assertThat(browser.console()).isEmpty();
    browser.open(page);
    WebElement field = exercise("ring-height").findElement(By.tagName("input"));
    assertThat(field.getDomProperty("value")).isEqualTo("83 cm");
  }
}
