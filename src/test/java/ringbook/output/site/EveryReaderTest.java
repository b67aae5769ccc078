package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/**
 * Pages for those who hear them, go by keyboard, enlarge them or set their own colours: what is
 * told and how often, where the focus is, what would hide it (WCAG 2.2, success criteria 2.4.3,
 * 2.4.11 and 4.1.3).
 */
final class EveryReaderTest {

  /** Notes what screen readers are told from now on. */
  private static final String LISTEN =
      "window.told = []; new MutationObserver(() =>"
          + " told.push(document.querySelector('[role=status]').textContent))"
          + ".observe(document.querySelector('[role=status]'), {childList: true})";

  /** Gives the focus to each part in turn and names those that something else lies upon. */
  private static final String HIDDEN =
      "document.documentElement.style.scrollBehavior = 'auto';"
          + " const at = (e, y) => { const r = e.getBoundingClientRect();"
          + " const top = document.elementFromPoint(r.left + Math.min(r.width, 30) / 2, y(r));"
          + " return !top || !(e.contains(top) || top.contains(e) ||"
          + " e.labels && [...e.labels].some(l => l.contains(top))); };"
          + " return [...document.querySelectorAll(arguments[0])].filter(e => {"
          + " if (!e.checkVisibility({visibilityProperty: true})) return false; e.focus();"
          + " return document.activeElement !== e || at(e, r => r.top + 3) ||"
          + " at(e, r => r.bottom - 3); }).map(e => e.id || e.outerHTML.slice(0, 60))";

  private static final String FOCUSABLE = ":is(a[href], button, input, select, summary)";

  private static DemoSite site;
  private static Browser browser;

  @BeforeAll
  static void open() throws IOException {
    site = DemoSite.shared();
    browser = Browser.start();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static void fresh(String page, Size size) {
    browser.look(size, false);
    browser.open(site.page(page));
    browser.run("localStorage.clear()");
    browser.open(site.page(page));
  }

  private static void openCard() {
    browser.run("document.querySelector('.mine .take').click()");
    browser.until("RingbookCard.isOpen()");
    browser.run("document.querySelectorAll('.scene-card details').forEach(d => d.open = true)");
  }

  private static WebElement write(String id, String text) {
    WebElement field = browser.one("#" + id);
    field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text);
    return field;
  }

  private static List<String> told() throws InterruptedException {
    Thread.sleep(1200); // longer than a pause while writing and the quiet before words
    return ((List<?>) browser.run("return window.told.splice(0)"))
        .stream().map(String::valueOf).toList();
  }

  private static String focused() {
    return (String)
        browser.run(
            "const a = document.activeElement; return a.getAttribute('aria-label') || a.id");
  }

  @Test
  void an_entry_is_told_once_and_the_focus_goes_on_from_it() throws InterruptedException {
    fresh("one-ring", Size.DESKTOP);
    openCard();
    browser.run(LISTEN);
    WebElement field = write("scene-subject-height", "50 cm");
    assertThat(told()).singleElement().asString().endsWith(" numbers on this page changed.");
    field.sendKeys(Keys.TAB);
    assertThat(told()).as("left as it was taken").isEmpty();
    write("scene-subject-height", "fifty");
    assertThat(told()).as("still being written").isEmpty();
    field.sendKeys(Keys.TAB);
    assertThat(focused()).isEqualTo("Put back: height of the object");
    assertThat(told())
        .containsExactly(
            "One entry cannot be used yet: height of the object. Everything else holds.");
    write("scene-subject-height", "50 cm").sendKeys(Keys.TAB);
    assertThat(focused()).isEqualTo("Put back: height of the object");
    assertThat(browser.one(".scene-card .state").getText()).isEmpty();
    browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
    assertThat(focused()).isEqualTo("scene-subject-height");
    assertThat(browser.one("#scene-subject-height").getDomProperty("value")).isEqualTo("36 cm");
    assertThat(browser.driver().findElements(By.cssSelector(".is-mine"))).isEmpty();
  }

  @Test
  void nothing_lies_upon_the_focus_of_the_card_however_low_the_window() {
    for (int height : new int[] {900, 450, 256}) {
      fresh("one-ring", Size.NARROW);
      window(height == 256 ? 320 : 640, height);
      openCard();
      browser.run("document.querySelector('#scene-subject-height').focus()");
      write("scene-subject-height", "fifty").sendKeys(Keys.TAB);
      browser.until("document.querySelector('.scene-card .state').textContent");
      assertThat((List<?>) browser.run(HIDDEN, ".scene-card " + FOCUSABLE)).isEmpty();
      assertThat(browser.overhang()).isZero();
    }
  }

