package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WindowType;
import org.opentest4j.TestAbortedException;
import ringbook.Scenes;
import ringbook.browser.CourseData;
import ringbook.browser.SightPage;
import ringbook.site.Browser;

/** The pages' way to the calculations, opened from disk: fetched late, one scene for all pages. */
final class LiveTest {

  private static final String PAGE =
      "<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><meta"
          + " http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src"
          + " 'self'; worker-src %s\"><title>Live</title><script src=\"js/live.js\"></script>";

  /** Waits until the calculations are ready, then hands on what {@code %s} gives. */
  private static final String READY =
      "return new Promise(done => RingbookLive.ready(() => done((() => { %s })())))";

  private static final String CHANGES = "return JSON.stringify(RingbookLive.scene.changes())";
  private static final String TALL =
      "return JSON.stringify(RingbookLive.scene.set(['subject.height'], ['80 cm']))";
  private static final String HEIGHT =
      "return JSON.parse(RingbookLive.calc.evaluate(['subject.height']))[0].text";

  @TempDir static Path site;
  private static Browser browser;

  @BeforeAll
  static void open() throws IOException {
    for (String script : List.of("js/calc.js", "js/sight.js", "js/live.js")) {
      copy(script);
    }
    Files.writeString(site.resolve("js/course.js"), course().script());
    Files.writeString(site.resolve("page.html"), PAGE.replace("%s", "blob:"));
    Files.writeString(site.resolve("next.html"), PAGE.replace("%s", "blob:"));
    Files.writeString(site.resolve("strict.html"), PAGE.replace("%s", "'none'"));
    browser = Browser.start();
  }

