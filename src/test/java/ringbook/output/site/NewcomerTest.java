package ringbook.output.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static ringbook.output.site.AnsweringReader.box;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import ringbook.cli.Main;
import ringbook.site.Browser;
import ringbook.site.Browser.Size;

/**
 * A newcomer's hour with the pages of the demo, opened from disk: brings another phone and a boot,
 * answers, plans, hands in. What the pages say is held to what the commands say.
 */
final class NewcomerTest {

  /** What the newcomer has, as it would stand in a course file. */
  private static final String PHONE_AND_BOOT =
      """
      kit:
        name: pocket phone
        equivalent: 24 mm
        focal length: 6.9 mm
        pixels across: 8000 px
        pixels down: 6000 px
        widest: f/1.8
        closest focus: 8 cm
      subject:
        name: hiking boot
        outline: rectangular
        height: 18 cm
        width: 12 in
        depth: 11 cm
        surface: textured
        thinnest: 6 mm
      """;

  @TempDir private Path dir;
  private AnsweringReader reader;
  private Browser browser;
  private final Map<String, String> shown = new LinkedHashMap<>();

  @Test
  void from_the_scene_card_to_the_marks() throws IOException {
    reader = new AnsweringReader();
    browser = reader.browser();
    reader.begin("right-distance", Size.DESKTOP, false);
    Map<String, String> before = numbers();
    bringPhoneAndBoot();
    assertNumbersAreThoseOf(PHONE_AND_BOOT, before);
    answerRightAndWithASlip();
    assertThat(browser.console()).isEmpty();
    browser.open(reader.site().page("rings-at-heights"));
    planTheOwl();
    planTheChairWithTooLittle();
    Path sheet = saveTheSheet();
    assertThat(browser.console()).isEmpty();
    assertThat(shown.values()).contains("1", "0");
    assertThat(AnsweringReader.marked(sheet)).isEqualTo(shown);
  }

  /* ---- the scene card ---- */

  private void bringPhoneAndBoot() {
    reader.click(browser.one(".mine .take"));
    browser.until("RingbookCard.isOpen()");
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
    assertThat(browser.all(".scene-card [aria-invalid=true]")).isEmpty();
    reader.click(browser.one(".scene-card .close"));
  }

