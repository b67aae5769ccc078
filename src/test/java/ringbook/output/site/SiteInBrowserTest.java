package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import ringbook.output.MadeUpCourse;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

final class SiteInBrowserTest {

  @TempDir static Path dir;
  private static Browser browser;
  private static Path site;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.start();
    new SiteOutput().write(MadeUpCourse.small(), dir);
    site = dir.resolve("site");
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @CsvSource({"PHONE, false", "PHONE, true", "DESKTOP, false", "DESKTOP, true"})
  void pages_load_only_files_and_are_without_barriers(Size size, boolean dark) throws IOException {
    browser.look(size, dark);
    for (Path page : SiteLinks.pages(site)) {
      browser.open(page);
      assertThat(browser.requests()).hasSizeGreaterThan(8).allMatch(a -> a.startsWith("file:"));
      browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
      assertThat(browser.barriers()).as("%s", page).isEmpty();
      assertThat(browser.console()).as("%s", page).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(Size.class)
  void no_page_scrolls_sideways(Size size) throws IOException {
    browser.look(size, false);
    for (Path page : SiteLinks.pages(site)) {
      browser.open(page);
      browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
      assertThat(browser.overhang()).as("%s", page).isZero();
    }
  }

  @Test
  void sixteen_stations_find_room(@TempDir Path large) throws IOException {
    new SiteOutput().write(MadeUpCourse.large(16), large);
    Path page = large.resolve("site/lesson-12.html");
    for (Size size : Size.values()) {
      browser.look(size, false);
      browser.open(page);
      assertThat(browser.overhang()).isZero();
      assertThat(browser.barriers()).isEmpty();
      assertThat(shown("return [...document.querySelectorAll('nav.stations a')]")).isEqualTo(17);
    }
    browser.look(Size.PHONE, false);
    browser.open(page);
    assertThat(browser.run(inWindow(".strip .is-here"))).isEqualTo(true);
  }

  private static long shown(String links) {
    return (Long) browser.run(links + ".filter(a => a.getBoundingClientRect().width > 0).length");
  }

  private static String inWindow(String selector) {
    return "const r = document.querySelector('"
        + selector
        + "').getBoundingClientRect(); return r.left >= 0 && r.right <= innerWidth";
  }

  @Test
  void the_typefaces_come_from_the_site() {
    browser.look(Size.DESKTOP, false);
    browser.open(site.resolve("one-ring.html"));
    assertThat(browser.run("return [...document.fonts].filter(f => f.status == 'loaded').length"))
        .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LONG)
        .isGreaterThanOrEqualTo(5);
  }

  @Test
  void dark_can_be_switched_and_is_remembered_on_the_next_page() {
    browser.look(Size.DESKTOP, false);
    browser.open(site.resolve("index.html"));
    String light = ground();
    browser.driver().findElement(By.cssSelector(".lamp")).click();
    assertThat(ground()).isNotEqualTo(light);
    browser.open(site.resolve("all-sharp.html"));
    assertThat(ground()).isNotEqualTo(light);
    browser.driver().findElement(By.cssSelector(".lamp")).click();
    assertThat(ground()).isEqualTo(light);
    browser.run("localStorage.clear()");
  }

  private static String ground() {
    return (String) browser.run("return getComputedStyle(document.body).backgroundColor");
  }

  @Test
  void drawings_follow_the_dark_page() {
    String stroke = "return getComputedStyle(document.querySelector('.drawing .fig-ink')).stroke";
    browser.look(Size.DESKTOP, false);
    browser.open(site.resolve("one-ring.html"));
    Object light = browser.run(stroke);
    browser.look(Size.DESKTOP, true);
    assertThat(browser.run(stroke)).isNotEqualTo(light);
  }

  @Test
  void a_reader_walks_the_ring_by_keyboard() {
    browser.look(Size.DESKTOP, false);
    browser.open(site.resolve("index.html"));
    for (String next : List.of("right-distance", "all-sharp", "one-ring", "quantities")) {
      press(Keys.TAB, Keys.ENTER); // the skip link
      press(Keys.chord(Keys.SHIFT, Keys.TAB)); // back to the last link of the dial
      focusStation(next);
      press(Keys.ENTER);
      assertThat(browser.driver().getCurrentUrl()).endsWith("/" + next + ".html");
    }
  }

  private static void focusStation(String name) {
    for (int i = 0; i < 20 && !focused().endsWith("/" + name + ".html"); i++) {
      press(Keys.chord(Keys.SHIFT, Keys.TAB));
    }
    assertThat(focused()).endsWith("/" + name + ".html");
    assertThat(browser.run("return document.activeElement.matches(':focus-visible')"))
        .isEqualTo(true);
  }

  private static String focused() {
    Object link =
        browser.run("const a = document.activeElement; return String(a.href?.baseVal ?? a.href)");
    return "/" + link;
  }

  private static void press(CharSequence... keys) {
    browser.driver().switchTo().activeElement().sendKeys(keys);
  }

  @Test
  void parts_that_scroll_take_the_focus() {
    browser.look(Size.NARROW, false);
    browser.open(site.resolve("one-ring.html"));
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('.table, .drawing')].filter(p =>"
                    + " p.scrollWidth > p.clientWidth && p.tabIndex < 0).length"))
        .isEqualTo(0L);
    assertThat(Set.of(browser.run("return document.querySelectorAll('.drawing[tabindex]').length")))
        .doesNotContain(0L);
  }
}
