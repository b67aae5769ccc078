package ringbook.output.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import ringbook.cli.Main;
import ringbook.course.compose.CourseSources;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.FaultTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.VariedExercise;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;
import ringbook.site.ValidPage;

/** A reader answers exercises of every kind, with numbers of their own, and hands them in. */
final class AnswersInPageTest {

  /** One exercise of every kind; all stand in one lesson. */
  private static final Map<String, String> KINDS = new LinkedHashMap<>();

  @TempDir static Path dir;
  private static Browser browser;
  private static CourseSources sources;
  private static Path page;

  @BeforeAll
  static void open() throws IOException {
    sources = DemoSite.write(dir);
    page = dir.resolve("site/all-the-way-round.html");
    browser = Browser.start();
    browser.look(Size.DESKTOP, false);
    browser.open(page);
    for (WebElement box : browser.driver().findElements(By.cssSelector(".check"))) {
      KINDS.putIfAbsent(box.getDomAttribute("data-kind"), box.getDomAttribute("data-exercise"));
    }
    browser.open(dir.resolve("site/your-camera.html"));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void begin() {
    browser.run("localStorage.clear()");
    browser.look(Size.DESKTOP, false);
    browser.open(page);
  }

  private static WebElement one(String selector) {
    return browser.driver().findElement(By.cssSelector(selector));
  }

  private static void pressButton(String words) {
    press(browser.driver().findElement(By.xpath("//button[text()='" + words + "']")), true, null);
  }

  private static List<WebElement> all(String selector) {
    return browser.driver().findElements(By.cssSelector(selector));
  }

  private static void until(String condition) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(60), Duration.ofMillis(20))
        .until(driver -> Boolean.TRUE.equals(browser.run("return Boolean(" + condition + ")")));
  }

  private static void settled() {
    until("!document.querySelector('.check[aria-busy]')");
  }

  private static String box(String id) {
    return ".check[data-exercise='" + id + "'] ";
  }

  private static void rename(String name) {
    WebElement field = one("#learner-name");
    field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, name, Keys.TAB);
    settled();
  }

  /** The right answer to an exercise as it stands on a sheet. */
  private static String right(String id, String name) {
    VariedExercise varied =
        sources.varied().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    Exercise exercise = name.isEmpty() ? varied.own() : varied.forLearner(name);
    if (exercise.task() instanceof ChoiceTask task) {
      return String.valueOf(ChoiceTask.letter(task.rightIndex()));
    }
    if (exercise.task() instanceof FaultTask task) {
      String letter = String.valueOf(ChoiceTask.letter(task.fault().item()));
      String value = task.wrongItem().text(exercise.reckoning());
      return task.mend() ? letter + " " + value : letter;
    }
    boolean list = exercise.task() instanceof OrderTask || exercise.task() instanceof PairsTask;
    return list ? exercise.answerText().replace(",", "") : exercise.answerText();
  }

  /** An answer that is read and is not right. */
  private static String wrong(String kind, String right) {
    return switch (kind) {
      case "number" -> right.replaceFirst("\\d+", "7777");
      case "choice", "fault" -> right.equals("a") ? "b" : "a";
      case "several" -> right.replaceFirst(", .*", "");
      case "order" -> right.charAt(2) + " " + right.charAt(0) + right.substring(3);
      case "pairs" -> "1" + right.charAt(4) + " 2" + right.charAt(1) + right.substring(5);
      case "mend" -> right.substring(0, 1) + " 7777 cm";
      default -> throw new IllegalArgumentException(kind);
    };
  }

  /** Pages scroll smoothly; a click would come too early. */
  private static void show(WebElement element) {
    browser.run("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", element);
  }

  private static void press(WebElement element, boolean mouse, Keys key) {
    if (mouse) {
      show(element);
      element.click();
    } else {
      browser.run("arguments[0].focus()", element);
      browser.driver().switchTo().activeElement().sendKeys(key);
    }
  }

  /** Gives an answer by the controls. */
  private static void give(String kind, String id, String answer, boolean mouse) {
    switch (kind) {
      case "number" -> type(box(id) + "input", answer);
      case "choice", "fault" -> tick(id, answer, mouse);
      case "mend" -> {
        tick(id, answer.substring(0, 1), mouse);
        type(box(id) + "input[type=text]", answer.substring(2));
      }
      case "several" -> {
        for (WebElement tick : all(box(id) + "input")) {
          if (answer.contains(tick.getDomProperty("value")) != tick.isSelected()) {
            press(tick, mouse, Keys.SPACE);
          }
        }
      }
      case "pairs" -> {
        for (String pair : answer.split(" ", -1)) {
          WebElement select = one("#answer-" + id + "-" + pair.charAt(0));
          show(select);
          if (mouse) {
            select.findElement(By.cssSelector("option[value='" + pair.charAt(1) + "']")).click();
          } else {
            select.sendKeys(pair.charAt(1) + ")");
          }
        }
      }
      case "order" -> {
        String[] letters = answer.split(" ", -1);
        for (int place = 0; place < letters.length; place++) {
          while (!order(id).get(place).equals(letters[place])) {
            WebElement up = one(box(id) + "li[data-letter='" + letters[place] + "'] button");
            press(up, mouse, Keys.ARROW_UP);
          }
        }
      }
      default -> throw new IllegalArgumentException(kind);
    }
  }

  private static List<String> order(String id) {
    return all(box(id) + ".rank li").stream().map(li -> li.getDomAttribute("data-letter")).toList();
  }

  private static void tick(String id, String letter, boolean mouse) {
    press(one(box(id) + "input[value='" + letter + "']"), mouse, Keys.SPACE);
  }

  private static void type(String selector, String text) {
    one(selector).sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text);
  }

  private static String check(String id, boolean mouse) {
    press(one(box(id) + ".go"), mouse, Keys.ENTER);
    settled();
    return one(box(id) + ".said").getText();
  }

  /** Marks of the command line for a sheet: points by exercise. */
  private static Map<String, String> marked(Path sheet) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Main.run(
        new String[] {"mark", sheet.toString(), "--course", "lessons/course.yaml", "--format=csv"},
        new PrintStream(out, true, UTF_8),
        new PrintStream(err, true, UTF_8));
    assertThat(err.toString(UTF_8)).isEmpty();
    Map<String, String> points = new LinkedHashMap<>();
    for (String line : out.toString(UTF_8).strip().split("\r\n", -1)) {
      String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
      points.put(cells[1], cells[4]);
    }
    points.remove("exercise");
    return points;
  }

  private static Path sheet(String form, String name) throws IOException {
    String text =
        (String)
            browser.run(
                "return RingbookSheet[arguments[0]](RingbookAnswers.name(),"
                    + " RingbookAnswers.all())",
                form);
    return Files.writeString(dir.resolve(name), text);
  }

  private static Map<?, ?> creditsInPage() {
    return (Map<?, ?>)
        browser.run(
            "const all = RingbookAnswers.all(); return Object.fromEntries(Object.keys(all).map(id"
                + " => [id, all[id].credit]))");
  }

  @Test
  void every_kind_is_answered_with_the_mouse_and_with_the_keyboard() {
    assertThat(KINDS.keySet())
        .contains("number", "choice", "several", "order", "pairs")
        .containsAnyOf("fault", "mend");
    for (boolean mouse : List.of(true, false)) {
      KINDS.forEach(
          (kind, id) -> {
            String right = right(id, "");
            String wrong = wrong(kind, right);
            give(kind, id, wrong, mouse);
            assertThat(check(id, mouse)).as("%s %s", id, wrong).doesNotStartWith("1 of 1");
            give(kind, id, right, mouse);
            assertThat(check(id, mouse)).as("%s %s", id, right).startsWith("1 of 1 point");
            assertThat(one(".heard").getDomProperty("textContent")).contains("1 of 1 point");
          });
    }
    assertThat(one(".tally").getText()).startsWith(KINDS.size() + " of ");
    assertThat(browser.console()).isEmpty();
  }

  @Test
  void a_step_is_dragged_to_its_place() {
    String id = KINDS.get("order");
    WebElement handle = one(box(id) + "li:first-child .handle");
    show(handle);
    new Actions(browser.driver())
        .clickAndHold(handle)
        .moveToElement(one(box(id) + "li:nth-child(2)"))
        .moveToElement(one(box(id) + "li:nth-child(3) .handle"))
        .release()
        .perform();
    assertThat(order(id).indexOf("a")).isGreaterThan(0);
    assertThat(browser.run("return RingbookAnswers.of(arguments[0]).answer", id))
        .isEqualTo(String.join(" ", order(id)));
  }

  @Test
  void a_name_brings_numbers_of_ones_own_that_mark_alike_on_the_command_line() throws IOException {
    String before = one("#exercise-" + KINDS.get("number") + " .posed").getText();
    rename("  Zoë   Müller ");
    assertThat(one("#exercise-" + KINDS.get("number") + " .posed").getText()).isNotEqualTo(before);
    boolean right = true;
    for (Map.Entry<String, String> one : KINDS.entrySet()) {
      String answer = right(one.getValue(), "Zoë Müller");
      give(one.getKey(), one.getValue(), right ? answer : wrong(one.getKey(), answer), true);
      check(one.getValue(), true);
      right = !right;
    }
    assertThat(browser.run("return RingbookAnswers.name()")).isEqualTo("Zoë Müller");
    Map<?, ?> credits = creditsInPage();
    assertThat(credits).hasSize(KINDS.size());
    for (String form : List.of("csv", "json")) {
      Path sheet = sheet(form, "zoe." + form);
      assertThat(marked(sheet)).as(form).isEqualTo(credits);
    }
    // The same person, written otherwise, has the same answers; others have none.
    rename("zoe muller");
    assertThat(creditsInPage()).isEqualTo(credits);
    rename("");
    assertThat(creditsInPage()).isEmpty();
    assertThat(one("#exercise-" + KINDS.get("number") + " .posed").getText()).isEqualTo(before);
  }

  @Test
  void what_was_answered_is_kept_until_it_is_cleared() throws IOException {
    List<String> answers = new ArrayList<>();
    KINDS.forEach(
        (kind, id) -> {
          answers.add(right(id, ""));
          give(kind, id, right(id, ""), true);
        });
    check(KINDS.get("choice"), true);
    Path sheet = sheet("csv", "nobody.csv");
    browser.open(page);
    for (String id : KINDS.values()) {
      assertThat(written(id)).isEqualTo(answers.remove(0));
    }
    assertThat(one(box(KINDS.get("choice")) + ".before").getText())
        .isEqualTo("1 of 1 point, 1 try");
    browser.open(dir.resolve("site/index.html"));
    assertThat(one(".round .tally:not([hidden])").getText()).startsWith("1 of ");
    pressButton("Clear all answers");
    pressButton("Keep them");
    assertThat(creditsInPage()).hasSize(KINDS.size());
    pressButton("Clear all answers");
    pressButton("Clear them");
    assertThat(creditsInPage()).isEmpty();
    assertThat(all(".round .tally:not([hidden])")).isEmpty();
    browser.open(page);
    one(".answers input[type=file]").sendKeys(sheet.toString());
    until("document.querySelector('.told-of').textContent");
    assertThat(one(".told-of").getText()).startsWith(KINDS.size() + " answers taken");
    for (String id : KINDS.values()) {
      assertThat(written(id)).isEqualTo(right(id, ""));
    }
    one(".answers input[type=file]").sendKeys(Path.of("pom.xml").toAbsolutePath().toString());
    until("document.querySelector('.told-of').textContent.startsWith('Nothing')");
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
    browser.run(
        "Storage.prototype.setItem = () => { throw new Error('denied'); }"); // of this page only
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
      browser.open(page);
      assertThat(all(".unkept")).hasSize(1);
      String id = KINDS.get("choice");
      give("choice", id, right(id, ""), true);
      assertThat(check(id, true)).startsWith("1 of 1 point");
      assertThat(one(".tally").getText()).startsWith("1 of ");
      assertThat(browser.console()).isEmpty();
    } finally {
      browser
          .driver()
          .executeCdpCommand(
              "Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", script));
    }
  }

  @Test
  void a_plan_is_built_of_runs_mended_and_passes() throws IOException {
    browser.look(Size.PHONE, false);
    browser.open(planPage());
    String plan = box("plan-owl");
    press(browser.driver().findElement(By.cssSelector(plan + ".row button.plain")), true, null);
    lookedAt(plan, "rings: 24 at 15°");
    assertThat(one(plan + ".look").getText()).contains("95 % are asked for. 24 photographs");
    assertThat(check("plan-owl", true)).doesNotStartWith("1 of 1");
    type("#answer-plan-owl-0-elevation", "-10"); // the number beside the slider
    lookedAt(plan, "rings: 24 at -10°");
    press(
        browser.driver().findElement(By.cssSelector(plan + ".row button.plain")),
        false,
        Keys.ENTER);
    lookedAt(plan, "rings: 24 at -10°, 24 at 5°");
    WebElement slider = one(plan + ".run:last-child input[type=range][min='-30']");
    slider.sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT);
    lookedAt(plan, "rings: 24 at -10°, 24 at 1°");
    assertThat(one(plan + ".look").getText()).contains("The plan passes.");
    assertThat(all(plan + ".look svg")).hasSize(1);
    assertThat(check("plan-owl", true)).startsWith("1 of 1 point");
    assertSound("a plan that passes");
    type("#answer-plan-owl", "rings: 20 at 10°; top: 3");
    lookedAt(plan, "rings: 20 at 10°; top: 3");
    assertThat(all(plan + ".run")).hasSize(2);
    assertThat(marked(sheet("csv", "plan.csv"))).containsKey("plan-owl");
  }

  private static Path planPage() throws IOException {
    try (Stream<Path> pages = Files.list(dir.resolve("site"))) {
      return pages
          .filter(one -> one.toString().endsWith(".html"))
          .filter(one -> read(one).contains("data-exercise=\"plan-owl\""))
          .findFirst()
          .orElseThrow();
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void lookedAt(String plan, String text) {
    until(
        "document.querySelector(\""
            + plan
            + "textarea\").value === '"
            + text
            + "' && document.querySelector(\""
            + plan
            + ".look\").dataset.plan === '"
            + text
            + "'");
  }

  @Test
  void every_state_is_without_barriers_and_valid() throws IOException {
    begin(Size.NARROW, true);
    assertSound("fresh, narrow, dark");
    answerAll(true);
    assertSound("right, narrow, dark");
    begin(Size.DESKTOP, false);
    answerAll(false);
    assertSound("wrong, wide, light");
    rename("Ida");
    assertSound("own numbers, wide, light");
    Path file = dir.resolve("state.html");
    Files.writeString(
        file, "<!DOCTYPE html>\n" + browser.run("return document.documentElement.outerHTML"));
    assertThat(ValidPage.faults(file)).isEmpty();
  }

  private static void begin(Size size, boolean dark) {
    browser.run("localStorage.clear()");
    browser.look(size, dark);
    browser.open(page);
  }

  private static void answerAll(boolean right) {
    KINDS.forEach(
        (kind, id) -> {
          String answer = right(id, "");
          give(kind, id, right ? answer : wrong(kind, answer), true);
          check(id, true);
        });
  }

  private static void assertSound(String state) {
    assertThat(browser.barriers()).as(state).isEmpty();
    assertThat(browser.overhang()).as(state).isZero();
    assertThat(browser.console()).as(state).isEmpty();
  }
}