  private void enter(String key, String text) {
    browser.run("document.querySelectorAll('.scene-card details').forEach(d => d.open = true)");
    WebElement field = browser.one("#scene-" + key.replace('.', '-'));
    reader.show(field);
    if (field.getTagName().equals("select")) {
      field.sendKeys(text, Keys.TAB);
    } else {
      field.sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, text, Keys.TAB);
    }
  }

  /** The numbers that a person sees in the open page, by their key. */
  private Map<String, String> numbers() {
    Object all =
        browser.run(
            "return Object.fromEntries([...document.querySelectorAll("
                + "'main data.quantity[data-key]:not([data-given]):not([data-form])')]"
                + ".filter(d => d.offsetParent && !d.closest('.exercise') && !d.dataset.value"
                + " && !d.classList.contains('is-refused'))"
                + ".map(d => [d.dataset.key, d.textContent]))");
    Map<String, String> numbers = new LinkedHashMap<>();
    ((Map<?, ?>) all).forEach((key, text) -> numbers.put((String) key, (String) text));
    return numbers;
  }

  private void assertNumbersAreThoseOf(String scene, Map<String, String> before)
      throws IOException {
    Map<String, String> now = numbers();
    assertThat(now).hasSizeGreaterThan(15);
    Map<String, String> printed = quantities(scene);
    assertThat(printed).containsAllEntriesOf(now);
    assertThat(now.get("distance.standoff")).isNotEqualTo(before.get("distance.standoff"));
    // By hand: held upright, the 180 mm of height on 3/4 of the long side ask for less than the
    // diagonal of the sole, √(304.8² + 110²) = 324.04 mm, on 3/4 of the short side. Of a picture 4
    // by
    // 3 the short side is 6.9/24 · 43.267 · 3/5 = 7.463 mm: 6.9 · (1 + 324.04/(0.75 · 7.463)) =
    // 406.3.
    assertThat(now.get("distance.standoff")).isEqualTo("40.6\u00a0cm");
  }

  /** What the command prints for the demo's course with another camera and object. */
  private Map<String, String> quantities(String scene) throws IOException {
    String demo = Files.readString(Path.of("lessons/course.yaml"));
    Path course = dir.resolve("newcomer.yaml");
    Files.writeString(
        course,
        demo.substring(0, demo.indexOf("\nkit:") + 1)
            + scene
            + demo.substring(demo.indexOf("\nplace:")));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            new String[] {"quantities", course.toString()},
            new PrintStream(out, true, UTF_8),
            new PrintStream(err, true, UTF_8));
    assertThat(err.toString(UTF_8)).isEmpty();
    assertThat(code).isZero();
    Map<String, String> values = new LinkedHashMap<>();
    for (String line : out.toString(UTF_8).split("\n", -1)) {
      String[] cells = line.split(" {2,}", -1); // key, value, name
      if (cells.length == 3 && cells[0].contains(".") && !cells[1].startsWith("none: ")) {
        values.put(cells[0], cells[1]);
      }
    }
    return values;
  }

  /* ---- exercises ---- */

  private void answerRightAndWithASlip() {
    // By hand: 4.8 mm · (1 + 420 mm / (0.75 · 6.4 mm)) = 424.8 mm.
    reader.give("number", "distance-owl", "42.5 cm", true);
    assertThat(checked("distance-owl")).startsWith("1 of 1 point");
    // The slip, by hand: 4.8 mm · (1 + 300 mm / (0.75 · 6.4 mm)) = 304.8 mm.
    reader.give("number", "distance-boot", "30.5 cm", true);
    assertThat(checked("distance-boot"))
        .doesNotStartWith("1 of 1")
        .contains("This is right for the length of the boot.", "its diagonal is the widest view");
    reader.give("choice", "distance-which-face", "a", false);
    assertThat(checked("distance-which-face")).startsWith("0 of 1 point");
  }

  /** Has an answer marked, with the keyboard, and remembers the points that the page shows. */
  private String checked(String id) {
    String said = reader.check(id, false);
    shown.put(id, said.substring(0, said.indexOf(" of 1 point")));
    return said;
  }

  /** With the keyboard alone: a plan that fails, what it lacks, and how it comes to pass. */
  private void planTheOwl() {
    String plan = box("plan-owl");
    WebElement add = browser.one(plan + ".row button.plain");
    reader.show(add);
    add.sendKeys(Keys.ENTER);
    PlanInPageTest.lookedAt(browser, "rings: 24 at 15°");
    assertThat(browser.all(plan + ".look .lack")).isNotEmpty();
    assertThat(browser.one(plan + ".look .lack").getText())
        .isNotEmpty()
        .isNotEqualTo("The plan passes.");
    assertThat(checked("plan-owl")).doesNotStartWith("1 of 1");
    slide(plan + ".run:last-child", Keys.ARROW_LEFT, 25);
    PlanInPageTest.lookedAt(browser, "rings: 24 at -10°");
    add.sendKeys(Keys.ENTER);
    PlanInPageTest.lookedAt(browser, "rings: 24 at -10°, 24 at 5°");
    slide(plan + ".run:last-child", Keys.ARROW_LEFT, 4);
    PlanInPageTest.lookedAt(browser, "rings: 24 at -10°, 24 at 1°");
    assertThat(browser.one(plan + ".look").getText()).contains("The plan passes.");
    assertThat(checked("plan-owl")).startsWith("1 of 1 point");
  }

  private void slide(String run, Keys key, int steps) {
    WebElement slider = browser.one(run + " input[type=range][min='-30']");
    reader.show(slider);
    slider.sendKeys(key.toString().repeat(steps));
  }

  private void planTheChairWithTooLittle() {
    reader.type("#answer-plan-chair", "rings: 23 at 20°");
    assertThat(checked("plan-chair")).doesNotStartWith("1 of 1");
  }

  /* ---- handing in ---- */

  private Path saveTheSheet() throws IOException {
    Path downloads = Files.createDirectory(dir.resolve("downloads"));
    browser.downloadTo(downloads);
    reader.click(reader.button("Save the answer sheet (CSV)"));
    Path sheet = downloads.resolve("answers.csv");
    new WebDriverWait(browser.driver(), Duration.ofSeconds(60))
        .until(any -> Files.exists(sheet) && sheet.toFile().length() > 0);
    assertThat(browser.one(".told-of").getText()).isEqualTo("answers.csv goes to your downloads.");
    return sheet;
  }
}
