package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringbook.course.CourseFile;
import ringbook.ledger.Reckoning;
import ringbook.shots.Scene;
import ringbook.shots.SceneChanges;
import ringbook.shots.SceneChanges.Change;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;
import ringbook.units.Lengths;
import ringbook.values.ExpressionFault;
import ringbook.values.Expressions;

/** A reader who measures in inches turns the switch on the scene card. */
final class InchesInPageTest {

  private static final String STANDOFF = "main data[data-key='distance.standoff']";
  private static final String OWL = "#exercise-distance-owl .posed";

  private static AnsweringReader reader;
  private static Browser browser;
  private static CourseFile course;

  @BeforeAll
  static void open() throws IOException {
    reader = new AnsweringReader();
    browser = reader.browser();
    course = reader.site().sources().file();
  }

  private static void choose(String words) {
    if (!Boolean.TRUE.equals(browser.run("return RingbookCard.isOpen()"))) {
      reader.click(browser.one(".mine .take"));
      browser.until("RingbookCard.isOpen()");
    }
    reader.click(
        browser.all(".scene-card .units label").stream()
            .filter(label -> label.getText().strip().equals(words))
            .findFirst()
            .orElseThrow());
    reader.settled();
    browser.until("!document.querySelector('.plate[aria-busy=\"true\"]')");
  }

  /**
   * Every value that can be seen is what the JVM makes of it for this scene; some are in inches.
   */
  private static void assertToldAsOnTheCommandLine(Scene scene) {
    Expressions values = new Expressions(Reckoning.of(scene), course.otherKits());
    List<?> items =
        (List<?>)
            browser.run(
                "return RingbookNumbers.find().filter(i => !i.element.closest('[hidden]')"
                    + " && !i.element.matches('.is-refused'))"
                    + ".map(i => [i.expression, i.element.textContent])");
    long inches = 0;
    for (Object each : items) {
      String expression = (String) ((List<?>) each).get(0);
      String text = (String) ((List<?>) each).get(1);
      try {
        assertThat(text).as(expression).isEqualTo(values.text(expression));
      } catch (ExpressionFault fault) {
        assertThat(fault.refused()).as(expression).isTrue();
      }
      inches += text.endsWith("\u00a0in") || text.endsWith("\u00a0ft") ? 1 : 0;
    }
    assertThat(inches).isGreaterThan(5);
  }

  private static Scene inInches() {
    return SceneChanges.apply(
            course.scene(), List.of(new Change("aim.units", "imperial")), course.otherKits())
        .scene()
        .orElseThrow();
  }

  @Test
  void all_lengths_follow_and_come_back() {
    reader.begin("right-distance", Size.DESKTOP, false);
    String fresh = (String) browser.run("return document.querySelector('main').innerText");
    choose("inches and feet");
    assertThat(browser.run("return RingbookCard.status().textContent"))
        .isEqualTo("The same numbers, with lengths told as you chose.");
    Scene scene = inInches();
    assertThat(scene.aim().lengths()).isEqualTo(Lengths.IMPERIAL);
    assertToldAsOnTheCommandLine(scene);
    // The pot, 36 cm on 3/4 of the long side: 4.8 mm · (1 + 360/(0.75 · 6.4)) = 364.8 mm = 14.36
    // in.
    // Its width, on 3/4 of the short one: 4.8 mm · (1 + 300/(0.75 · 4.8)) = 404.8 mm = 15.94 in.
    assertThat(browser.one(STANDOFF).getText()).isEqualTo("15.9 in");
    // It is still the course's own scene: nothing is marked as changed.
    assertThat(browser.all("main .is-changed")).isEmpty();
    assertThat(browser.one("html").getDomAttribute("data-own-scene")).isNull();
    assertThat(
            browser.run(
                "return [...document.querySelectorAll('main > .working .result [aria-label]')]"
                    + ".map(r => r.getAttribute('aria-label')).join()"))
        .asString()
        .contains("standoff is 40.5\u00a0cm, or 15.9\u00a0in");
    reader.assertSound("inches");
    browser.open(reader.site().page("one-ring"));
    browser.until(
        "document.querySelector(\"main"
            + " data[data-key='ring.radius']\").textContent.match(/(in|ft)$/)");
    assertToldAsOnTheCommandLine(scene);
    choose("centimetres and metres");
    browser.open(reader.site().page("right-distance"));
    assertThat(browser.run("return document.querySelector('main').innerText")).isEqualTo(fresh);
  }

  @Test
  void a_question_in_inches_is_answered_in_inches_and_marked_alike() {
    reader.begin("right-distance", Size.DESKTOP, false);
    String own = browser.one(OWL).getText();
    choose("inches and feet");
    // 42 cm and 22 cm, as finely as a calculation needs them.
    assertThat(browser.one(OWL).getText()).contains("16.54 in tall", "8.661 in across");
    browser.run("document.querySelector('.scene-card').close()");
    reader.give("number", "distance-owl", "16 3/4 in", true); // 424.8 mm are 16.72 in
    assertThat(reader.check("distance-owl", true)).startsWith("1 of 1 point");
    Map<?, ?> credits = reader.credits();
    assertThat(credits.get("distance-owl")).isEqualTo("1");
    reader.rename("Ida");
    assertThat(browser.one(OWL).getText()).contains(" in tall");
    reader.rename("");
    choose("centimetres and metres");
    assertThat(browser.one(OWL).getText()).isEqualTo(own);
    assertThat(reader.credits()).isEqualTo(credits);
  }

  @Test
  void a_plan_is_built_in_inches() {
    reader.begin("rings-at-heights", Size.DESKTOP, false);
    choose("inches and feet");
    browser.run("document.querySelector('.scene-card').close()");
    // 1.1 m are 43.31 in, 4 ft 2 in are 50 in.
    reader.type("#answer-plan-owl", "20 at 10° at 1.1 m; top: 3 at 4 ft 2 in");
    browser.until("document.querySelector('#answer-plan-owl-1-standoff')");
    assertThat(browser.one("label[for=answer-plan-owl-0-standoff]").getText()).endsWith(", in");
    assertThat(browser.one("#answer-plan-owl-0-standoff").getDomProperty("value"))
        .isEqualTo("43.31");
    assertThat(browser.one("#answer-plan-owl-1-standoff").getDomProperty("value")).isEqualTo("50");
    reader.type("#answer-plan-owl-0-standoff", "45");
    browser.until(
        "document.querySelector('#answer-plan-owl').value"
            + " === 'rings: 20 at 10° at 45 in; top: 3 at 50 in'");
    choose("centimetres and metres");
    browser.until("document.querySelector('#answer-plan-owl-0-standoff').value === '1.143'");
  }

  @Test
  void a_link_carries_the_measures() {
    reader.begin("right-distance", Size.DESKTOP, false);
    choose("inches and feet");
    String link = browser.one("#scene-link").getDomProperty("value");
    assertThat(link).contains("aim.units=imperial");
    reader.begin("index", Size.DESKTOP, false);
    browser.driver().get(link);
    browser.until("document.querySelector(\"" + STANDOFF + "\").textContent === '15.9\u00a0in'");
  }
}
