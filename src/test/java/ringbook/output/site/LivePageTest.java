package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import ringbook.course.CourseFile;
import ringbook.course.CourseFileReader;
import ringbook.course.compose.CourseSources;
import ringbook.ledger.Outcome;
import ringbook.ledger.Reckoning;
import ringbook.photos.ExifBytes;
import ringbook.photos.PhotoKit;
import ringbook.photos.PhotoReader;
import ringbook.problems.Position;
import ringbook.problems.Problems;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneChanges.Change;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;
import ringbook.site.ValidPage;
import ringbook.values.ExpressionFault;
import ringbook.values.Expressions;

/** A reader brings a camera, an object and a room of their own to the pages of the demo. */
final class LivePageTest {

  @TempDir static Path dir;
  private static Browser browser;
  private static DemoSite site;
  private static CourseSources sources;

  @BeforeAll
  static void open() throws IOException {
    site = DemoSite.shared();
    sources = site.sources();
    browser = Browser.start();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  /** Opens a page for a reader who comes for the first time. */
  private static void fresh(String name) {
    if (browser.driver().getCurrentUrl().startsWith("file:")) {
      browser.run("localStorage.clear()");
    }
    page(name);
  }

  /** The same, without loading the page again if it is open. */
  private static void at(String name) {
    browser.look(Size.DESKTOP, false);
    if (!browser.driver().getCurrentUrl().endsWith(name + ".html")) {
      fresh(name);
      return;
    }
    browser.run(
        "document.querySelectorAll('dialog[open]').forEach(d => d.close());"
            + " localStorage.clear(); RingbookLive.scene.reset()");
  }

  private static void page(String name) {
    browser.open(site.page(name));
  }

  private static WebElement one(String selector) {
    return browser.driver().findElement(By.cssSelector(selector));
  }

  private static void until(String condition) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(60))
        .until(driver -> Boolean.TRUE.equals(browser.run("return Boolean(" + condition + ")")));
  }

  private static void openCard() {
    one(".mine .take").click();
    until("RingbookCard.isOpen()");
  }

  /** Types into the card, as a reader does. */
  private static void enter(String key, String text) {
    browser.run("document.querySelectorAll('.scene-card details').forEach(d => d.open = true)");
    WebElement field = browser.driver().findElement(By.id("scene-" + key.replace('.', '-')));
    if (field.getTagName().equals("select")) {
      field.sendKeys(text, Keys.TAB);
    } else {
      field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text, Keys.TAB);
    }
  }

  private static void enterPhoneAndBoot() {
    enter("kit.name", "pocket phone");
    enter("kit.equivalent", "24 mm");
    enter("kit.focalLength", "6.9");
    enter("kit.pixelsAcross", "8000 px");
    enter("kit.pixelsDown", "6000 px");
    enter("subject.name", "hiking boot");
    enter("subject.outline", "rectangular");
    enter("subject.height", "18 cm");
    enter("subject.width", "12 in");
    enter("subject.depth", "11 cm");
    for (String hole : List.of("subject.holeDiameter", "subject.holeDepth", "subject.holeTilt")) {
      enter(hole, "");
    }
  }

  /** The scene that the page says the reader stated, built on the JVM. */
  private static Scene readersScene() {
    List<?> keys = (List<?>) browser.run("return RingbookLive.scene.changes().keys");
    List<?> written = (List<?>) browser.run("return RingbookLive.scene.changes().written");
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      changes.add(new Change((String) keys.get(i), (String) written.get(i)));
    }
    CourseFile file = sources.file();
    return SceneChanges.apply(file.scene(), changes, file.otherKits()).scene().orElseThrow();
  }

  /** Every value that can be seen equals what the JVM makes of its expression; how many. */
  private static int assertNumbersOf(Scene scene) {
    Expressions values = new Expressions(Reckoning.of(scene), sources.file().otherKits());
    List<?> items =
        (List<?>)
            browser.run(
                "return RingbookNumbers.find().filter(i => !i.element.closest('[hidden]'))"
                    + ".map(i => [i.expression, i.element.textContent,"
                    + " i.element.dataset.none || ''])");
    for (Object each : items) {
      List<?> item = (List<?>) each;
      String expression = (String) item.get(0);
      String text = (String) item.get(1);
      try {
        assertThat(text).as(expression).isEqualTo(values.text(expression));
      } catch (ExpressionFault fault) {
        assertThat(fault.refused()).isTrue();
        assertThat(item.get(2).equals(text) || fault.fault().endsWith(text.substring(15)))
            .as("%s: %s", expression, text)
            .isTrue();
      }
    }
    return items.size();
  }

  @Test
  void another_phone_and_a_boot_change_every_page() {
    at("right-distance");
    openCard();
    enterPhoneAndBoot();
    Scene scene = readersScene();
    assertThat(scene.kit().name()).isEqualTo("pocket phone");
    assertThat(scene.subject().width().centimetres()).isEqualTo(30.48);
    assertThat(scene.subject().shape()).isEmpty();
    assertThat(assertNumbersOf(scene)).isGreaterThan(40);
    assertThat(one(".card-foot .state").getText()).matches("(\\d+|No) numbers? on this page.*");
    for (String other : List.of("holes-and-edges", "tables", "quantities")) {
      page(other);
      until("document.querySelector('.mine .state').textContent.includes('your own scene.')");
      assertThat(assertNumbersOf(scene)).as(other).isGreaterThan(20);
      assertThat(browser.console()).isEmpty();
    }
  }

  @Test
  void figures_and_workings_follow() {
    at("right-distance");
    String before = one("#right-distance--framing .told").getDomProperty("textContent");
    openCard();
    enter("subject.width", "60 cm");
    until("!document.querySelector('.plate[aria-busy=\"true\"]')");
    String standoff = Reckoning.of(readersScene()).text("distance.standoff");
    assertThat(one("#right-distance--framing .told").getDomProperty("textContent"))
        .isNotEqualTo(before)
        .contains(standoff.substring(0, standoff.indexOf('\u00a0')));
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('main > .working[data-key]')].map(w =>"
                    + " w.querySelector('.result"
                    + " [aria-label]').getAttribute('aria-label')).join()"))
        .asString()
        .contains("standoff is " + standoff);
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void a_change_takes_less_than_a_frame_for_the_numbers() {
    at("right-distance");
    openCard();
    Object median =
        browser.run(
            "const t = []; for (let i = 0; i < 9; i++) {"
                + " RingbookLive.calc.change(['subject.height'], [(20 + i) + ' cm']);"
                + " const s = performance.now(); RingbookNumbers.update();"
                + " t.push(performance.now() - s); }"
                + " RingbookLive.calc.change([], []); return t.sort((a, b) => a - b)[4]");
    // 16 ms on a machine of its own; machines that build are busy.
    assertThat(((Number) median).doubleValue()).isLessThan(100);
  }

  /** Counts what is written on the page in a change, by the element it is written in. */
  private static final String WATCH =
      "window.written = []; const seen = new MutationObserver(all => all.forEach(one => {"
          + " const e = one.target.nodeType === 1 ? one.target : one.target.parentElement;"
          + " written.push(e.matches('data, .value, .word') ? 'number'"
          + " : e.closest('.working') ? 'working' : e.closest('.drawing') ? 'drawing' : 'rest');"
          + " })); seen.observe(document.querySelector('main'),"
          + " {subtree: true, childList: true, characterData: true, attributes: true});";

  @Test
  void only_what_reads_otherwise_is_written_and_numbers_come_first() {
    fresh("right-distance");
    openCard();
    enter("subject.width", "60 cm");
    until("!document.querySelector('.plate[aria-busy=\"true\"]')");
    Object first =
        browser.run(
            WATCH
                + "RingbookLive.scene.set(['subject.width'], ['61 cm']); return new Promise(done =>"
                + " requestAnimationFrame(() => { const now ="
                + " written.concat(seen.takeRecords().map(() => 'late')); done(now.filter((kind, i)"
                + " => now.indexOf(kind) === i)); }))");
    assertThat(((List<?>) first).stream().map(String::valueOf))
        .contains("number")
        .doesNotContain("working", "drawing");
    until("!document.querySelector('.plate[aria-busy=\"true\"]')");
    assertThat(browser.run("return written.includes('working') && written.includes('drawing')"))
        .isEqualTo(true);
    browser.run("written = []; RingbookLive.scene.set(['subject.width'], ['61 cm'])");
    until("!document.querySelector('.plate[aria-busy=\"true\"]')");
    assertThat(browser.run("return written.filter(kind => kind !== 'rest')")).isEqualTo(List.of());
    assertNumbersOf(readersScene());
  }

  /** Scrolls to the element and waits as long as an idle page may take to do what that starts. */
  private static List<String> fetchedAt(String name, String selector) {
    browser.look(Size.DESKTOP, false);
    fresh(name);
    assertThat(browser.requests()).noneMatch(address -> address.endsWith("calc.js"));
    browser.run("document.querySelector(arguments[0]).scrollIntoView()", selector);
    browser.run("return new Promise(done => setTimeout(() => done(true), 2000))");
    return browser.requests();
  }

  @Test
  void only_near_a_question_for_a_plan_a_worker_is_made_ready() {
    assertThat(fetchedAt("one-ring", ".check"))
        .noneMatch(address -> address.endsWith("calc.js") || address.endsWith("sight.js"));
    assertThat(fetchedAt("rings-at-heights", "#exercise-plan-owl"))
        .anyMatch(address -> address.endsWith("sight.js"));
  }

  @Test
  void a_branch_turns_round_and_back() {
    at("your-camera");
    assertThat(one("main").getText()).contains("is fixed: f/1.8").doesNotContain("a fifth number");
    openCard();
    enter("kit.narrowest", "16");
    assertThat(one("main").getText())
        .contains("a fifth number that you can set", "from f/1.8 to f/16")
        .doesNotContain("is fixed: f/1.8");
    enter("kit.narrowest", "f/1.8");
    assertThat(one("main").getText()).contains("is fixed: f/1.8");
  }

  @Test
  void what_no_scene_of_the_course_needs_is_there_for_a_reader_who_does() {
    at("all-the-way-round");
    assertThat(one("main").getText()).doesNotContain("cannot be planned yet");
    openCard();
    enter("place.highestLens", "45 cm"); // below the table: no ring lies within reach
    assertThat(one("main").getText()).contains("cannot be planned yet");
    assertThat(one(".branch.is-new .working .result [aria-label]").getDomAttribute("aria-label"))
        .isEqualTo(
            "photographs in the ring is " + Reckoning.of(readersScene()).text("ring.photos"));
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void a_pause_while_writing_is_enough() {
    at("right-distance");
    openCard();
    browser.run("document.querySelectorAll('.scene-card details').forEach(d => d.open = true)");
    WebElement field = one("#scene-subject-height");
    field.sendKeys(Keys.chord(Keys.CONTROL, "a"), "88 c");
    until("RingbookEntries.written['subject.height'] === '88 c'");
    assertThat(one("#scene-subject-height-wrong").getText()).isEmpty(); // still being written
    field.sendKeys("m");
    until("RingbookLive.scene.changes().written[0] === '88 cm'");
    assertThat(browser.driver().switchTo().activeElement()).isEqualTo(field);
    browser.run("document.querySelectorAll('[name=scene-units]')[1].click()");
    assertThat(one("#scene-subject-width").getDomProperty("value")).isEqualTo("11.81 in");
    browser.run("document.querySelectorAll('[name=scene-units]')[0].click()");
  }

  @Test
  void wrong_input_stays_in_its_field_and_the_rest_holds() {
    at("right-distance");
    openCard();
    enter("subject.height", "50 cm");
    enter("subject.height", "50 pounds");
    enter("subject.name", "stone owl");
    WebElement field = one("#scene-subject-height");
    assertThat(field.getDomProperty("value")).isEqualTo("50 pounds");
    assertThat(field.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(one("#scene-subject-height-wrong").getText())
        .contains("'pounds' is not a unit known here", "Write a length, such as 42 cm.");
    assertThat(readersScene().subject().name()).isEqualTo("stone owl");
    assertThat(readersScene().subject().height().centimetres()).isEqualTo(50);
    page("one-ring");
    openCard();
    assertThat(one("#scene-subject-height").getDomProperty("value")).isEqualTo("50 pounds");
    enter("subject.height", "18");
    assertThat(readersScene().subject().height().centimetres()).isEqualTo(18);
    assertThat(one("#scene-subject-height-wrong").getText()).isEmpty();
  }

  @Test
  void back_to_the_courses_own_leaves_no_trace() {
    fresh("right-distance");
    String fresh = (String) browser.run("return document.querySelector('main').innerText");
    Object drawings = browser.run("return document.querySelector('.drawing').innerHTML");
    openCard();
    enterPhoneAndBoot();
    until("!document.querySelector('.plate[aria-busy=\"true\"]')");
    one(".card-foot .plain").click();
    until("!document.querySelector('.plate[aria-busy=\"true\"]')");
    assertThat(browser.run("return document.querySelector('main').innerText")).isEqualTo(fresh);
    assertThat(browser.run("return document.querySelector('.drawing').innerHTML"))
        .isEqualTo(drawings);
    assertThat(browser.run("return document.querySelectorAll('main .is-changed').length"))
        .isEqualTo(0L);
    assertThat(one("#scene-subject-height").getDomProperty("value")).isEqualTo("36 cm");
  }

  @Test
  void a_link_carries_the_scene() {
    at("right-distance");
    openCard();
    enter("subject.height", "1 ft 2 in");
    String link = one("#scene-link").getDomProperty("value");
    Scene scene = readersScene();
    fresh("index");
    browser.driver().get(link);
    until("document.documentElement.hasAttribute('data-own-scene')");
    assertThat(readersScene()).isEqualTo(scene);
    assertNumbersOf(scene);
  }

  @Test
  void a_saved_scene_is_the_scene_part_of_a_course_file() {
    at("right-distance");
    openCard();
    enterPhoneAndBoot();
    browser.run("document.querySelector('[name=scene-furniture]:not(:checked)').click()");
    Scene scene = readersScene();
    String text =
        (String)
            browser.run(
                "return RingbookSceneFile.text(JSON.parse(RingbookLive.calc.fields()),"
                    + " {'place.obstacles': 'none'})");
    Problems problems = new Problems();
    CourseFile file =
        CourseFileReader.read(
                "saved.yaml", "title: Saved\ndate: 2026-11-02\nlessons: [a]\n" + text, problems)
            .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    assertThat(Reckoning.of(file.scene()).text("ring.photos"))
        .isEqualTo(Reckoning.of(scene).text("ring.photos"));
    assertThat(file.scene().place()).isEqualTo(scene.place());
    browser.run(
        "const f = RingbookSceneFile.read(arguments[0], JSON.parse((RingbookLive.scene.reset(),"
            + " RingbookLive.calc.fields()))); window.unread = f.unread;"
            + " RingbookLive.scene.set(Object.keys(f.written), Object.values(f.written))",
        text + "nonsense\n");
    assertThat(browser.run("return unread.join()")).asString().contains("nonsense");
    assertThat(Reckoning.of(readersScene()).text("distance.standoff"))
        .isEqualTo(Reckoning.of(scene).text("distance.standoff"));
  }

  @Test
  void a_number_shows_how_it_comes_about() {
    at("right-distance");
    WebElement number =
        one(
            "main > p data[data-key='distance.standoff'], main .branch"
                + " data[data-key='distance.standoff']");
    number.sendKeys(Keys.ENTER);
    until("document.querySelector('.slip[open]')");
    Reckoning reckoning = Reckoning.of(sources.file().scene());
    assertThat(one(".slip h2").getText()).isEqualToIgnoringCase("standoff");
    assertThat(one(".slip .result [aria-label]").getDomAttribute("aria-label"))
        .isEqualTo("standoff is " + reckoning.text("distance.standoff"));
    assertThat(one(".slip").getText()).contains("Source:", "standoff the width asks for");
    one(".slip .chain-list button").click();
    assertThat(one(".slip h2").getText()).isEqualTo("Standoff the width asks for");
    one(".slip .back").click();
    assertThat(one(".slip h2").getText()).isEqualTo("Standoff");
    browser.driver().switchTo().activeElement().sendKeys(Keys.ESCAPE);
    assertThat(browser.run("return document.querySelector('.slip').open")).isEqualTo(false);
    assertThat(browser.driver().switchTo().activeElement()).isEqualTo(number);
    // Every formula of the ledger can be written.
    assertThat(
            browser.run(
                "const bad = []; for (const key of RingbookLive.calc.keys()) { try {"
                    + " RingbookParts.steps(JSON.parse(RingbookLive.calc.working(key)));"
                    + " } catch (fault) { bad.push(key + ': ' + fault.message); } } return bad"))
        .isEqualTo(List.of());
  }

  @Test
  void a_test_photograph_tells_the_camera() throws IOException {
    Path photo = Files.write(dir.resolve("test.jpg"), ExifBytes.phone().jpeg());
    at("right-distance");
    openCard();
    one(".photo input").sendKeys(photo.toString());
    until("document.querySelector('.photo .said').textContent");
    Reckoning reckoning = Reckoning.of(readersScene());
    assertThat(reckoning.text("kit.equivalent")).isEqualTo("26\u00a0mm");
    assertThat(reckoning.text("kit.focalLength")).isEqualTo("4.25\u00a0mm");
    assertThat(((Outcome.Known) reckoning.of("kit.pixelsAcross")).si()).isEqualTo(400);
    assertThat(one(".photo .said").getText()).contains("closest focus is assumed");
    one(".photo input").sendKeys(Path.of("lessons/course.yaml").toAbsolutePath().toString());
    until("document.querySelector('.photo .said').textContent.includes('no JPEG')");
  }

  @Test
  void photographs_are_read_by_the_same_rules_as_on_the_command_line() throws IOException {
    at("right-distance");
    ExifBytes lens =
        new ExifBytes(ByteOrder.LITTLE_ENDIAN)
            .rational(0x829D, 80, 10)
            .rational(0x9205, 2, 1)
            .rational(0x920A, 35, 1)
            .rational(0xA20E, 40000, 235)
            .rational(0xA20F, 30000, 156)
            .whole(0xA210, 3)
            .size(400, 300);
    for (ExifBytes exif :
        List.of(
            lens,
            ExifBytes.phone(),
            ExifBytes.phone().without(0x920A),
            ExifBytes.phone().without(0x829D),
            ExifBytes.phone().without(0xA405),
            ExifBytes.phone().rational(0x920A, 1, 0),
            ExifBytes.phone().rational(0x920A, 1, 1),
            ExifBytes.phone().whole(0xA405, 5000))) {
      Map<String, String> stated = new TreeMap<>(kit(exif.jpeg()));
      stated.values().removeIf(String::isEmpty); // "narrowest" left out
      assertThat(stated).isEqualTo(kitOnTheCommandLine(exif.jpeg()));
    }
    assertThat(browser.run("return RingbookTestPhoto.settings(new Uint8Array(9).buffer)")).isNull();
  }

  private static Map<String, String> kitOnTheCommandLine(byte[] photo) throws IOException {
    Path file = Files.write(dir.resolve("other.jpg"), photo);
    Problems problems = new Problems();
    Map<String, String> stated = new TreeMap<>();
    PhotoReader.read(file, problems)
        .flatMap(facts -> PhotoKit.of(facts, Position.ofFile("other.jpg"), problems))
        .ifPresent(kit -> kit.lines().forEach(line -> stated.put(line.key(), line.value())));
    return stated;
  }

  /** What the page takes from a photograph; empty if it does not suffice. */
  @SuppressWarnings("unchecked")
  private static Map<String, String> kit(byte[] photo) {
    return (Map<String, String>)
        browser.run(
            "const s = RingbookTestPhoto.settings(Uint8Array.from(atob(arguments[0]), c =>"
                + " c.charCodeAt(0)).buffer); return RingbookTestPhoto.kit(s).kit || {}",
            Base64.getEncoder().encodeToString(photo));
  }

  @Test
  void every_state_is_without_barriers_and_valid() throws IOException {
    for (Size size : List.of(Size.NARROW, Size.DESKTOP)) {
      browser.look(size, size == Size.DESKTOP); // dark on wide pages
      fresh("your-camera");
      openCard();
      browser.run("document.querySelectorAll('details').forEach(d => d.open = true)");
      assertSound(size + " card open");
      enter("kit.focalLength", "5.2 mm");
      enter("kit.widest", "20 pounds");
      until("!document.querySelector('.plate[aria-busy=\"true\"]')");
      assertSound(size + " changed, with wrong input");
      one(".scene-card .close").click();
      one("main data.is-changed").sendKeys(Keys.ENTER);
      until("document.querySelector('.slip[open]')");
      assertSound(size + " working open");
      if (size == Size.DESKTOP) {
        Path file = dir.resolve("state.html");
        Files.writeString(
            file, "<!DOCTYPE html>\n" + browser.run("return document.documentElement.outerHTML"));
        assertThat(ValidPage.faults(file)).isEmpty();
      }
    }
  }

  private static void assertSound(String state) {
    assertThat(browser.barriers()).as(state).isEmpty();
    assertThat(browser.overhang()).as(state).isZero();
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('dialog[open]')]"
                    + ".filter(d => d.scrollWidth > d.clientWidth).length"))
        .as("%s: parts that scroll sideways", state)
        .isEqualTo(0L);
    assertThat(browser.console()).as(state).isEmpty();
  }

  /** Counts how often the one place changes through which screen readers are told. */
  private static final String LISTEN =
      "window.told = []; new MutationObserver(() => told.push("
          + "document.querySelector('[role=status]').textContent))"
          + ".observe(document.querySelector('[role=status]'), {childList: true})";

  @Test
  void screen_readers_are_told_once_of_many_changes() {
    for (Size size : List.of(Size.PHONE, Size.DESKTOP)) {
      browser.look(size, false);
      fresh("one-ring");
      openCard();
      String live = "return document.querySelectorAll('[role=status], [aria-live]').length";
      assertThat(browser.run(live)).isEqualTo(1L);
      assertThat(
              browser.run(
                  "return document.querySelector('dialog:modal') === null ||"
                      + " document.querySelector('dialog:modal [role=status]') !== null"))
          .as("heard although the card shuts the page off")
          .isEqualTo(true);
      browser.run(LISTEN);
      browser.run(
          "for (let cm = 40; cm < 60; cm++) {"
              + " RingbookLive.scene.set(['subject.height'], [cm + ' cm']); }");
      until("told.length > 0");
      assertThat((List<?>) browser.run("return told"))
          .hasSize(1)
          .allMatch(text -> text.toString().matches("(\\d+|No) numbers? on this page changed\\."));
    }
  }
}