  private static void window(int width, int height) {
    browser
        .driver()
        .executeCdpCommand(
            "Emulation.setDeviceMetricsOverride",
            Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  @Test
  void beside_the_card_no_focus_is_behind_it() {
    for (String page : List.of("one-ring", "index")) {
      fresh(page, Size.DESKTOP);
      openCard();
      assertThat((List<?>) browser.run(HIDDEN, "body > :not(dialog) " + FOCUSABLE)).isEmpty();
      assertThat((List<?>) browser.run(HIDDEN, ".skip")).isEmpty();
      browser.run("document.getElementById('scene-card-title').focus()");
      browser.driver().switchTo().activeElement().sendKeys(Keys.ESCAPE);
      assertThat(browser.run("return document.activeElement.className")).isEqualTo("take");
    }
  }

  @Test
  void a_link_says_once_what_of_it_cannot_be_used() {
    fresh("one-ring", Size.DESKTOP);
    String address = site.page("one-ring").toUri() + "#scene&";
    browser.driver().get(address + "subject.height=20+cm&kit.focalLength=long");
    browser.until("document.querySelector('.mine .state').textContent.includes('Not taken over')");
    assertThat(browser.one("#main").getText()).contains("20 cm");
    browser.open(site.page("right-distance"));
    browser.until("document.documentElement.hasAttribute('data-own-scene')");
    browser.until("document.querySelector('.mine .state').textContent.includes('own scene.')");
    assertThat(browser.one(".mine .state").getText()).doesNotContain("Not taken over");
    browser.run("localStorage.clear()");
    browser.open(site.page("index"));
    browser.driver().get(address + "subject.height=wide");
    browser.until("document.querySelector('.mine .state').textContent.includes('Not taken over')");
    assertThat(browser.one(".mine .state").getText()).startsWith("The page shows the course’s own");
  }

  @Test
  void captions_keep_to_the_screen_and_nothing_is_pushed_off_it_by_large_letters() {
    fresh("tables", Size.NARROW);
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('caption')].filter(c =>"
                    + " c.getBoundingClientRect().right > innerWidth).length"))
        .isEqualTo(0L);
    for (String page : List.of("index", "rings-at-heights", "field-view")) {
      fresh(page, Size.NARROW);
      window(195, 370); // 180 without the scroll bar: letters of twice the size on a phone of 360
      assertThat(browser.overhang()).as(page).isZero();
    }
  }

  @Test
  void the_card_says_so_where_the_browser_keeps_nothing() {
    fresh("one-ring", Size.DESKTOP);
    openCard();
    assertThat(browser.one(".scene-card .lead").getText()).contains("stays in this browser");
    fresh("one-ring", Size.DESKTOP);
    browser.run("Storage.prototype.setItem = () => { throw new Error('no'); }");
    openCard();
    assertThat(browser.one(".scene-card .lead").getText())
        .contains("This browser keeps nothing")
        .doesNotContain("stays in this browser");
  }

  @Test
  void what_a_plan_comes_to_is_told_and_a_thumb_that_scrolls_leaves_it_alone()
      throws InterruptedException {
    fresh("rings-at-heights", Size.PHONE);
    browser.run(LISTEN);
    browser.run(
        "document.querySelector(arguments[0]).click()",
        AnsweringReader.box("plan-owl") + ".row button.plain");
    PlanInPageTest.lookedAt(browser, "rings: 24 at 15°");
    assertThat(told())
        .singleElement()
        .asString()
        .matches("Plan the owl: \\d+ % of what can be seen is shown well; .* 24 photographs; .*");
    browser.run(
        "const s = document.querySelector('#answer-plan-owl-0-photos ~ input');"
            + " s.dispatchEvent(new PointerEvent('pointerdown')); s.value = 50;"
            + " s.dispatchEvent(new Event('input')); window.moved = s.ariaValueText"
            + " ?? s.getAttribute('aria-valuetext');"
            + " s.dispatchEvent(new PointerEvent('pointercancel'));");
    assertThat(browser.run("return window.moved")).isEqualTo("50");
    PlanInPageTest.lookedAt(browser, "rings: 24 at 15°");
    assertThat(browser.run("return document.querySelector('.look .drawing').tabIndex"))
        .as("wider than a phone")
        .isEqualTo(0L);
    browser.look(Size.DESKTOP, false);
    browser.run("RingbookPage.markScrolling()");
    assertThat(browser.run("return document.querySelector('.look .drawing').tabIndex"))
        .isEqualTo(-1L);
  }

  /** Where a side of a part lies in the window, in whole pixels. */
  private Object edge(String part, String side) {
    return browser.run(
        "return Math.round("
            + "document.querySelector(arguments[0]).getBoundingClientRect()[arguments[1]])",
        part,
        side);
  }

  private Object border(String part) {
    return browser.run(
        "return getComputedStyle(document.querySelector(arguments[0])).borderTopWidth", part);
  }

  @Test
  void in_the_field_all_that_is_needed_for_a_photograph_is_in_sight_and_heard() {
    for (int height : new int[] {640, 700, 800, 915}) {
      fresh("field-view", Size.PHONE);
      window(360, height);
      assertThat((List<?>) browser.run(HIDDEN, "main " + FOCUSABLE)).as("%d", height).isEmpty();
      browser.run("scrollTo({top: 0, behavior: 'instant'})");
      Object button = edge(".thumb .main", "bottom");
      for (int i = 0; i < 7; i++) {
        browser.run("document.querySelector('.thumb .main').click()");
        assertThat(edge(".thumb .main", "bottom")).isEqualTo(button);
      }
      assertThat(browser.one(".block").getText()).startsWith("In the way here: workbench");
      assertThat(browser.one(".hears").getDomProperty("textContent"))
          .contains(browser.one(".way").getText(), browser.one(".block").getText());
      assertThat((Long) edge(".block", "bottom")).isLessThanOrEqualTo((Long) edge(".thumb", "top"));
      assertThat(edge(".top", "left")).isEqualTo(0L);
    }
  }

  @Test
  void the_station_can_be_told_where_colours_are_the_readers_own() {
    fresh("one-ring", Size.PHONE);
    try {
      browser.run("localStorage.setItem('ringbook.page', 'dark')");
      browser
          .driver()
          .executeCdpCommand(
              "Emulation.setEmulatedMedia",
              Map.of("features", List.of(Map.of("name", "forced-colors", "value", "active"))));
      browser.open(site.page("one-ring"));
      assertThat(border(".strip .is-here span")).isEqualTo("2px");
      assertThat(border(".strip a:not(.is-here) span")).isEqualTo("0px");
      assertThat(browser.run("return document.documentElement.dataset.page ?? ''")).isEqualTo("");
      assertThat(browser.one(".lamp").isDisplayed()).isFalse();
    } finally {
      browser.look(Size.PHONE, false);
      browser.run("localStorage.clear()");
    }
  }
}
