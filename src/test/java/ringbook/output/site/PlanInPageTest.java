package ringbook.output.site;

import static org.assertj.core.api.Assertions.assertThat;
import static ringbook.output.site.AnsweringReader.box;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import ringbook.plans.WrittenPlan;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/** The two ways to write a plan follow each other, on a phone too. */
final class PlanInPageTest {

  private static final String PLAN = box("plan-owl");

  @Test
  void text_and_controls_of_a_plan_follow_each_other() throws IOException {
    AnsweringReader reader = new AnsweringReader();
    Browser browser = reader.browser();
    reader.begin("rings-at-heights", Size.PHONE, false);
    reader.click(browser.one(PLAN + ".row button.plain"));
    lookedAt(browser, "rings: 24 at 15°");
    assertThat(browser.one(PLAN + ".look").getText())
        .contains("95 % are asked for. 24 photographs");
    reader.type("#answer-plan-owl-0-elevation", "-10"); // the number beside the slider
    lookedAt(browser, "rings: 24 at -10°");
    reader.type("#answer-plan-owl", "rings: 20 at 10°; top: 3");
    lookedAt(browser, "rings: 20 at 10°; top: 3");
    assertThat(browser.all(PLAN + ".run")).hasSize(2);
    assertThat(browser.all(PLAN + ".look svg")).hasSize(1);
    reader.assertSound("a plan looked at");
    reader.type("#answer-plan-owl", "rings: many");
    browser.until("document.querySelector('#answer-plan-owl-unread').textContent");
    assertThat(browser.one("#answer-plan-owl").getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(browser.all(PLAN + ".run")).hasSize(2);
  }

  /** Runs of all kinds. */
  private static final String MIXED =
      "rings: 24 at -10°, 20 at 40° without 30° to 150°; low ring: 12 from 0° to 90°; top: 3;"
          + " strip: 6 at 0° facing 180° at 1.1 m; turned over: 20 at 15°; top: 5; standing: 8 at"
          + " 30°";

  @Test
  void what_is_checked_at_once_is_what_the_rows_say_in_the_usual_form() throws IOException {
    AnsweringReader reader = new AnsweringReader();
    Browser browser = reader.browser();
    reader.begin("rings-at-heights", Size.DESKTOP, false);
    reader.type("#answer-plan-owl", MIXED);
    lookedAt(browser, MIXED);
    assertThat(browser.all(PLAN + ".run")).hasSize(8);
    browser.run(
        "const f = document.getElementById('answer-plan-owl-0-photos'); f.value = '25';"
            + " f.dispatchEvent(new Event('input', {bubbles: true}));"
            + " document.querySelector(\""
            + PLAN
            + ".go\").click();");
    String changed = MIXED.replace("24 at", "25 at");
    lookedAt(browser, changed);
    reader.settled();
    assertThat(WrittenPlan.read(changed).plan().orElseThrow().text()).isEqualTo(changed);
    assertThat(browser.run("return RingbookAnswers.of('plan-owl').marked")).isEqualTo(changed);
    assertThat(browser.one(PLAN + ".said").getText()).contains("of 1 point");
    assertThat(browser.console()).isEmpty();
  }

  /** Waits until the page has told what comes of this plan. */
  static void lookedAt(Browser browser, String text) {
    browser.until(
        "document.querySelector(\""
            + PLAN
            + "textarea\").value === '"
            + text
            + "' && document.querySelector(\""
            + PLAN
            + ".look\").dataset.plan === '"
            + text
            + "'");
  }
}