  private static CourseData course() {
    return new CourseData(
        "live", Scenes.pot(), Map.of("lens camera", Scenes.potWithLensCamera().kit()));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static void copy(String script) throws IOException {
    Path to = site.resolve(script);
    Files.createDirectories(to.getParent());
    try (InputStream in = LiveTest.class.getResourceAsStream("/" + Assets.ROOT + script)) {
      if (in != null) {
        Files.copy(in, to);
      } else if ("true".equals(System.getenv("CI"))) {
        throw new AssertionError(script + " was not built");
      } else {
        throw new TestAbortedException("NOT TESTED IN A BROWSER: " + script + " was not built");
      }
    }
  }

  @BeforeEach
  void fresh() {
    browser.open(site.resolve("page.html"));
    browser.run("localStorage.clear()");
    browser.open(site.resolve("page.html"));
  }

  private static String ready(String script) {
    return String.valueOf(browser.run(READY.replace("%s", script))).replace('\u00a0', ' ');
  }

  /** What a call gives, or the fault. */
  private static String called(String call, String arguments) {
    return String.valueOf(
        browser.run(
            "return new Promise(done => RingbookLive.ask('"
                + call
                + "', "
                + arguments
                + ", (answer, fault) => done(answer === null ? '! ' + fault : String(answer))))"));
  }

  @Test
  void nothing_is_fetched_before_it_is_asked_for() {
    assertThat(browser.requests())
        .anyMatch(address -> address.endsWith("live.js"))
        .noneMatch(address -> address.endsWith("calc.js"));
    assertThat(browser.run(CHANGES)).isEqualTo("{\"keys\":[],\"written\":[]}");
    assertThat(ready(HEIGHT)).isEqualTo("36 cm");
    assertThat(ready(HEIGHT)).isEqualTo("36 cm");
    assertThat(browser.requests().stream().filter(address -> address.endsWith("calc.js")))
        .hasSize(1);
  }

  /** Counts what workers say from now on. */
  private static final String LISTEN =
      "const Real = Worker; window.heard = 0; window.workers = 0; window.Worker ="
          + " function (address) { const made = new Real(address); window.workers++;"
          + " made.addEventListener('message', () => window.heard++); return made; }";

  /** What the JVM draws for the pot at another height. */
  private static String drawn(String name, String height) {
    SightPage.open(course().course());
    SightPage.change(new String[] {"subject.height"}, new String[] {height});
    return SightPage.figure(name, new String[0], "a-");
  }

  @Test
  void a_worker_draws_for_the_scene_of_the_reader() {
    browser.run(LISTEN);
    ready(TALL);
    assertThat(called("figure", "['ring-plan', [], 'a-']")).isEqualTo(drawn("ring-plan", "80 cm"));
    assertThat(browser.run("return window.heard > 1")).isEqualTo(true);
    assertThat(called("figure", "['nothing', [], '']"))
        .isEqualTo("! no figure is called 'nothing'");
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void workers_start_before_they_are_needed_and_only_once() {
    browser.run(LISTEN);
    browser.run("RingbookLive.warm(); RingbookLive.warm()");
    browser.until("window.heard === 4"); // each is there, and has done one job
    assertThat(called("figure", "['ring-plan', [], 'a-']")).isEqualTo(drawn("ring-plan", "36 cm"));
    assertThat(browser.run("return [window.workers, window.heard]")).isEqualTo(List.of(2L, 5L));
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void where_workers_are_refused_the_page_draws_itself() {
    browser.open(site.resolve("strict.html"));
    assertThat(called("figure", "['ring-plan', [], 'a-']")).isEqualTo(drawn("ring-plan", "36 cm"));
  }

  @Test
  void of_calls_with_one_slot_only_the_latest_waiting_one_is_made() {
    Object answers =
        browser.run(
            "return new Promise(done => { const out = [];"
                + " const draw = (then, slot) =>"
                + " RingbookLive.ask('figure', ['two-rays', [], ''], then, slot);"
                + " draw(() => out.push('first'), 'a');"
                + " draw(() => out.push('second'), 'a');"
                + " draw(() => out.push('other'), 'b');"
                + " draw(() => out.push('third'), 'a');"
                + " draw(() => done(out)); })");
    assertThat(answers).isEqualTo(List.of("other", "third"));
  }

  @Test
  void a_quick_figure_waits_for_no_slow_one_and_none_for_a_scene_that_is_gone() {
    browser.run(LISTEN);
    Object answers =
        browser.run(
            "return new Promise(done => { const out = []; const draw = (name, says) =>"
                + " RingbookLive.ask('figure', [name, [], 'a-'], answer => { out.push(says);"
                + " if (says === 'new map') { done([out, answer]); } });"
                + " RingbookLive.ready(() => { draw('coverage-map', 'old map');"
                + " RingbookLive.scene.set(['subject.height'], ['40 cm']);"
                + " draw('coverage-map', 'new map'); draw('two-rays', 'rays'); }); })");
    assertThat(answers)
        .isEqualTo(List.of(List.of("rays", "new map"), drawn("coverage-map", "40 cm")));
  }

  @Test
  void an_exercise_that_does_not_exist_is_refused_in_words() {
    assertThat(browser.run("return RingbookLive.mark('nothing', '', 'x').catch(f => f.message)"))
        .isEqualTo("the course has no exercise 'nothing'");
    assertThat(
            browser.run("return RingbookLive.judge('nothing', '', '', '').catch(f => f.message)"))
        .isEqualTo("the course has no exercise 'nothing'");
  }

  @Test
  void a_scene_is_kept_for_all_pages_until_it_is_reset() {
    assertThat(ready("window.told = 0; RingbookLive.scene.onChange(() => window.told++);" + TALL))
        .isEqualTo("[]");
    assertThat(browser.run("return window.told")).isEqualTo(1L);
    browser.open(site.resolve("next.html"));
    assertThat(browser.run(CHANGES))
        .isEqualTo("{\"keys\":[\"subject.height\"],\"written\":[\"80 cm\"]}");
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
    browser.run("RingbookLive.scene.reset()");
    assertThat(ready(HEIGHT)).isEqualTo("36 cm");
    browser.open(site.resolve("page.html"));
    assertThat(browser.run(CHANGES)).isEqualTo("{\"keys\":[],\"written\":[]}");
  }

  @Test
  void what_is_wrong_is_told_and_changes_nothing() {
    ready(TALL);
    assertThat(ready("return JSON.stringify(RingbookLive.scene.set(['subject.height'], ['tall']))"))
        .contains("\"key\":\"subject.height\"");
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
    browser.open(site.resolve("next.html"));
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
  }

  @Test
  void a_link_carries_the_scene() {
    ready(
        "return RingbookLive.scene.set(['kit', 'subject.name', 'subject.height'],"
            + " ['lens camera', 'a cup & saucer = 50%', '80 cm'])");
    String changes = String.valueOf(browser.run(CHANGES));
    String link = String.valueOf(browser.run("return RingbookLive.scene.link()"));
    browser.run("localStorage.clear()");
    browser.driver().get("about:blank");
    browser.driver().get(link);
    assertThat(browser.run(CHANGES)).isEqualTo(changes).asString().contains("a cup & saucer = 50%");
    assertThat(browser.driver().getCurrentUrl()).doesNotContain("#");
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
    browser.open(site.resolve("next.html"));
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
  }

  @Test
  void what_the_course_does_not_accept_is_left_out_and_told() {
    browser.driver().get("about:blank");
    browser
        .driver()
        .get(
            site.resolve("page.html").toUri()
                + "#scene&subject.hieght=3+cm&subject.height=80+cm&kit=brass+camera");
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
    assertThat(browser.run("return RingbookLive.scene.dropped().map(fault => fault.key)"))
        .isEqualTo(List.of("kit", "subject.hieght"));
    assertThat(browser.run(CHANGES))
        .isEqualTo("{\"keys\":[\"subject.height\"],\"written\":[\"80 cm\"]}");
  }

  @Test
  void another_window_follows() {
    ready("window.told = 0; RingbookLive.scene.onChange(() => window.told++); return 1");
    String first = browser.driver().getWindowHandle();
    browser.driver().switchTo().newWindow(WindowType.TAB);
    browser.driver().get(site.resolve("next.html").toUri().toString());
    ready(TALL);
    browser.driver().close();
    browser.driver().switchTo().window(first);
    assertThat(
            browser.run(
                "return new Promise(done => { const look = () => window.told ? done(window.told) :"
                    + " setTimeout(look, 20); look(); })"))
        .isEqualTo(1L);
    assertThat(ready(HEIGHT)).isEqualTo("80 cm");
  }
}
