package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import ringbook.ledger.Reckoning;
import ringbook.plans.FieldSheet;
import ringbook.plans.FieldSheet.Run;
import ringbook.plans.FieldSheet.Stop;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneChanges.Change;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;
import ringbook.site.ValidPage;

/** A reader goes through the shoot of the demo with the field view on a phone. */
final class FieldViewTest {

  @TempDir static Path dir;
  private static Browser browser;
  private static Path page;
  private static Scene scene;
  private static FieldSheet sheet;

  @BeforeAll
  static void make() throws IOException {
    DemoSite site = DemoSite.shared();
    page = site.page("field-view");
    scene = site.sources().file().scene();
    sheet = FieldSheet.of(Reckoning.of(scene));
    browser = Browser.start();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void first_visit() {
    browser.look(Size.PHONE, false);
    browser.open(page);
    browser.run("localStorage.clear()");
    browser.open(page);
  }

  private static String text(String selector) {
    return (String)
        browser.run("return document.querySelector(arguments[0]).textContent.trim()", selector);
  }

  private static WebElement one(String selector) {
    return browser.driver().findElement(By.cssSelector("main " + selector));
  }

  private static boolean shown(String selector) {
    return one(selector).isDisplayed();
  }

  /** Presses a button as a keyboard or a screen reader does. */
  private static void press(String selector) {
    press(selector, 1);
  }

  private static void press(String selector, int times) {
    browser.run(
        "const b = document.querySelector('main ' + arguments[0]);"
            + " for (let i = 0; i < arguments[1]; i++) b.click();",
        selector,
        times);
  }

  private static void assertShot(FieldSheet of, int run, int stop) {
    Run found = of.runs().get(run);
    Stop here = found.stops().get(stop);
    int number = here.station().number();
    assertThat(text("h2.now"))
        .isEqualTo(found.name() + ": photograph " + number + " of " + found.stops().size());
    assertThat(text(".facts"))
        .isEqualTo("Lens height" + here.height() + "Distance" + here.away() + "Tilt" + here.tilt());
    assertThat(text(".stand")).contains(here.clock(), here.angle(), here.floor());
  }

  @Test
  void two_rings_are_walked_with_the_numbers_of_the_plan() {
    assertThat(text("h2.now")).isEqualTo("Ready?");
    assertThat(text(".for")).contains(scene.subject().name(), sheet.total());
    press(".main");
    for (int r = 0; r < 2; r++) {
      Run run = sheet.runs().get(r);
      assertThat(text("h2.now")).isEqualTo("Slate: " + run.name());
      assertThat(text(".todo")).contains(run.before()).contains("card that says " + run.name());
      press(".main");
      for (int s = 0; s < run.stops().size(); s++) {
        assertShot(sheet, r, s);
        assertThat(text(".way"))
            .isEqualTo(s == 0 ? run.stops().get(s).place() : run.stops().get(s).way());
        assertThat(text(".left"))
            .startsWith((run.stops().size() - s) + " left in " + run.name() + ", ");
        press(".main");
      }
    }
    assertThat(text("h2.now")).isEqualTo("Slate: " + sheet.runs().get(2).name());
  }

  @Test
  void what_is_left_is_all_that_the_plan_counts_and_the_pace_of_the_scene() {
    int photos = sheet.runs().stream().mapToInt(Run::photos).sum();
    long minutes = (long) Math.ceil(photos * sheet.secondsPerPhoto() / 60);
    assertThat(text(".left")).isEqualTo(photos + " left in all, about " + minutes + "\u00a0min");
    assertThat(sheet.total()).startsWith(photos + " photographs in ");
  }

  @Test
  void it_keeps_its_place_and_takes_marks_back() {
    press(".main", 9); // begin, slate, seven photographs
    assertShot(sheet, 0, 7);
    browser.open(page);
    assertShot(sheet, 0, 7);
    assertThat(text(".hears")).isEmpty();
    press(".undo");
    assertShot(sheet, 0, 6);
    press(".undo", 50);
    assertThat(text("h2.now")).isEqualTo("Ready?");
    assertThat(one(".undo").getAttribute("aria-disabled")).isEqualTo("true");
  }

  @Test
  void what_is_skipped_comes_at_the_end_and_can_be_left_out_or_taken_again() {
    Run first = sheet.runs().get(0);
    press(".main", 2);
    press(".later");
    assertThat(text(".way")).isEqualTo(first.stops().get(1).place());
    press(".main");
    press(".later");
    int rest = sheet.runs().stream().mapToInt(r -> r.stops().size() + 1).sum() - 4;
    press(".main", rest);
    assertThat(text("h2.now")).isEqualTo("Now what you skipped");
    assertThat(text(".left")).startsWith("2 left in all");
    press(".main");
    assertShot(sheet, 0, 0);
    press(".main");
    assertShot(sheet, 0, 2);
    press(".later");
    assertThat(text("h2.now")).isEqualTo("The last slate");
    assertThat(text(".gaps")).contains(first.name() + " 3");
    press(".again");
    assertThat(text("h2.now")).isEqualTo("Now the retakes");
    press(".main");
    assertThat(text("h2.now")).startsWith(first.name() + ": again, photograph 1 of ");
    press(".main", 2);
    assertThat(text("h2.now")).isEqualTo("All is taken");
    press(".main");
    assertThat(text("h2.now")).isEqualTo("All is taken");
  }

  @Test
  void another_scene_is_followed_and_a_shoot_that_began_stays_until_the_reader_decides() {
    press(".main", 5);
    Map<String, String> stated =
        Map.of("subject.name", "hiking boot", "subject.height", "18 cm", "aim.step", "10°");
    browser.run(
        "RingbookLive.keep('scene', {keys: Object.keys(arguments[0]), written:"
            + " Object.values(arguments[0])})",
        stated);
    browser.open(page);
    until("!document.querySelector('.moved').hidden");
    assertThat(text(".moved p")).contains("3 photographs taken");
    assertShot(sheet, 0, 3);
    press(".stay");
    assertThat(shown(".moved")).isFalse();
    press(".main");
    assertShot(sheet, 0, 4);
    browser.run(
        "const k = Object.keys(localStorage).find(k => k.startsWith('ringbook.field'));"
            + " const s = JSON.parse(localStorage[k]); s.stays = ''; localStorage[k] ="
            + " JSON.stringify(s)");
    browser.open(page);
    until("!document.querySelector('.moved').hidden");
    press(".renew");
    List<Change> changes =
        stated.entrySet().stream().map(e -> new Change(e.getKey(), e.getValue())).toList();
    FieldSheet own =
        FieldSheet.of(
            Reckoning.of(SceneChanges.apply(scene, changes, Map.of()).scene().orElseThrow()));
    assertThat(text(".for")).startsWith("For your own scene: hiking boot").contains(own.total());
    press(".main", 3);
    assertShot(own, 0, 1);
    assertThat(browser.run("return document.querySelectorAll('.tables tbody tr').length"))
        .isEqualTo((long) own.runs().stream().mapToInt(r -> r.stops().size()).sum());
  }

  private static void until(String condition) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(30))
        .until(driver -> Boolean.TRUE.equals(browser.run("return Boolean(" + condition + ")")));
  }

  @Test
  void beginning_anew_asks_first() {
    press(".main", 4);
    press(".forget");
    browser.driver().switchTo().activeElement().sendKeys(Keys.ESCAPE);
    assertShot(sheet, 0, 2);
    press(".forget");
    press(".drop");
    assertThat(text("h2.now")).isEqualTo("Ready?");
  }

  @Test
  void a_thumb_that_trembles_counts_once_and_keys_do_all() {
    new org.openqa.selenium.interactions.Actions(browser.driver())
        .doubleClick(one(".main"))
        .perform();
    assertThat(text("h2.now")).isNotEqualTo("Ready?").doesNotContain("photograph 2");
    browser.run("document.querySelector('main .main').focus()");
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER, Keys.SPACE, Keys.ENTER);
    assertThat(text("h2.now")).contains("photograph");
    assertThat(browser.run("return document.activeElement.className")).isEqualTo("main");
    assertThat(text(".hears")).startsWith(text("h2.now"));
    assertThat(browser.run("return document.querySelectorAll('[role=status], [aria-live]').length"))
        .isEqualTo(1L);
  }

  @Test
  void the_screen_is_kept_on_while_there_is_something_to_take() {
    browser.run(
        "window.held = 0; Object.defineProperty(navigator, 'wakeLock', {configurable: true, value:"
            + " {request: () => { held++; return Promise.resolve({addEventListener() {},"
            + " release() {}}); }}})");
    press(".main", 1);
    until("held === 1");
  }

  @Test
  void it_works_on_where_the_browser_keeps_nothing() {
    browser.run("Storage.prototype.setItem = () => { throw new Error('no'); }");
    press(".main", 3);
    assertShot(sheet, 0, 1);
    assertThat(text(".notice")).startsWith("This browser keeps nothing.");
  }

  @Test
  void without_script_the_whole_table_stands_on_the_page() throws IOException {
    String raw = java.nio.file.Files.readString(page);
    for (Run run : sheet.runs()) {
      assertThat(raw).contains("<h3>" + run.name() + ": " + run.photos() + " photographs</h3>");
    }
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.driver().get(page.toUri().toString());
      assertThat(shown(".all-shots tbody tr")).isTrue();
      assertThat(shown(".shoot")).isFalse();
      assertThat(shown(".locks")).isTrue();
    } finally {
      browser
          .driver()
          .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @Test
  void it_is_valid_and_without_barriers_light_and_dark_narrow_and_wide() throws IOException {
    assertThat(ValidPage.faults(page)).isEmpty();
    for (Size size : Size.values()) {
      browser.look(size, size == Size.PHONE);
      browser.run("document.querySelector('details').open = true");
      for (int presses : new int[] {0, 1, 1}) {
        press(".main", presses);
        assertThat(browser.overhang()).isZero();
        assertThat(browser.barriers()).as("%s", text("h2.now")).isEmpty();
      }
      press(".undo", 2);
    }
    assertThat(browser.console()).isEmpty();
    browser.look(Size.PHONE, false);
    press(".main", 2);
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('.thumb button, .lamp, .plain')]"
                    + ".map(b => b.getBoundingClientRect()).filter(r => r.width > 0 && (r.height <"
                    + " 48 || r.width < 48)).length"))
        .isEqualTo(0L);
    String light = (String) browser.run("return getComputedStyle(document.body).backgroundColor");
    browser.driver().findElement(By.cssSelector(".lamp")).click();
    assertThat(browser.run("return getComputedStyle(document.body).backgroundColor"))
        .isNotEqualTo(light);
  }
}
