package ringbook.output.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import ringbook.cli.Main;
import ringbook.exercises.ChoiceTask;
import ringbook.exercises.Exercise;
import ringbook.exercises.FaultTask;
import ringbook.exercises.OrderTask;
import ringbook.exercises.PairsTask;
import ringbook.exercises.VariedExercise;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/** A reader who answers exercises in the pages of the demo, by hand as people do. */
final class AnsweringReader {

  private final DemoSite site = DemoSite.shared();
  private final Browser browser = Browser.shared();

  AnsweringReader() throws IOException {}

  Browser browser() {
    return browser;
  }

  DemoSite site() {
    return site;
  }

  /** Comes for the first time. */
  void begin(String page, Size size, boolean dark) {
    browser.look(size, dark);
    browser.open(site.page(page));
    browser.run("localStorage.clear()");
    browser.open(site.page(page));
  }

  /** The first exercise of every kind in the open page: its id by its kind. */
  Map<String, String> kinds() {
    Map<String, String> kinds = new LinkedHashMap<>();
    for (WebElement box : browser.all(".check")) {
      kinds.putIfAbsent(box.getDomAttribute("data-kind"), box.getDomAttribute("data-exercise"));
    }
    return kinds;
  }

  /** The start of selectors for what an exercise is answered with. */
  static String box(String id) {
    return ".check[data-exercise='" + id + "'] ";
  }

  /** Waits until no answer is being marked and no question made. */
  void settled() {
    browser.until("!document.querySelector('.check[aria-busy]')");
  }

  void rename(String name) {
    type("#learner-name", name + Keys.TAB);
    settled();
  }

  /** The right answer to an exercise as it stands on a sheet; without a name that of the book. */
  String right(String id, String name) {
    VariedExercise varied =
        site.sources().varied().stream()
            .filter(one -> one.id().equals(id))
            .findFirst()
            .orElseThrow();
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
  static String wrong(String kind, String right) {
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

  /** Until it stays where it is: a page that still glides would carry it away. */
  void show(WebElement element) {
    browser.run(
        """
        const part = arguments[0];
        return new Promise(done => {
          let last = null;
          (function look() {
            part.scrollIntoView({block: 'center', behavior: 'instant'});
            requestAnimationFrame(() => requestAnimationFrame(() => {
              const top = part.getBoundingClientRect().top;
              if (top === last) {
                done(true);
              } else {
                last = top;
                look();
              }
            }));
          })();
        });
        """,
        element);
  }

  void click(WebElement element) {
    show(element);
    element.click();
  }

  /** With the mouse, or with {@code key} where the element has the focus. */
  private void press(WebElement element, boolean mouse, Keys key) {
    if (mouse) {
      click(element);
    } else {
      browser.run("arguments[0].focus()", element);
      browser.driver().switchTo().activeElement().sendKeys(key);
    }
  }

  /** The button with these words. */
  WebElement button(String words) {
    return browser.driver().findElement(By.xpath("//button[text()='" + words + "']"));
  }

  void type(String selector, String text) {
    browser.one(selector).sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text);
  }

  /** Gives an answer by the controls. */
  void give(String kind, String id, String answer, boolean mouse) {
    switch (kind) {
      case "number" -> type(box(id) + "input", answer);
      case "choice", "fault" -> tick(id, answer, mouse);
      case "mend" -> {
        tick(id, answer.substring(0, 1), mouse);
        type(box(id) + "input[type=text]", answer.substring(2));
      }
      case "several" -> {
        for (WebElement tick : browser.all(box(id) + "input")) {
          if (answer.contains(tick.getDomProperty("value")) != tick.isSelected()) {
            press(tick, mouse, Keys.SPACE);
          }
        }
      }
      case "pairs" -> pair(id, answer, mouse);
      case "order" -> rank(id, answer, mouse);
      default -> throw new IllegalArgumentException(kind);
    }
  }

  private void tick(String id, String letter, boolean mouse) {
    press(browser.one(box(id) + "input[value='" + letter + "']"), mouse, Keys.SPACE);
  }

  private void pair(String id, String answer, boolean mouse) {
    for (String pair : answer.split(" ", -1)) {
      WebElement select = browser.one("#answer-" + id + "-" + pair.charAt(0));
      show(select);
      if (mouse) {
        select.findElement(By.cssSelector("option[value='" + pair.charAt(1) + "']")).click();
      } else {
        select.sendKeys(pair.charAt(1) + ")");
      }
    }
  }

  private void rank(String id, String answer, boolean mouse) {
    String[] letters = answer.split(" ", -1);
    for (int place = 0; place < letters.length; place++) {
      while (!order(id).get(place).equals(letters[place])) {
        WebElement up = browser.one(box(id) + "li[data-letter='" + letters[place] + "'] button");
        press(up, mouse, Keys.ARROW_UP);
      }
    }
  }

  /** The letters of an order as it stands. */
  List<String> order(String id) {
    return browser.all(box(id) + ".rank li").stream()
        .map(li -> li.getDomAttribute("data-letter"))
        .toList();
  }

  /** Has the answer marked; what the page says of it. */
  String check(String id, boolean mouse) {
    press(browser.one(box(id) + ".go"), mouse, Keys.ENTER);
    settled();
    return browser.one(box(id) + ".said").getText();
  }

  /** The marks that the page has, by exercise. */
  Map<?, ?> credits() {
    return (Map<?, ?>)
        browser.run(
            "const all = RingbookAnswers.all(); return Object.fromEntries(Object.keys(all).map(id"
                + " => [id, all[id].credit]))");
  }

  /** The text of an answer sheet in the form {@code csv} or {@code json}. */
  String sheet(String form) {
    return (String)
        browser.run(
            "return RingbookSheet[arguments[0]](RingbookAnswers.name(), RingbookAnswers.all())",
            form);
  }

  /** Marks of the command line for a sheet: points by exercise. */
  static Map<String, String> marked(Path sheet) {
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

  /** No barrier, no scrolling sideways, no word in the console. */
  void assertSound(String state) {
    assertThat(browser.barriers()).as(state).isEmpty();
    assertThat(browser.overhang()).as(state).isZero();
    assertThat(browser.console()).as(state).isEmpty();
  }
}
